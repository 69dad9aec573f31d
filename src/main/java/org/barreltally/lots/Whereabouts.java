package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.List;
import org.barreltally.ledger.PlaceCode;

/** Where the syrup and jars of lots stand or went. */
@ApplicationScoped
public class Whereabouts {

  /** Jars of a lot at a place of the book, or gone to one of its outside accounts. */
  public record Jars(String lot, String place, String placeKind, String container, long pieces) {

    /** Jars come from here: packed, or there when the book began. */
    boolean isSource() {
      return "conversion".equals(placeKind) || PlaceCode.OPENING.equals(place);
    }

    /** What counts found missing (above zero) or over (below zero). */
    public boolean isUnexplained() {
      return PlaceCode.UNEXPLAINED.equals(place);
    }

    /** Whether jars of the lot are there by the book. */
    public boolean isStanding() {
      return pieces > 0 && !isSource() && !isUnexplained();
    }
  }

  /** Syrup of a lot in bulk at a place of the book, or gone to an outside account, in grams. */
  public record Bulk(String lot, String place, String placeKind, long grams) {}

  private static final String STANDING =
      """
      SELECT i.lot, b.place, p.kind, i.container, b.amount
      FROM items i JOIN balances b ON b.item = i.id JOIN places p ON p.code = b.place
      WHERE i.lot IN (:lots) AND b.amount <> 0 AND i.container IS %s NULL
      ORDER BY i.lot, b.place, i.container
      """;

  private final EntityManager entities;

  public Whereabouts(EntityManager entities) {
    this.entities = entities;
  }

  /** Jars by lot, place and container; where they came from stands below zero. */
  public List<Jars> jars(Collection<String> lots) {
    return standing(lots, "NOT").stream()
        .map(Object[].class::cast)
        .map(c -> new Jars((String) c[0], (String) c[1], (String) c[2], (String) c[3], (long) c[4]))
        .toList();
  }

  /** Bulk syrup by lot and place; where it came from stands below zero. */
  public List<Bulk> bulk(Collection<String> lots) {
    return standing(lots, "").stream()
        .map(Object[].class::cast)
        .map(c -> new Bulk((String) c[0], (String) c[1], (String) c[2], (long) c[4]))
        .toList();
  }

  private List<?> standing(Collection<String> lots, String not) {
    return entities
        .createNativeQuery(STANDING.formatted(not))
        .setParameter("lots", lots)
        .getResultList();
  }
}
