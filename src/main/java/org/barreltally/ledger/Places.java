package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The places of the book. */
@ApplicationScoped
public class Places {

  private final EntityManager entities;

  public Places(EntityManager entities) {
    this.entities = entities;
  }

  public Optional<Place> find(String code) {
    return query("WHERE code = :code", code).stream().findFirst();
  }

  /**
   * The own place of that code.
   *
   * @param field where in the request it was named
   * @throws UnknownPlace if there is none, or own stock never stands there
   */
  public Place own(String code, String field) {
    return Optional.ofNullable(code)
        .flatMap(this::find)
        .filter(Place::isOwn)
        .orElseThrow(
            () ->
                new UnknownPlace(
                    code, field, ownCodes().stream().limit(20).collect(Collectors.joining(", "))));
  }

  /**
   * The own place of that code, where jars may be taken and put by hand.
   *
   * @param field where in the request it was named
   * @throws UnknownPlace if there is none, or own stock never stands there
   * @throws SetAside if jars stand there for gift orders only
   */
  public Place atHand(String code, String field) {
    Place place = own(code, field);
    if (place.setAside()) {
      throw new SetAside(place, field);
    }
    return place;
  }

  /** The codes of the places where own stock stands, at home and out. */
  public List<String> ownCodes() {
    return query("WHERE kind IN ('home', 'out')", null).stream().map(Place::code).toList();
  }

  /** Places by code, after a code (or null), at most so many. */
  @Transactional
  public List<Place> list(String after, int limit) {
    return query("WHERE code > :code", after == null ? "" : after).stream().limit(limit).toList();
  }

  /**
   * Opens a place where own stock stands away from home. Facts told from there are already past, so
   * its balances may go below zero where {@code belowZero} is set.
   *
   * @param code lower-case letters, digits and hyphens, at most 40; not taken yet
   */
  public Place openOut(String code, String name, boolean belowZero) {
    entities
        .createNativeQuery(
            "INSERT INTO places (code, name, kind, below_zero) VALUES (:code, :name, 'out', :below)")
        .setParameter("code", code)
        .setParameter("name", name)
        .setParameter("below", belowZero)
        .executeUpdate();
    return new Place(code, name, Place.Kind.OUT, belowZero, false);
  }

  private List<Place> query(String where, String code) {
    var query =
        entities.createNativeQuery(
            "SELECT code, name, kind, below_zero, set_aside FROM places "
                + where
                + " ORDER BY code",
            Tuple.class);
    if (code != null) {
      query.setParameter("code", code);
    }
    List<?> rows = query.getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Place(
                    row.get("code", String.class),
                    row.get("name", String.class),
                    Place.Kind.valueOf(row.get("kind", String.class).toUpperCase(Locale.ROOT)),
                    row.get("below_zero", Boolean.class),
                    row.get("set_aside", Boolean.class)))
        .toList();
  }
}
