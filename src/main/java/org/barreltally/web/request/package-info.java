/** How answered requests are kept and compared. */
package org.barreltally.web.request;
