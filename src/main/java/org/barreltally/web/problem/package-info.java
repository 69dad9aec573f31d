/** Turns every exception, in one place, into a problem document (RFC 9457) or an error page. */
package org.barreltally.web.problem;
