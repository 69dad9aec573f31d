package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.Collection;

/**
 * Keeps the jars of some lots from being moved, promised, graded or held by others until the
 * transaction ends. Everyone who needs more than one posting takes rows in this order: items, then
 * balances by place and item, then pools by container and grade; so nobody waits in a ring.
 */
@ApplicationScoped
class JarLocks {

  private final EntityManager entities;

  JarLocks(EntityManager entities) {
    this.entities = entities;
  }

  /**
   * Locks the items, all their balances, and the pools they are in.
   *
   * @param grade a further grade whose pools will be needed; null for none
   */
  void take(Collection<String> lots, String grade) {
    entities.flush();
    // A balance row that is new refers to its item: while the items are locked there are no others
    // than those locked next.
    run(
        "SELECT id FROM items WHERE lot IN (:lots) AND container IS NOT NULL"
            + " ORDER BY id FOR UPDATE",
        lots);
    run(
        "SELECT b.amount FROM balances b JOIN items i ON i.id = b.item"
            + " WHERE i.lot IN (:lots) AND i.container IS NOT NULL"
            + " ORDER BY b.place, b.item FOR UPDATE OF b",
        lots);
    entities
        .createNativeQuery(
            """
            INSERT INTO availability AS a (container, grade, on_hand, held, reserved, out)
            SELECT DISTINCT i.container, g.grade, 0, 0, 0, 0
            FROM items i CROSS JOIN LATERAL (VALUES (i.grade), (CAST(:grade AS text))) AS g (grade)
            WHERE i.lot IN (:lots) AND i.container IS NOT NULL AND g.grade IS NOT NULL
            ORDER BY i.container, g.grade
            ON CONFLICT (container, grade) DO UPDATE SET on_hand = a.on_hand
            """)
        .setParameter("grade", grade)
        .setParameter("lots", lots)
        .executeUpdate();
  }

  private void run(String sql, Collection<String> lots) {
    entities.createNativeQuery(sql).setParameter("lots", lots).getResultList();
  }
}
