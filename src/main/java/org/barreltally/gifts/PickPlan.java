package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barreltally.gifts.internal.ShelfRows;

/**
 * From where the jars of an order are to be picked, by place: the cool room first, the oldest
 * packed first, nothing held. It binds nobody; the lots are fixed by picking.
 */
@ApplicationScoped
public class PickPlan {

  private final ShelfRows rows;

  PickPlan(ShelfRows rows) {
    this.rows = rows;
  }

  /**
   * Jars of one lot to take from a place.
   *
   * @param lot null where nothing that is not held stands anywhere
   * @param place null likewise
   */
  public record Take(String place, Jar jar, String lot, long pieces) {}

  /** What is reserved and not picked yet, by place. */
  @Transactional
  public List<Take> of(GiftOrder order) {
    Map<Jar, Long> wanted = new LinkedHashMap<>();
    for (GiftLine line : order.lines()) {
      if (line.state() == RecipientState.CONFIRMED) {
        order.promises(line.n()).forEach(p -> wanted.merge(p.jar(), p.pieces(), Long::sum));
      }
    }
    List<Take> takes = new ArrayList<>();
    for (Take there : wanted.isEmpty() ? List.<Take>of() : rows.standing(wanted.keySet())) {
      long pieces = Math.min(there.pieces(), wanted.getOrDefault(there.jar(), 0L));
      if (pieces > 0) {
        takes.add(new Take(there.place(), there.jar(), there.lot(), pieces));
        wanted.merge(there.jar(), -pieces, Long::sum);
      }
    }
    wanted.forEach(
        (jar, pieces) -> {
          if (pieces > 0) {
            takes.add(new Take(null, jar, null, pieces));
          }
        });
    return takes;
  }
}
