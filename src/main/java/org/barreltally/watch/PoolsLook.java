package org.barreltally.watch;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.ledger.Pools;
import org.barreltally.measure.ColorClass;

/** Looks for sizes and grades of which more is promised than there is to give. */
@ApplicationScoped
class PoolsLook implements Look {

  private final Pools pools;

  PoolsLook(Pools pools) {
    this.pools = pools;
  }

  @Override
  public List<WatchItem> items(LocalDate today) {
    return pools.list(null, null).stream()
        .filter(pool -> pool.available() < 0)
        .map(PoolsLook::item)
        .toList();
  }

  private static WatchItem item(Pools.Pool pool) {
    ColorClass grade = ColorClass.of(pool.grade());
    return WatchItem.ofPool(
        pool.container(),
        grade,
        "%s %s: %d on hand, %d of them held and %d out, %d promised: %d short. Pack more, release a hold, or change a promise."
            .formatted(
                pool.container(),
                grade.code(),
                pool.onHand(),
                pool.held(),
                pool.out(),
                pool.reserved(),
                -pool.available()));
  }
}
