package org.barreltally.stock;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import jakarta.transaction.Transactional;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.Barrels;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Places;
import org.barreltally.lots.Lots;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;

/** What stands at own places. */
@ApplicationScoped
public class Stock {

  private static final double GRAMS_PER_KG = 1000;

  /** Which rows to list; a null lets all through. With a container, only jars are listed. */
  public record Filter(String place, String container, ColorClass grade, String lot) {}

  private static final String JARS =
      """
      SELECT b.place, b.container, i.grade, i.lot, b.amount, i.held
      FROM balances b JOIN items i ON i.id = b.item
      WHERE b.container IS NOT NULL AND b.standing_at IN (:places)
      """;

  /**
   * Found by the lot's items, not among all that stands: said so that no statistics, however old
   * while a season is packed, lead PostgreSQL to read every jar.
   */
  private static final String OF_LOT =
      " AND b.item = ANY (ARRAY(SELECT o.id FROM items o WHERE o.lot = :lot))";

  private static final String SORT =
      "b.place %1$s, %2$s b.container %1$s, coalesce(i.lot, '?' || coalesce(i.grade, '')) %1$s";

  /** The order of the characters' numbers, as Java compares them. */
  private static final String BY_CHARACTER = "COLLATE \"C\"";

  private final EntityManager entities;
  private final Barrels barrels;
  private final Places places;
  private final Containers containers;
  private final Lots lots;

  Stock(EntityManager entities, Barrels barrels, Places places, Containers containers, Lots lots) {
    this.entities = entities;
    this.barrels = barrels;
    this.places = places;
    this.containers = containers;
    this.lots = lots;
  }

  /**
   * Rows in the order of their keys, after a key (or null), at most so many. A row below zero is a
   * place that needs a count.
   *
   * @throws org.barreltally.refusal.Refusal if the filter names what the book does not know
   */
  @Transactional
  public List<StockRow> list(Filter filter, StockRow.Key after, int limit) {
    check(filter);
    Stream<StockRow> vessels =
        filter.container() != null
            ? Stream.empty()
            : vessels(filter.lot()).stream()
                .filter(vessel -> matches(vessel, filter))
                .map(Stock::vessel)
                .filter(row -> after == null || row.key().compareTo(after) > 0);
    return Stream.concat(jars(filter, after, limit).stream(), vessels)
        .sorted(Comparator.comparing(StockRow::key))
        .limit(limit)
        .toList();
  }

  private List<Barrel> vessels(String lot) {
    return lot == null ? barrels.withSyrup() : barrels.withSyrupOf(lot);
  }

  private void check(Filter filter) {
    if (filter.place() != null) {
      places.own(filter.place(), "place");
    }
    if (filter.container() != null) {
      containers.named(filter.container(), "container");
    }
    if (filter.lot() != null) {
      lots.named(filter.lot(), "lot");
    }
  }

  private List<StockRow> jars(Filter filter, StockRow.Key after, int limit) {
    StringBuilder sql = new StringBuilder(JARS);
    Map<String, Object> parameters = new HashMap<>();
    parameters.put("places", filter.place() == null ? places.ownCodes() : List.of(filter.place()));
    add(sql, parameters, "b.container = ", "container", filter.container());
    add(
        sql,
        parameters,
        "i.grade = ",
        "grade",
        filter.grade() == null ? null : filter.grade().code());
    if (filter.lot() != null) {
      sql.append(OF_LOT);
      parameters.put("lot", filter.lot());
    }
    if (after != null) {
      sql.append(" AND (").append(SORT.formatted(BY_CHARACTER, "CAST('container' AS text),"));
      sql.append(") > (:p, :k, :n, :l)");
      parameters.put("p", after.place());
      parameters.put("k", after.kind());
      parameters.put("n", after.name());
      parameters.put("l", after.lot());
    }
    sql.append(" ORDER BY ").append(SORT.formatted(BY_CHARACTER, ""));
    Query query = entities.createNativeQuery(sql.toString(), Tuple.class).setMaxResults(limit);
    parameters.forEach(query::setParameter);
    List<?> rows = query.getResultList();
    return rows.stream().map(row -> jars((Tuple) row)).toList();
  }

  private static void add(
      StringBuilder sql,
      Map<String, Object> parameters,
      String condition,
      String name,
      Object value) {
    if (value != null) {
      sql.append(" AND ").append(condition).append(':').append(name);
      parameters.put(name, value);
    }
  }

  private static StockRow jars(Tuple row) {
    String grade = row.get("grade", String.class);
    return new StockRow(
        row.get("place", String.class),
        StockRow.Kind.CONTAINER,
        row.get("container", String.class),
        null,
        grade == null ? null : ColorClass.of(grade),
        row.get("lot", String.class),
        row.get("amount", Long.class),
        null,
        null,
        row.get("held", Boolean.class));
  }

  private static boolean matches(Barrel vessel, Filter filter) {
    return (filter.place() == null || filter.place().equals(vessel.place()))
        && (filter.grade() == null || filter.grade() == vessel.lot().grade());
  }

  private static StockRow vessel(Barrel vessel) {
    double grams = vessel.grams().value();
    return new StockRow(
        vessel.place(),
        vessel.heel() ? StockRow.Kind.HEEL : StockRow.Kind.BARREL,
        null,
        vessel.tag(),
        vessel.lot().grade(),
        vessel.lot().code(),
        null,
        Quantity.rounded(grams / GRAMS_PER_KG, Unit.KG, 3),
        Quantity.rounded(vessel.syrup().mLAt20(grams), Unit.ML, 3).to(Unit.GAL, 2),
        vessel.lot().held());
  }
}
