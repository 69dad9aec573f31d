/** Barrels as pages: listed, filled, weighed again, graded, held. */
package org.barreltally.barrels.pages;
