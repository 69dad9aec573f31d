package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import org.barreltally.ledger.internal.JarLocks;

/**
 * The pools from which jars are promised: one per container and grade. A lot's jars change pool
 * when the lot is graded again, and cannot be promised while it is held.
 */
@ApplicationScoped
public class Pools {

  /** What can be promised of one container and grade, in pieces. */
  public record Pool(
      String container, String grade, long onHand, long held, long reserved, long out) {

    /** What can still be promised; below zero it is a to-do. */
    public long available() {
      return onHand - held - reserved - out;
    }
  }

  private final EntityManager entities;
  private final JarLocks locks;

  Pools(EntityManager entities, JarLocks locks) {
    this.entities = entities;
    this.locks = locks;
  }

  /** The pools, by container and grade; a filter that is null lets all through. */
  public List<Pool> list(String container, String grade) {
    return list(container, grade, null, Integer.MAX_VALUE);
  }

  /**
   * A part of the pools, by container and grade.
   *
   * @param after the pool before the part; null to begin
   * @param limit at most so many
   */
  @Transactional
  public List<Pool> list(String container, String grade, Pool after, int limit) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT container, grade, on_hand, held, reserved, out FROM availability"
                    + " WHERE container = coalesce(CAST(:container AS text), container)"
                    + " AND grade = coalesce(CAST(:grade AS text), grade)"
                    + " AND (container, grade) > (:afterContainer, :afterGrade)"
                    + " ORDER BY container, grade")
            .setParameter("container", container)
            .setParameter("grade", grade)
            .setParameter("afterContainer", after == null ? "" : after.container())
            .setParameter("afterGrade", after == null ? "" : after.grade())
            .setMaxResults(limit)
            .getResultList();
    return rows.stream()
        .map(Object[].class::cast)
        .map(
            c ->
                new Pool(
                    (String) c[0],
                    (String) c[1],
                    (long) c[2],
                    (long) c[3],
                    (long) c[4],
                    (long) c[5]))
        .toList();
  }

  /** Moves a lot's jars to the pool of another grade. */
  @Transactional
  public void regrade(String lot, String grade) {
    change(List.of(lot), "grade = :to", grade, grade);
  }

  /** Takes a lot's jars out of what can be promised, or puts them back. */
  @Transactional
  public void hold(String lot, boolean held) {
    hold(List.of(lot), held);
  }

  /** As {@link #hold(String, boolean)}, for several lots at once; at least one. */
  @Transactional
  public void hold(Collection<String> lots, boolean held) {
    change(lots, "held = :to", held, null);
  }

  /**
   * Takes the lots' jars out of their pools, changes the items, and adds them to the pools again.
   * All of it is locked first, so that no posting slips in between.
   */
  private void change(Collection<String> lots, String assignment, Object to, String grade) {
    locks.takeLots(lots, grade);
    shift(lots, -1);
    entities
        .createNativeQuery(
            "UPDATE items SET " + assignment + " WHERE lot IN (:lots) AND container IS NOT NULL")
        .setParameter("to", to)
        .setParameter("lots", lots)
        .executeUpdate();
    shift(lots, 1);
  }

  private void shift(Collection<String> lots, int sign) {
    entities
        .createNativeQuery(
            """
            INSERT INTO availability AS a (container, grade, on_hand, held, reserved, out)
            SELECT i.container, i.grade, :sign * sum(b.amount),
              :sign * coalesce(sum(b.amount) FILTER (WHERE i.held AND p.kind = 'home'), 0), 0,
              :sign * coalesce(sum(b.amount) FILTER (WHERE p.kind = 'out'), 0)
            FROM items i JOIN balances b ON b.item = i.id JOIN places p ON p.code = b.place
            WHERE i.lot IN (:lots) AND i.container IS NOT NULL AND p.kind IN ('home', 'out')
            GROUP BY i.container, i.grade ORDER BY i.container, i.grade
            ON CONFLICT (container, grade) DO UPDATE SET on_hand = a.on_hand + excluded.on_hand,
              held = a.held + excluded.held, out = a.out + excluded.out
            """)
        .setParameter("sign", sign)
        .setParameter("lots", lots)
        .executeUpdate();
  }
}
