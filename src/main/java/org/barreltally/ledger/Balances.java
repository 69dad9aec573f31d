package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.ledger.internal.JarLocks;

/** What stands where, to be compared with what was counted there. */
@ApplicationScoped
public class Balances {

  private final EntityManager entities;
  private final JarLocks locks;

  Balances(EntityManager entities, JarLocks locks) {
    this.entities = entities;
    this.locks = locks;
  }

  /**
   * The pieces of jars that the book has at a place. Until the transaction ends, nobody else moves,
   * grades, holds or promises jars of these lots, and the caller may post and hold them. Lock the
   * lots themselves first.
   *
   * @return by item, zero where none ever stood there
   */
  public Map<UUID, Long> locked(String place, Collection<Item> jars) {
    locks.take(jars, List.of(place, PlaceCode.UNEXPLAINED));
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT item, amount FROM balances WHERE place = :place AND item IN (:items)")
            .setParameter("place", place)
            .setParameter("items", jars.stream().map(Item::id).toList())
            .getResultList();
    Map<UUID, Long> pieces = new HashMap<>();
    for (Object row : rows) {
      Object[] c = (Object[]) row;
      pieces.put((UUID) c[0], (Long) c[1]);
    }
    return pieces;
  }

  /**
   * To be called before a posting by whoever writes rows beside it that refer to its items, so that
   * nobody who locks their lots waits in a ring with it.
   */
  public void beforeNaming(Collection<Item> jars) {
    locks.share(jars);
  }

  /**
   * Locks jars at a place as {@link #locked} does, and refuses what does not stand there.
   *
   * @throws NotThatMuchThere if fewer of an item stand there than are asked for
   */
  public void require(String place, Map<Item, Long> pieces) {
    Map<UUID, Long> standing = locked(place, pieces.keySet());
    pieces.forEach(
        (item, count) -> {
          long there = standing.getOrDefault(item.id(), 0L);
          if (there < count) {
            throw new NotThatMuchThere(place, item.lot(), item.container(), there, count);
          }
        });
  }
}
