/**
 * From sap to syrup: sap gathered by bush, concentrate, boils and what was drawn off, with what
 * could be expected of the sugar and what it came to. A log beside the book of stock: it moves
 * nothing, and what stands in barrels is weighed when they are filled.
 */
package org.barreltally.sugarbush.boiling;
