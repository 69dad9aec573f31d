package org.barreltally.ledger.internal;

import java.util.Collection;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.Item;

/** Writes the rows of items. */
public final class ItemRows {

  private static final String ADD =
      """
      INSERT INTO items (id, lot, container, grams_each, grade, held)
        SELECT * FROM unnest(?::uuid[], ?::text[], ?::text[], ?::numeric[], ?::text[], ?::boolean[])
      """;

  private ItemRows() {}

  /** Adds items; their lots must be known by then. */
  public static void add(Collection<Item> items, Bundle write) {
    write.add(
        ADD,
        Column.of("uuid", items, Item::id),
        Column.of("text", items, Item::lot),
        Column.of("text", items, Item::container),
        Column.of("numeric", items, Item::gramsEach),
        Column.of("text", items, Item::grade),
        Column.of("boolean", items, Item::held));
  }
}
