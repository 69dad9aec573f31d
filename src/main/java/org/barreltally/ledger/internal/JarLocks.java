package org.barreltally.ledger.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.List;
import org.barreltally.ledger.Item;

/**
 * Keeps the jars of some lots from being moved, promised, graded or held by others until the
 * transaction ends. Everyone who needs more than one posting takes rows in this order: items, then
 * balances by place and item, then pools by container and grade; so nobody waits in a ring.
 */
@ApplicationScoped
public class JarLocks {

  private static final String ITEMS =
      "SELECT id FROM items WHERE lot IN (:lots) AND container IS NOT NULL ORDER BY id FOR UPDATE";

  private static final String NAMED =
      "SELECT id FROM items WHERE id IN (:items) ORDER BY id FOR KEY SHARE";

  private static final String ROWS =
      """
      INSERT INTO balances (place, item, amount, seq, below_zero, container)
      SELECT p.code, i.id, 0, 0, p.below_zero, i.container
      FROM items i CROSS JOIN places p WHERE i.id IN (:items) AND p.code IN (:places)
      ORDER BY i.id, p.code ON CONFLICT DO NOTHING
      """;

  private static final String BALANCES =
      """
      SELECT b.amount FROM balances b JOIN items i ON i.id = b.item
      WHERE i.lot IN (:lots) AND i.container IS NOT NULL
      ORDER BY b.place, b.item FOR UPDATE OF b
      """;

  /** Writes nothing new into a pool that is there: it only locks it, in order. */
  private static final String POOLS =
      """
      INSERT INTO availability AS a (container, grade, on_hand, held, reserved, out)
      SELECT DISTINCT i.container, g.grade, 0, 0, 0, 0
      FROM items i CROSS JOIN LATERAL (VALUES (i.grade), (CAST(:grade AS text))) AS g (grade)
      WHERE i.lot IN (:lots) AND i.container IS NOT NULL AND g.grade IS NOT NULL
      ORDER BY i.container, g.grade
      ON CONFLICT (container, grade) DO UPDATE SET on_hand = a.on_hand
      """;

  private final EntityManager entities;

  JarLocks(EntityManager entities) {
    this.entities = entities;
  }

  /**
   * Locks all jars of some lots, to change their pools.
   *
   * @param grade a further grade whose pools will be needed; null for none
   */
  public void takeLots(Collection<String> lots, String grade) {
    entities.flush();
    lock(ITEMS, lots);
    // A balance row that is new refers to its item: while the items are locked there are no others
    // than those locked next.
    lock(BALANCES, lots);
    pools(lots, grade);
  }

  /** Locks all jars of the lots of some jars, which will be posted at some places. */
  public void take(Collection<Item> jars, List<String> places) {
    entities.flush();
    List<String> lots = jars.stream().map(Item::lot).distinct().toList();
    lock(ITEMS, lots);
    entities
        .createNativeQuery(ROWS)
        .setParameter("items", jars.stream().map(Item::id).toList())
        .setParameter("places", places)
        .executeUpdate();
    lock(BALANCES, lots);
    pools(lots, null);
  }

  /**
   * Lets rows that refer to some items be written after a posting: who locks their lots waits until
   * then, and who locked them is waited for now, not while balances are locked already.
   */
  public void share(Collection<Item> jars) {
    entities
        .createNativeQuery(NAMED)
        .setParameter("items", jars.stream().map(Item::id).distinct().toList())
        .getResultList();
  }

  private void lock(String sql, Collection<String> lots) {
    entities.createNativeQuery(sql).setParameter("lots", lots).getResultList();
  }

  private void pools(Collection<String> lots, String grade) {
    entities
        .createNativeQuery(POOLS)
        .setParameter("grade", grade)
        .setParameter("lots", lots)
        .executeUpdate();
  }
}
