/** What the stock shows on pages. */
package org.barreltally.stock.pages;
