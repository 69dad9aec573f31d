package org.barreltally.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToLongBiFunction;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Pools;

/** Keeps jars that were promised to one from going to another. */
@ApplicationScoped
public class FreeJars {

  private final Pools pools;

  FreeJars(Pools pools) {
    this.pools = pools;
  }

  /** How many pieces of each container and grade that is. */
  public static Map<String, Map<String, Long>> byPool(Map<Item, Long> pieces) {
    Map<String, Map<String, Long>> pools = new TreeMap<>();
    pieces.forEach(
        (item, count) ->
            pools
                .computeIfAbsent(item.container(), container -> new TreeMap<>())
                .merge(item.grade(), count, Math::addExact));
    return pools;
  }

  /**
   * Checks that jars may leave. Lock them first, so that nobody promises meanwhile.
   *
   * @param own how many of a container and grade the taker itself was promised
   * @throws PromisedElsewhere if too few are free of promises to others
   */
  public void require(Map<Item, Long> pieces, ToLongBiFunction<String, String> own) {
    List<PromisedElsewhere.Shortage> shortages = new ArrayList<>();
    byPool(pieces)
        .forEach(
            (container, grades) ->
                grades.forEach(
                    (grade, wanted) -> {
                      long free =
                          Math.min(wanted, own.applyAsLong(container, grade))
                              + available(container, grade);
                      if (free < wanted) {
                        shortages.add(
                            new PromisedElsewhere.Shortage(container, grade, wanted, free));
                      }
                    }));
    if (!shortages.isEmpty()) {
      throw new PromisedElsewhere(shortages);
    }
  }

  private long available(String container, String grade) {
    return pools.list(container, grade).stream().mapToLong(Pools.Pool::available).sum();
  }
}
