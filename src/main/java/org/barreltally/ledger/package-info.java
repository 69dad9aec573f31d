/**
 * The ledger: places, items, movements and balances; what can still be promised; reservations.
 *
 * <p>Syrup is counted in whole grams, jars in pieces. Stock changes only by a {@link
 * org.barreltally.ledger.Movement}, whose entries sum to zero per item over all places, the world
 * outside included. Nothing is overwritten; a correction is a reversal and a new movement.
 */
package org.barreltally.ledger;
