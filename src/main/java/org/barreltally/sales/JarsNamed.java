package org.barreltally.sales;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.measure.ColorClass;
import org.barreltally.sales.internal.PlaceJars;

/**
 * Finds the items of the lines of a batch of sales at a table, where nothing that happened is
 * refused: a lot that the book does not know is one nobody wrote down.
 */
final class JarsNamed {

  private final Containers containers;
  private final Items items;
  private final Map<String, Item> packed = new HashMap<>();
  private final Map<String, Item> withoutLot = new HashMap<>();
  private final Set<String> lots;
  private final PlaceJars here;

  /**
   * @param lots known to the book, of those that were named
   */
  JarsNamed(
      Containers containers, Items items, List<Item> packed, Set<String> lots, PlaceJars here) {
    this.containers = containers;
    this.items = items;
    this.lots = lots;
    this.here = here;
    packed.stream()
        .filter(item -> !item.isSyrup())
        .forEach(item -> this.packed.put(key(item.lot(), item.container()), item));
  }

  /**
   * The item of a line; what is odd about it is added to the notes.
   *
   * @param field of the line
   * @param number of the line, from 1
   * @throws org.barreltally.containers.UnknownContainer if there is no such size
   */
  Item item(SaidSale.Line line, String field, int number, List<Note> notes) {
    containers.named(line.container(), field + ".container");
    if (line.lot() == null) {
      return withoutLot(line);
    }
    Item item = packed.get(key(line.lot(), line.container()));
    if (item == null) {
      notes.add(
          lots.contains(line.lot())
              ? new Note(
                  number,
                  "not-packed-in-size",
                  "Lot %s was never packed in %s. Booked without a lot; look at the label."
                      .formatted(line.lot(), line.container()))
              : new Note(
                  number,
                  "unknown-lot",
                  "The book knows no lot %s. Booked without a lot; look at the label."
                      .formatted(line.lot())));
      return withoutLot(line);
    }
    if (!here.came(item.id())) {
      notes.add(
          new Note(
              number,
              "lot-not-here",
              "%s of lot %s never came to this table by the book. Look at the label, or enter the pack-out."
                  .formatted(line.container(), line.lot())));
    }
    if (item.held()) {
      notes.add(
          new Note(number, "lot-held", "Lot %s is held, and was sold.".formatted(line.lot())));
    }
    return item;
  }

  private Item withoutLot(SaidSale.Line line) {
    String grade =
        line.grade() != null ? line.grade().code() : here.onlyGrade(line.container()).orElse(null);
    return withoutLot.computeIfAbsent(
        line.container() + " " + grade, key -> items.withoutLot(line.container(), grade));
  }

  /** The grade of an item's jars; null where it is not known. */
  static ColorClass grade(Item item) {
    return item.grade() == null ? null : ColorClass.of(item.grade());
  }

  static List<String> lotsOf(List<SaidSale> sales) {
    List<String> named = new ArrayList<>();
    sales.forEach(sale -> sale.lines().forEach(line -> named.add(line.lot())));
    return named.stream().filter(lot -> lot != null).distinct().sorted().toList();
  }

  private static String key(String lot, String container) {
    return lot + " " + container;
  }
}
