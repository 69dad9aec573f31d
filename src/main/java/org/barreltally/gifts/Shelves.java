package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.barreltally.gifts.internal.ShelfRows;
import org.barreltally.ledger.Balances;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.Places;
import org.barreltally.lots.Lot;
import org.barreltally.lots.Lots;

/**
 * Opens the shelf of a place for picking: its lots, items, balances and pools are locked in the
 * order in which everybody takes them, so nobody else moves or holds them meanwhile.
 */
@ApplicationScoped
class Shelves {

  private final ShelfRows rows;
  private final Places places;
  private final Lots lots;
  private final Items items;
  private final Balances balances;

  Shelves(ShelfRows rows, Places places, Lots lots, Items items, Balances balances) {
    this.rows = rows;
    this.places = places;
    this.lots = lots;
    this.items = items;
    this.balances = balances;
  }

  /**
   * @param place null for the cool room
   * @param jars of these sizes and grades alone
   * @throws org.barreltally.ledger.UnknownPlace if own stock never stands there
   */
  Shelf open(String place, Collection<Jar> jars) {
    String code = places.atHand(place == null ? PlaceCode.COOL_ROOM : place, "place").code();
    List<String> found = jars.isEmpty() ? List.of() : rows.lots(code, jars);
    if (found.isEmpty()) {
      return new Shelf(code, List.of(), Map.of(), jar -> rows.elsewhere(code, jar));
    }
    Map<String, Lot> locked = lots.locked(found);
    Set<String> containers = Set.copyOf(jars.stream().map(Jar::container).toList());
    List<Item> pickable =
        items.of(found).stream()
            .filter(item -> !item.isSyrup() && containers.contains(item.container()))
            .toList();
    Map<UUID, Long> left = balances.locked(code, pickable);
    // Read again under the locks: a lot may have been held or graded since it was found.
    List<Item> oldestFirst =
        items.of(found).stream()
            .filter(item -> !item.isSyrup() && !item.held())
            .sorted(
                Comparator.comparing((Item item) -> locked.get(item.lot()).madeOn())
                    .thenComparing(Item::lot))
            .toList();
    return new Shelf(code, oldestFirst, left, jar -> rows.elsewhere(code, jar));
  }
}
