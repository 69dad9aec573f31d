package org.barreltally.shows.plan;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Map;
import java.util.TreeMap;
import org.barreltally.ledger.Pools;
import org.barreltally.measure.ColorClass;
import org.barreltally.shows.Promises;
import org.barreltally.shows.Show;
import org.barreltally.shows.ShowState;
import org.barreltally.shows.TableBook;

/**
 * What a show can be promised: what nobody else was, what it was promised before, and what stands
 * at its table already. Processing grade is left out, as it is never retail.
 */
@ApplicationScoped
public class Takeable {

  private final Pools pools;
  private final Promises promises;
  private final TableBook tables;

  Takeable(Pools pools, Promises promises, TableBook tables) {
    this.pools = pools;
    this.promises = promises;
    this.tables = tables;
  }

  /** Pieces by kind, below zero where too many are promised already. */
  @Transactional
  public Map<JarKind, Long> by(Show show) {
    Map<JarKind, Long> pieces = new TreeMap<>();
    for (Pools.Pool pool : pools.list(null, null)) {
      add(pieces, pool.container(), ColorClass.of(pool.grade()), pool.available());
    }
    promises
        .of(show.id())
        .forEach(
            promise ->
                promise
                    .open()
                    .forEach(line -> add(pieces, line.container(), line.grade(), line.count())));
    if (show.state() == ShowState.PACKED || show.state() == ShowState.RUNNING) {
      tables.of(show).forEach(line -> add(pieces, line.container(), line.grade(), line.onTable()));
    }
    pieces.keySet().removeIf(jar -> jar.grade() == ColorClass.PROCESSING);
    return pieces;
  }

  private static void add(
      Map<JarKind, Long> pieces, String container, ColorClass grade, long count) {
    if (grade != null) {
      pieces.merge(new JarKind(container, grade), count, Long::sum);
    }
  }
}
