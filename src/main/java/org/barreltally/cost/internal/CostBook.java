package org.barreltally.cost.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.cost.CostMethod;
import org.barreltally.cost.flow.Contribution;
import org.barreltally.cost.flow.Goods;
import org.barreltally.cost.flow.Happening;
import org.barreltally.cost.flow.Packing;
import org.barreltally.cost.flow.Spent;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Days;

/** The book as the reckoning of costs reads it, all of one moment. */
@ApplicationScoped
public class CostBook {

  /**
   * What was read.
   *
   * @param happenings in the order of their book years and, in a year, in which things happened;
   *     one that was taken back in its own year is left out with its reversal
   * @param costs in the farm's currency, in the order in which they were told
   * @param places what a place is: {@code home, out, show, shop}
   */
  public record Read(
      List<Happening> happenings,
      List<Spent> costs,
      Packing packing,
      NavigableMap<Integer, CostMethod> methods,
      Map<String, String> places) {}

  private static final String MOVED =
      """
      SELECT m.id, coalesce(u.kind, m.kind), m.book_year, m.happened_at, m.reverses IS NOT NULL,
        i.id, i.lot, i.container, i.grams_each, coalesce(g.grade, i.grade),
        g.recorded_at, CASE WHEN cardinality(l.seasons) = 1 THEN l.seasons[1] END,
        e.place, p.kind, e.amount, min(m.book_year) OVER (PARTITION BY i.lot)
      FROM movements m LEFT JOIN movements u ON u.id = m.reverses
        JOIN entries e ON e.movement = m.id JOIN items i ON i.id = e.item
        JOIN places p ON p.code = e.place LEFT JOIN lots l ON l.code = i.lot
        LEFT JOIN (SELECT DISTINCT ON (lot) lot, grade, recorded_at FROM lot_gradings
          ORDER BY lot, recorded_at, id) g ON g.lot = i.lot
      WHERE m.book_year <= ?
        AND NOT EXISTS (SELECT 1 FROM movements r
          WHERE r.reverses = m.id AND r.book_year = m.book_year)
        AND NOT EXISTS (SELECT 1 FROM movements o
          WHERE o.id = m.reverses AND o.book_year = m.book_year)
      ORDER BY m.book_year, m.happened_at, m.id, e.line
      """;

  private static final String COSTS =
      """
      SELECT c.id, CASE WHEN c.season IS NOT NULL THEN 'season' WHEN c.lot IS NOT NULL THEN 'lot'
          WHEN c.run IS NOT NULL THEN 'run' WHEN c.container IS NOT NULL THEN 'container'
          ELSE 'supply' END,
        coalesce(c.season::text, c.lot, c.run, c.container, c.supply), c.kind, c.on_day, c.amount,
        c.pieces, c.book_year, r.book_year
      FROM costs c LEFT JOIN cost_reversals r ON r.cost = c.id
      WHERE c.show IS NULL AND c.currency = ? AND c.book_year <= ? ORDER BY c.id
      """;

  private static final String BROKEN =
      """
      SELECT r.lot, f ->> 'container', CAST(f ->> 'broken' AS int)
      FROM canning_runs r CROSS JOIN jsonb_array_elements(r.sheet -> 'fills') f
      WHERE CAST(f ->> 'broken' AS int) > 0
      """;

  private static final String SUPPLIES =
      """
      SELECT code, CASE kind WHEN 'container' THEN 'jar' ELSE kind END, container,
        coalesce(per_jar, 1), coalesce(jars_each, 1)
      FROM supplies WHERE per_jar IS NOT NULL OR jars_each IS NOT NULL ORDER BY code
      """;

  private static final String PLACES =
      """
      SELECT p.code, CASE WHEN w.code IS NOT NULL THEN 'show' WHEN s.place IS NOT NULL THEN 'shop'
        ELSE p.kind END
      FROM places p LEFT JOIN shows w ON w.code = p.code LEFT JOIN shops s ON s.place = p.code
      WHERE p.kind IN ('home', 'out')
      """;

  private final EntityManager entities;
  private final Days days;

  CostBook(EntityManager entities, Days days) {
    this.entities = entities;
    this.days = days;
  }

  /** What is booked up to a year; in a transaction of its own, so that all is of one moment. */
  @Transactional(Transactional.TxType.REQUIRES_NEW)
  public Read upTo(int year, String currency) {
    NavigableMap<Integer, Instant> closed = new TreeMap<>();
    Gathering gathering = new Gathering(closed);
    List<Spent> costs = new ArrayList<>();
    Map<String, Map<String, Integer>> broken = new HashMap<>();
    List<Packing.Used> supplies = new ArrayList<>();
    NavigableMap<Integer, CostMethod> methods = new TreeMap<>();
    Map<String, String> places = new HashMap<>();
    new Bundle()
        .add("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY")
        .ask(
            "SELECT year, closed_at FROM closed_years",
            row -> closed.put(row.getInt(1), row.getObject(2, OffsetDateTime.class).toInstant()))
        .ask(MOVED, gathering::add, year)
        .ask(COSTS, row -> costs.add(spent(row)), currency, year)
        .ask(
            BROKEN,
            row ->
                broken
                    .computeIfAbsent(row.getString(1), lot -> new HashMap<>())
                    .merge(row.getString(2), row.getInt(3), Integer::sum))
        .ask(
            SUPPLIES,
            row ->
                supplies.add(
                    new Packing.Used(
                        row.getString(1),
                        row.getString(2),
                        row.getString(3),
                        row.getInt(4),
                        row.getInt(5))))
        .ask(
            "SELECT year, method FROM cost_methods ORDER BY id",
            row -> methods.put(row.getInt(1), CostMethod.of(row.getString(2))))
        .ask(PLACES, row -> places.put(row.getString(1), row.getString(2)))
        .send(entities);
    return new Read(gathering.happenings(), costs, new Packing(broken, supplies), methods, places);
  }

  private static Spent spent(ResultSet row) throws SQLException {
    return new Spent(
        row.getObject(1, UUID.class),
        Contribution.Of.valueOf(row.getString(2).toUpperCase(Locale.ROOT)),
        row.getString(3),
        row.getString(4),
        row.getObject(5, LocalDate.class),
        row.getBigDecimal(6),
        row.getObject(7, Integer.class),
        row.getInt(8),
        row.getObject(9, Integer.class));
  }

  /** Gathers entries into movements. */
  private final class Gathering {

    private record Head(String kind, int year, LocalDate day, boolean takesBack) {}

    private final NavigableMap<Integer, Instant> closed;
    private final Map<UUID, Head> heads = new LinkedHashMap<>();
    private final Map<UUID, List<Happening.Moved>> moved = new HashMap<>();
    private final Map<UUID, Goods> goods = new HashMap<>();

    private Gathering(NavigableMap<Integer, Instant> closed) {
      this.closed = closed;
    }

    private void add(ResultSet row) throws SQLException {
      UUID movement = row.getObject(1, UUID.class);
      if (!heads.containsKey(movement)) {
        heads.put(
            movement,
            new Head(
                row.getString(2),
                row.getInt(3),
                days.dateOf(row.getObject(4, OffsetDateTime.class).toInstant()),
                row.getBoolean(5)));
        moved.put(movement, new ArrayList<>());
      }
      UUID item = row.getObject(6, UUID.class);
      if (!goods.containsKey(item)) {
        goods.put(
            item,
            new Goods(
                item,
                row.getString(7),
                row.getString(8),
                row.getBigDecimal(9),
                grade(row),
                row.getObject(12, Integer.class)));
      }
      Happening.At at =
          switch (row.getString(14)) {
            case "home", "out" -> Happening.At.OWN;
            case "conversion" -> Happening.At.MAKING;
            default -> Happening.At.OUTSIDE;
          };
      moved
          .get(movement)
          .add(new Happening.Moved(goods.get(item), row.getString(13), at, row.getLong(15)));
    }

    /** The lot's first grade, unless it came after the year closed in which the lot began. */
    private String grade(ResultSet row) throws SQLException {
      OffsetDateTime graded = row.getObject(11, OffsetDateTime.class);
      if (row.getString(7) != null) {
        var closing = closed.ceilingEntry(row.getInt(16));
        boolean late =
            graded == null || closing != null && graded.toInstant().isAfter(closing.getValue());
        return late ? "ungraded" : row.getString(10);
      }
      return row.getString(10) == null ? "unknown" : row.getString(10);
    }

    private List<Happening> happenings() {
      List<Happening> all = new ArrayList<>();
      heads.forEach(
          (id, head) ->
              all.add(
                  new Happening(
                      id, head.kind(), head.year(), head.day(), head.takesBack(), moved.get(id))));
      return all;
    }
  }
}
