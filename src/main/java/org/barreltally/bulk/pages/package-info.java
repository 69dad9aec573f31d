/** Barrels sold whole, as pages. */
package org.barreltally.bulk.pages;
