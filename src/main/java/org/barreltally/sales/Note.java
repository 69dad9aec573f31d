package org.barreltally.sales;

/**
 * Something about a sale that somebody should look at. It did not keep the sale out.
 *
 * @param line which line it is about, from 1; 0 for the whole sale
 * @param code stable: {@code unknown-lot, not-packed-in-size, lot-not-here, lot-held, no-price,
 *     paid-unsaid, paid-differs, clock-ahead}
 */
public record Note(int line, String code, String detail) {}
