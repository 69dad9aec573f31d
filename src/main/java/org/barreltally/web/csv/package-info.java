/**
 * Every list of the interface as a table: whatever answers {@code items} in JSON also answers them
 * as CSV (RFC 4180), by one mechanism, so that a new list needs nothing of its own.
 */
package org.barreltally.web.csv;
