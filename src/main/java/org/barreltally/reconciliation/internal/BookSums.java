package org.barreltally.reconciliation.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Unit;
import org.barreltally.reconciliation.Line;
import org.barreltally.reconciliation.Sum;

/**
 * The book summed up by line and density, in one pass over the movements of some years. A reversal
 * falls into the line of what it takes back.
 */
@ApplicationScoped
public class BookSums {

  /** Jars without a lot weigh what jars of their size do on average. */
  private static final String GRAMS =
      """
      CASE WHEN i.container IS NULL THEN 1 ELSE coalesce(i.grams_each, (SELECT avg(a.grams_each)
        FROM items a WHERE a.container = i.container AND a.grams_each IS NOT NULL)) END
      """;

  private static final String STANDS =
      """
      CASE WHEN %s THEN 'barrels' WHEN s.place IS NOT NULL THEN 'consigned' ELSE 'containers' END
      """;

  /**
   * Summed up by plain columns first, of which PostgreSQL knows how few there are, and by line only
   * then: grouped by line at once it sorts every entry on disk.
   */
  private static final String BY_LINE =
      """
      SELECT line, brix, sum(grams) AS grams, sum(jar_grams) AS jar_grams, sum(pieces) AS pieces FROM (
        SELECT CASE
            WHEN p.kind IN ('home', 'out') THEN %1$s
            WHEN p.kind = 'conversion' THEN 'converted'
            WHEN p.code = 'customer' THEN CASE coalesce(t.taken_back, t.kind)
              WHEN 'gift' THEN 'gifts' WHEN 'shelf-count' THEN 'consigned_sold'
              WHEN 'gift-return' THEN 'returned' WHEN 'sale-return' THEN 'returned' ELSE 'sold' END
            ELSE CASE p.code
              WHEN 'boiled' THEN 'made' WHEN 'landowner' THEN 'shares' WHEN 'bulk-buyer' THEN 'bulk'
              WHEN 'given' THEN 'gifts' WHEN 'sampled' THEN 'samples' WHEN 'filter' THEN 'shrink'
              WHEN 'overfill' THEN 'shrink' ELSE p.code END END AS line,
          t.brix, t.grams, t.pieces,
          CASE WHEN t.container IS NULL THEN 0 ELSE t.grams END AS jar_grams
        FROM (
          SELECT e.place, m.kind, o.kind AS taken_back, i.container, l.brix,
            sum(e.amount * %2$s) AS grams,
            sum(CASE WHEN i.container IS NULL THEN 0 ELSE e.amount END) AS pieces
          FROM movements m LEFT JOIN movements o ON o.id = m.reverses
            JOIN entries e ON e.movement = m.id JOIN items i ON i.id = e.item
            LEFT JOIN lots l ON l.code = i.lot
          WHERE m.book_year BETWEEN :from AND :to
            AND (CAST(:lot AS text) IS NULL OR i.lot = CAST(:lot AS text)) %3$s
          GROUP BY e.place, m.kind, o.kind, i.container, l.brix) t
          JOIN places p ON p.code = t.place LEFT JOIN shops s ON s.place = t.place) u
      GROUP BY line, brix
      """;

  private static final String BOOKED =
      BY_LINE.formatted(STANDS.formatted("t.container IS NULL"), GRAMS, "");

  private static final String OWN =
      BY_LINE.formatted(
          STANDS.formatted("t.container IS NULL"),
          GRAMS,
          "AND e.place IN (SELECT code FROM places WHERE kind IN ('home', 'out'))");

  private static final String STANDING =
      """
      SELECT %1$s AS line, l.brix, sum(b.amount * %2$s) AS grams,
        sum(CASE WHEN i.container IS NULL THEN 0 ELSE b.amount * %2$s END) AS jar_grams,
        sum(CASE WHEN i.container IS NULL THEN 0 ELSE b.amount END) AS pieces
      FROM balances b JOIN items i ON i.id = b.item LEFT JOIN lots l ON l.code = i.lot
        JOIN places p ON p.code = b.standing_at LEFT JOIN shops s ON s.place = b.standing_at
      WHERE p.kind IN ('home', 'out') AND (CAST(:lot AS text) IS NULL OR i.lot = CAST(:lot AS text))
      GROUP BY 1, 2
      """
          .formatted(STANDS.formatted("i.container IS NULL"), GRAMS);

  /** Of runs the standard uncertainty in gallons that their sheets tell, squared. */
  private static final String RUNS =
      """
      SELECT l.brix, sum(power(CAST(r.sheet #>> '{shrink,unexplainedStandardUncertainty,value}'
        AS double precision), 2)) AS squares
      FROM canning_runs r JOIN movements m ON m.id = r.movement JOIN lots l ON l.code = r.lot
      WHERE m.book_year = :season AND (CAST(:lot AS text) IS NULL OR r.lot = CAST(:lot AS text))
        AND NOT EXISTS (SELECT 1 FROM movements x WHERE x.reverses = m.id)
      GROUP BY l.brix
      """;

  /**
   * Of barrels weighed again: the reading and the one before it, taken to be as good. A reading
   * told after its year was closed is not of that year, whose balance stands.
   */
  private static final String WEIGHINGS =
      """
      SELECT coalesce(2 * sum(power(r.result_u, 2)), 0) FROM barrel_readings r
      WHERE r.kind = 'weighing' AND r.read_on BETWEEN :first AND :last
        AND (CAST(:lot AS text) IS NULL OR r.lot = CAST(:lot AS text))
        AND NOT EXISTS (SELECT 1 FROM closed_years c
          WHERE c.year = :season AND c.closed_at < r.recorded_at)
        AND EXISTS (SELECT 1 FROM barrel_readings b WHERE b.filling = r.filling
          AND b.kind = 'weighing' AND b.recorded_at < r.recorded_at)
      """;

  private static final double ML_PER_GAL = Quantity.of(1, Unit.GAL).doubleIn(Unit.ML);

  private final EntityManager entities;

  BookSums(EntityManager entities) {
    this.entities = entities;
  }

  /** What stands at own places now. */
  public List<Sum> standing(String lot) {
    return sums(entities.createNativeQuery(STANDING, Tuple.class).setParameter("lot", lot));
  }

  /** What moved, booked in a year. */
  public List<Sum> booked(int season, String lot) {
    return moved(BOOKED, season, season, lot);
  }

  /** What moved to and from own places, booked in later years. */
  public List<Sum> later(int season, String lot) {
    return moved(OWN, season + 1, Integer.MAX_VALUE, lot);
  }

  private List<Sum> moved(String sql, int from, int to, String lot) {
    return sums(
        entities
            .createNativeQuery(sql, Tuple.class)
            .setParameter("from", from)
            .setParameter("to", to)
            .setParameter("lot", lot));
  }

  /**
   * Standard uncertainty in grams of what a year left unexplained: canning runs and weighings, each
   * on its own, added in quadrature (GUM, JCGM 100, 5.1.2). Counts of jars are taken as exact.
   */
  public double unexplainedU(int season, String lot) {
    double squares =
        ((Number)
                entities
                    .createNativeQuery(WEIGHINGS)
                    .setParameter("season", season)
                    .setParameter("first", LocalDate.of(season, 1, 1))
                    .setParameter("last", LocalDate.of(season, 12, 31))
                    .setParameter("lot", lot)
                    .getSingleResult())
            .doubleValue();
    List<?> runs =
        entities
            .createNativeQuery(RUNS, Tuple.class)
            .setParameter("season", season)
            .setParameter("lot", lot)
            .getResultList();
    for (Object each : runs) {
      Tuple run = (Tuple) each;
      Number gallonsSquared = run.get("squares", Number.class);
      if (gallonsSquared != null) {
        double gramsPerGal = new Syrup(number(run, "brix")).gramsForML20(ML_PER_GAL);
        squares += gallonsSquared.doubleValue() * gramsPerGal * gramsPerGal;
      }
    }
    return Math.sqrt(squares);
  }

  private static List<Sum> sums(Query query) {
    List<?> rows = query.getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Sum(
                    Line.valueOf(row.get("line", String.class).toUpperCase(Locale.ROOT)),
                    number(row, "brix"),
                    row.get("grams", BigDecimal.class).doubleValue(),
                    row.get("jar_grams", Number.class).doubleValue(),
                    row.get("pieces", Number.class).longValue()))
        .toList();
  }

  private static Double number(Tuple row, String column) {
    Number number = row.get(column, Number.class);
    return number == null ? null : number.doubleValue();
  }
}
