/** How a person proves over HTTP who they are, and what a browser may be made to send. */
package org.barreltally.web.access;
