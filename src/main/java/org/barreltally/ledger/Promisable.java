package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What can be promised of some pools, kept from being promised by others meanwhile. */
@ApplicationScoped
public class Promisable {

  /** A container and grade. */
  public record Key(String container, String grade) {}

  private final EntityManager entities;

  Promisable(EntityManager entities) {
    this.entities = entities;
  }

  /**
   * Pieces that can still be promised, the pools locked in order until the transaction ends.
   *
   * @return for every pool asked for; zero where it is not known, below zero where it is a to-do
   */
  public Map<Key, Long> locked(Collection<Key> pools) {
    return read(pools, " FOR UPDATE");
  }

  /** The same, locking nothing. */
  public Map<Key, Long> seen(Collection<Key> pools) {
    return read(pools, "");
  }

  private Map<Key, Long> read(Collection<Key> pools, String lock) {
    Map<Key, Long> available = new HashMap<>();
    pools.forEach(pool -> available.put(pool, 0L));
    if (pools.isEmpty()) {
      return available;
    }
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT container, grade, on_hand - held - reserved - out FROM availability"
                    + " WHERE container IN (:containers) AND grade IN (:grades)"
                    + " ORDER BY container, grade"
                    + lock)
            .setParameter(
                "containers", pools.stream().map(Key::container).collect(Collectors.toSet()))
            .setParameter("grades", pools.stream().map(Key::grade).collect(Collectors.toSet()))
            .getResultList();
    for (Object row : rows) {
      Object[] c = (Object[]) row;
      available.computeIfPresent(new Key((String) c[0], (String) c[1]), (k, v) -> (Long) c[2]);
    }
    return available;
  }
}
