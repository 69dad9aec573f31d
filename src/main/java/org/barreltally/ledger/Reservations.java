package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;

/**
 * Promises of jars by container and grade. A promise is reserved all or nothing, then taken,
 * released or lapsed, wholly or in part; every step is a row of its own.
 */
@ApplicationScoped
public class Reservations {

  /** A container and grade, and how many pieces are wanted of it. */
  public record Line(String container, String grade, long pieces) {
    public Line {
      if (pieces <= 0) {
        throw new IllegalArgumentException("a reservation line is of at least one piece");
      }
    }
  }

  /** How a reservation, or a part of it, ends. */
  public enum End {
    TAKEN,
    RELEASED,
    LAPSED
  }

  private record Pool(String container, String grade) implements Comparable<Pool> {
    @Override
    public int compareTo(Pool other) {
      int byContainer = container.compareTo(other.container);
      return byContainer != 0 ? byContainer : grade.compareTo(other.grade);
    }
  }

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  public Reservations(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /**
   * Reserves all lines or none.
   *
   * @return the reservation's id
   * @throws ShortOfStock naming every pool that has too little
   */
  @Transactional
  public UUID reserve(List<Line> lines) {
    UUID reservation = ids.next();
    SortedMap<Pool, Long> wanted = byPool(lines);
    List<ShortOfStock.Shortage> shortages = new ArrayList<>();
    wanted.forEach(
        (pool, pieces) -> {
          long available = lockAndReadAvailable(pool);
          if (available < pieces) {
            shortages.add(
                new ShortOfStock.Shortage(pool.container(), pool.grade(), pieces, available));
          }
        });
    if (!shortages.isEmpty()) {
      throw new ShortOfStock(shortages);
    }
    wanted.forEach((pool, pieces) -> step(reservation, pool, "reserved", pieces));
    return reservation;
  }

  /**
   * Ends a reservation, or the given part of it.
   *
   * @throws MoreThanReserved if a line ends more than is still open
   */
  @Transactional
  public void end(UUID reservation, List<Line> lines, End how) {
    SortedMap<Pool, Long> ended = byPool(lines);
    ended.keySet().forEach(this::lockAndReadAvailable);
    Map<Pool, Long> open = openByPool(reservation);
    ended.forEach(
        (pool, pieces) -> {
          long left = open.getOrDefault(pool, 0L);
          if (pieces > left) {
            throw new MoreThanReserved(pool.container(), pool.grade(), left, pieces);
          }
        });
    String step = how.name().toLowerCase(Locale.ROOT);
    ended.forEach((pool, pieces) -> step(reservation, pool, step, pieces));
  }

  /** What of a reservation is still open. */
  public List<Line> open(UUID reservation) {
    return openByPool(reservation).entrySet().stream()
        .filter(e -> e.getValue() > 0)
        .map(e -> new Line(e.getKey().container(), e.getKey().grade(), e.getValue()))
        .toList();
  }

  private static SortedMap<Pool, Long> byPool(List<Line> lines) {
    SortedMap<Pool, Long> byPool = new TreeMap<>();
    lines.forEach(
        line ->
            byPool.merge(new Pool(line.container(), line.grade()), line.pieces(), Math::addExact));
    return byPool;
  }

  private long lockAndReadAvailable(Pool pool) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT on_hand - held - reserved - out FROM availability"
                    + " WHERE container = :container AND grade = :grade FOR UPDATE")
            .setParameter("container", pool.container())
            .setParameter("grade", pool.grade())
            .getResultList();
    return rows.isEmpty() ? 0 : ((Number) rows.get(0)).longValue();
  }

  private SortedMap<Pool, Long> openByPool(UUID reservation) {
    SortedMap<Pool, Long> open = new TreeMap<>();
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT container, grade, CAST(sum(CASE step WHEN 'reserved' THEN pieces ELSE -pieces END)"
                    + " AS bigint) FROM reservation_steps WHERE reservation = :reservation"
                    + " GROUP BY container, grade")
            .setParameter("reservation", reservation)
            .getResultList();
    for (Object row : rows) {
      Object[] c = (Object[]) row;
      open.put(new Pool((String) c[0], (String) c[1]), (Long) c[2]);
    }
    return open;
  }

  private void step(UUID reservation, Pool pool, String step, long pieces) {
    entities
        .createNativeQuery(
            "INSERT INTO reservation_steps"
                + " (id, reservation, container, grade, step, pieces, recorded_at, recorded_by)"
                + " VALUES (:id, :reservation, :container, :grade, :step, :pieces, :at, :by)")
        .setParameter("id", ids.next())
        .setParameter("reservation", reservation)
        .setParameter("container", pool.container())
        .setParameter("grade", pool.grade())
        .setParameter("step", step)
        .setParameter("pieces", pieces)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    entities
        .createNativeQuery(
            "UPDATE availability SET reserved = reserved + :change"
                + " WHERE container = :container AND grade = :grade")
        .setParameter("change", "reserved".equals(step) ? pieces : -pieces)
        .setParameter("container", pool.container())
        .setParameter("grade", pool.grade())
        .executeUpdate();
  }
}
