package org.barreltally.ledger.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.List;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.Item;

/**
 * Keeps the jars of some lots from being moved, promised, graded or held by others until the
 * transaction ends. Everyone who needs more than one posting takes rows in this order: items, then
 * balances by place and item, then pools by container and grade; so nobody waits in a ring.
 *
 * <p>Before an item's row its turn is taken, an advisory lock: PostgreSQL hands those out in the
 * order of asking, while it lets any number of row locks that are shared go ahead of somebody who
 * waits to have the row alone. With ten phones selling a lot that was for as long as they sold.
 */
@ApplicationScoped
public class JarLocks {

  /** Of 1,024 turns, so that many lots at once do not fill the database's table of locks. */
  private static final String TURNS =
      """
      SELECT CAST(%1$s(hashtext(current_schema() || ' jars'), t.turn) AS text)
      FROM (SELECT DISTINCT hashtext(i.id::text) %% 1024 AS turn FROM items i WHERE %2$s ORDER BY 1) t
      """;

  private static final String OF_LOTS = "i.lot = ANY (?::text[]) AND i.container IS NOT NULL";
  private static final String OF_IDS = "i.id = ANY (?::uuid[])";

  private static final String TURN_ALONE = TURNS.formatted("pg_advisory_xact_lock", OF_LOTS);
  private static final String ITEMS =
      "SELECT i.id FROM items i WHERE " + OF_LOTS + " ORDER BY i.id FOR UPDATE";

  private static final String TURN_SHARED = TURNS.formatted("pg_advisory_xact_lock_shared", OF_IDS);
  private static final String NAMED =
      "SELECT i.id FROM items i WHERE " + OF_IDS + " ORDER BY i.id FOR KEY SHARE";

  private static final String ROWS =
      """
      INSERT INTO balances (place, item, amount, seq, below_zero, container)
      SELECT p.code, i.id, 0, 0, p.below_zero, i.container
      FROM items i CROSS JOIN places p WHERE %s AND p.code = ANY (?::text[])
      ORDER BY i.id, p.code ON CONFLICT DO NOTHING
      """
          .formatted(OF_IDS);

  private static final String BALANCES =
      """
      SELECT b.amount FROM balances b JOIN items i ON i.id = b.item
      WHERE %s ORDER BY b.place, b.item FOR UPDATE OF b
      """
          .formatted(OF_LOTS);

  /** Writes nothing new into a pool that is there: it only locks it, in order. */
  private static final String POOLS =
      """
      INSERT INTO availability AS a (container, grade, on_hand, held, reserved, out)
      SELECT DISTINCT i.container, g.grade, 0, 0, 0, 0
      FROM items i CROSS JOIN LATERAL (VALUES (i.grade), (?::text)) AS g (grade)
      WHERE %s AND g.grade IS NOT NULL
      ORDER BY i.container, g.grade
      ON CONFLICT (container, grade) DO UPDATE SET on_hand = a.on_hand
      """
          .formatted(OF_LOTS);

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
    Column codes = texts(lots);
    // A balance row that is new refers to its item: while the items are locked there are no others
    // than those locked next.
    new Bundle()
        .add(TURN_ALONE, codes)
        .add(ITEMS, codes)
        .add(BALANCES, codes)
        .add(POOLS, grade, codes)
        .send(entities);
  }

  /** Locks all jars of the lots of some jars, which will be posted at some places. */
  public void take(Collection<Item> jars, List<String> places) {
    Column codes = texts(jars.stream().map(Item::lot).distinct().toList());
    new Bundle()
        .add(TURN_ALONE, codes)
        .add(ITEMS, codes)
        .add(ROWS, ids(jars), texts(places))
        .add(BALANCES, codes)
        .add(POOLS, null, codes)
        .send(entities);
  }

  /**
   * Lets rows that refer to some items be written after a posting: who locks their lots waits until
   * then, and who locked them is waited for now, not while balances are locked already.
   */
  public void share(Collection<Item> jars) {
    Column items = ids(jars);
    Bundle.byKeys().add(TURN_SHARED, items).add(NAMED, items).send(entities);
  }

  private static Column texts(Collection<String> texts) {
    return Column.of("text", texts);
  }

  private static Column ids(Collection<Item> jars) {
    return Column.of("uuid", jars, Item::id);
  }
}
