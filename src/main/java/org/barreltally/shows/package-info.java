/**
 * Show tables: booked, stocked, counted home. A show is a place in the ledger; jars stand at its
 * table from the day they are packed out until they are counted back or sold.
 */
package org.barreltally.shows;
