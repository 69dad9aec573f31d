package org.barreltally.gifts.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.barreltally.gifts.Jar;
import org.barreltally.gifts.PickPlan;
import org.barreltally.measure.ColorClass;

/** Which lots stand where, to be picked from. */
@ApplicationScoped
public class ShelfRows {

  private final EntityManager entities;

  ShelfRows(EntityManager entities) {
    this.entities = entities;
  }

  /** Lots, not held, of which some of these jars stand at a place. */
  public List<String> lots(String place, Collection<Jar> jars) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT DISTINCT i.lot FROM items i JOIN balances b ON b.item = i.id"
                    + " WHERE b.standing_at = :place AND b.amount > 0 AND NOT i.held"
                    + " AND i.container IN (:containers) AND i.grade IN (:grades)")
            .setParameter("place", place)
            .setParameter(
                "containers", jars.stream().map(Jar::container).collect(Collectors.toSet()))
            .setParameter(
                "grades", jars.stream().map(jar -> jar.grade().code()).collect(Collectors.toSet()))
            .getResultList();
    return rows.stream().map(String.class::cast).toList();
  }

  /** Pieces of a jar, not held, at own rooms other than a place and what is set aside. */
  public Map<String, Long> elsewhere(String place, Jar jar) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT b.place, CAST(sum(b.amount) AS bigint) FROM items i"
                    + " JOIN balances b ON b.item = i.id JOIN places p ON p.code = b.standing_at"
                    + " WHERE p.kind = 'home' AND NOT p.set_aside AND b.place <> :place"
                    + " AND b.amount > 0 AND NOT i.held AND i.container = :container"
                    + " AND i.grade = :grade GROUP BY b.place ORDER BY b.place")
            .setParameter("place", place)
            .setParameter("container", jar.container())
            .setParameter("grade", jar.grade().code())
            .getResultList();
    Map<String, Long> byPlace = new LinkedHashMap<>();
    for (Object row : rows) {
      Object[] c = (Object[]) row;
      byPlace.put((String) c[0], (Long) c[1]);
    }
    return byPlace;
  }

  /** Jars of some sizes and grades, not held, at own rooms: the cool room first, oldest first. */
  public List<PickPlan.Take> standing(Collection<Jar> jars) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT b.place, i.container, i.grade, i.lot, b.amount FROM items i"
                    + " JOIN balances b ON b.item = i.id JOIN places p ON p.code = b.standing_at"
                    + " JOIN lots l ON l.code = i.lot"
                    + " WHERE p.kind = 'home' AND NOT p.set_aside AND b.amount > 0"
                    + " AND NOT i.held AND i.container IN (:containers) AND i.grade IN (:grades)"
                    + " ORDER BY b.place <> 'cool-room', b.place, l.made_on, i.lot")
            .setParameter(
                "containers", jars.stream().map(Jar::container).collect(Collectors.toSet()))
            .setParameter(
                "grades", jars.stream().map(jar -> jar.grade().code()).collect(Collectors.toSet()))
            .getResultList();
    return rows.stream()
        .map(Object[].class::cast)
        .map(
            c ->
                new PickPlan.Take(
                    (String) c[0],
                    new Jar((String) c[1], ColorClass.of((String) c[2])),
                    (String) c[3],
                    (Long) c[4]))
        .toList();
  }
}
