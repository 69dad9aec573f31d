package org.barreltally.shops;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.UUID;

/** What the book has on a shop's shelf. */
@ApplicationScoped
class Standing {

  /** Jars of one lot and size, in pieces. */
  record Jars(UUID item, String container, String grade, String lot, long count) {}

  private final EntityManager entities;

  Standing(EntityManager entities) {
    this.entities = entities;
  }

  /** By size, the oldest lot first. */
  List<Jars> at(String place) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT b.item, i.container, i.grade, i.lot, b.amount FROM balances b"
                    + " JOIN items i ON i.id = b.item JOIN lots l ON l.code = i.lot"
                    + " WHERE b.standing_at = :place AND b.amount > 0 "
                    + " ORDER BY i.container, l.made_on, i.lot")
            .setParameter("place", place)
            .getResultList();
    return rows.stream()
        .map(Object[].class::cast)
        .map(c -> new Jars((UUID) c[0], (String) c[1], (String) c[2], (String) c[3], (Long) c[4]))
        .toList();
  }
}
