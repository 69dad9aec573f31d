package org.barreltally.keeping.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The order in which tables can be filled: what a row refers to comes before it. */
final class LoadOrder {

  private LoadOrder() {}

  /**
   * Sorts tables so that each comes after those it needs.
   *
   * @throws IllegalStateException when tables need each other in a circle; one constraint of the
   *     circle must then be deferrable
   */
  static List<BookTable> of(Collection<BookTable> tables) {
    Map<String, BookTable> waiting = new LinkedHashMap<>();
    tables.forEach(table -> waiting.put(table.name(), table));
    List<BookTable> order = new ArrayList<>();
    while (!waiting.isEmpty()) {
      List<BookTable> ready =
          waiting.values().stream()
              .filter(table -> table.needs().stream().noneMatch(waiting::containsKey))
              .toList();
      if (ready.isEmpty()) {
        throw new IllegalStateException("tables need each other in a circle: " + waiting.keySet());
      }
      ready.forEach(table -> waiting.remove(table.name()));
      order.addAll(ready);
    }
    return order;
  }
}
