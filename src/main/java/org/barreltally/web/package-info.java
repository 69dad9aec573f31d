/**
 * What every capability shares when it speaks HTTP: answering a request once, paging, the start
 * page's figures. Subpackages are closed to capabilities: access (who is asking), json (strict
 * reading), problem (how a no is said), pages.
 */
package org.barreltally.web;
