/**
 * Barrels sold whole to bulk buyers: our, their and the agreed weight and grade, and what the
 * difference between ours and the agreed is worth.
 */
package org.barreltally.bulk;
