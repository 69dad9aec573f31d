package org.barreltally.shops;

import java.time.LocalDate;
import java.util.List;
import org.barreltally.pricing.Money;

/**
 * What stood with a shop and what it owes, for a span of days.
 *
 * @param items by size, grade and lot
 * @param dueBefore what was owed before the first day
 * @param balance owed at the end of the last day: dueBefore + due − paid
 */
public record Statement(
    String shop,
    String name,
    LocalDate from,
    LocalDate to,
    Terms terms,
    List<Item> items,
    List<Delivery> deliveries,
    List<ShelfCount> counts,
    List<Paid> payments,
    Money dueBefore,
    Money due,
    Money paid,
    Money balance) {

  public Statement {
    items = List.copyOf(items);
    deliveries = List.copyOf(deliveries);
    counts = List.copyOf(counts);
    payments = List.copyOf(payments);
  }

  /**
   * Jars of one lot and size, in pieces: opening + delivered − fetched − sold − broken − missing =
   * closing − otherwise.
   *
   * @param otherwise moved there by other records of the book, as a jar written off at the shop;
   *     below zero where they went, and nothing is due for them
   */
  public record Item(
      String container,
      String grade,
      String lot,
      long opening,
      long delivered,
      long fetched,
      long sold,
      long broken,
      long missing,
      long otherwise,
      long closing) {}
}
