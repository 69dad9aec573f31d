/** The pages in a browser, on the built program, as somebody at a laptop or a phone uses them. */
package org.barreltally.browser;
