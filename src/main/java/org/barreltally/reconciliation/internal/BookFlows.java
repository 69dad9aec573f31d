package org.barreltally.reconciliation.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.util.List;
import java.util.function.Function;

/**
 * What a year's movements carried from where to where, and what was measured beside. A movement and
 * the reversal that took it back in the same year are both left out.
 *
 * <p>Nodes are {@code run:} and a movement that turns one thing into another, {@code bulk:}, a lot
 * and how often it was weighed again before, {@code jars:}, a place, a size and whether its lot was
 * counted there in the year ({@code c} or {@code n}), and {@code out:} with a place outside. What a
 * movement moves of one item from several places to several is parted in proportion, which keeps
 * each place's sum.
 */
@ApplicationScoped
public class BookFlows {

  /**
   * What went one way.
   *
   * @param kind of the movements
   * @param grams of syrup
   * @param pieces of jars; 0 for syrup
   * @param lines how often somebody counted or weighed it
   * @param emptied whether it took all the book had there
   */
  public record Moved(
      String from,
      String to,
      String kind,
      double grams,
      double pieces,
      long lines,
      boolean emptied) {}

  /**
   * What stands at a node when the year begins or ends.
   *
   * @param usual grams of one jar there; 1 for syrup
   * @param items how many lots
   * @param twice how many of them two people counted, the last time in the year
   * @param over whether it is the table of a show that was counted home
   */
  public record Stands(
      String node,
      double opening,
      double closing,
      double usual,
      long items,
      long twice,
      boolean over) {}

  /**
   * A reading of the syrup of a lot.
   *
   * @param nth 0 when it was filled, then each weighing in the year
   * @param kind weighing or dipstick
   */
  public record Reading(String lot, int nth, String kind, double grams, double u) {}

  /** A run or a pouring: its movement and the lot it made. */
  public record Made(String movement, String lot) {}

  /**
   * A barrel sold whole.
   *
   * @param ours grams in air by our scale on the day; null if nobody weighed it then
   * @param theirs grams in air by the buyer's; null if not told
   */
  public record Sold(String lot, double brix, Double ours, Double theirs) {}

  private static final String NODES =
      """
      WITH again AS (
        SELECT r.lot, r.recorded_at, r.result, r.result_u,
          row_number() OVER (PARTITION BY r.lot ORDER BY r.recorded_at) AS nth
        FROM barrel_readings r JOIN lots l ON l.code = r.lot
        WHERE r.kind = 'weighing' AND r.read_on BETWEEN :first AND :last
          AND (l.kind = 'packed' OR EXISTS (SELECT 1 FROM barrel_readings b WHERE b.lot = r.lot
            AND b.kind IN ('weighing', 'dipstick') AND b.recorded_at < r.recorded_at))),
      counted AS (
        SELECT DISTINCT ON (c.place, n.container, n.lot) c.place, n.container, n.lot,
          EXISTS (SELECT 1 FROM count_round_ends e WHERE e.count = c.id) AS twice
        FROM stock_counts c JOIN stock_count_lines n ON n.count = c.id
        WHERE c.counted_at >= :from AND c.counted_at < :until
        ORDER BY c.place, n.container, n.lot, c.counted_at DESC, c.recorded_at DESC),
      shelves AS (SELECT DISTINCT s.place, n ->> 'container' AS container, n ->> 'lot' AS lot
        FROM shop_counts c JOIN shops s ON s.code = c.shop CROSS JOIN jsonb_array_elements(c.lines) AS n
        WHERE c.on_day BETWEEN :first AND :last),
      known AS (SELECT place, container, lot, twice FROM counted
        UNION ALL SELECT place, container, lot, false FROM shelves),
      weight AS (SELECT container, avg(grams_each) AS usual FROM items
        WHERE grams_each IS NOT NULL GROUP BY container),
      thing AS (SELECT i.id, i.lot, i.container,
          CASE WHEN i.container IS NULL THEN 1
            ELSE coalesce(i.grams_each, w.usual) END::float8 AS grams
        FROM items i LEFT JOIN weight w ON w.container = i.container)
      """;

  private static final String JARS =
      """
      'jars:' || p.code || ':' || t.container || ':' || CASE WHEN k.lot IS NULL THEN 'n' ELSE 'c' END
      """;

  private static final String MOVED =
      NODES
          + """
          , season AS (
            SELECT m.id, m.kind, m.recorded_at FROM movements m
              LEFT JOIN movements o ON o.id = m.reverses
              LEFT JOIN movements x ON x.reverses = m.id AND x.book_year = :season
            WHERE m.book_year = :season AND x.id IS NULL AND (o.id IS NULL OR o.book_year < :season)),
          told AS (
            SELECT s.id AS movement, s.kind, e.item, e.amount::float8 AS amount, t.container, t.grams,
              e.balance_after = 0 AS emptied,
              sum(greatest(e.amount, 0)) OVER (PARTITION BY s.id, e.item)::float8 AS whole,
              CASE WHEN bool_or(p.kind = 'conversion') OVER (PARTITION BY s.id)
                THEN 'run:' || s.id END AS run,
              CASE p.kind WHEN 'conversion' THEN 'run:' || s.id WHEN 'outside' THEN 'out:' || p.code
                ELSE CASE WHEN t.container IS NULL THEN 'bulk:' || t.lot || ':' || (SELECT count(*)
                    FROM again a WHERE a.lot = t.lot AND a.recorded_at <= s.recorded_at)
                  ELSE %s END END AS node
            FROM season s JOIN entries e ON e.movement = s.id JOIN thing t ON t.id = e.item
              JOIN places p ON p.code = e.place
              LEFT JOIN known k ON k.place = e.place AND k.container = t.container AND k.lot = t.lot),
          pairs AS (
            SELECT f.node AS a, t.node AS b, f.kind, -f.amount * t.amount / f.whole * f.grams AS grams,
              CASE WHEN f.container IS NULL THEN 0 ELSE -f.amount * t.amount / f.whole END AS pieces,
              f.emptied
            FROM told f JOIN told t ON t.movement = f.movement AND t.item = f.item AND t.amount > 0
            WHERE f.run IS NULL AND f.amount < 0
            UNION ALL
            SELECT CASE WHEN amount < 0 THEN node ELSE run END, CASE WHEN amount < 0 THEN run ELSE node END,
              kind, abs(amount) * grams, CASE WHEN container IS NULL THEN 0 ELSE abs(amount) END, emptied
            FROM told WHERE run IS NOT NULL)
          SELECT a, b, kind, sum(grams) AS grams, sum(pieces) AS pieces, count(*) AS lines,
            bool_or(emptied) AS emptied
          FROM pairs WHERE a <> b GROUP BY 1, 2, 3 ORDER BY 1, 2, 3
          """
              .formatted(JARS);

  private static final String STANDS =
      NODES
          + """
          , after AS (
            SELECT e.place, e.item, sum(CASE WHEN m.book_year > :season THEN e.amount ELSE 0 END) AS later,
              sum(CASE WHEN m.book_year = :season THEN e.amount ELSE 0 END) AS within
            FROM movements m JOIN entries e ON e.movement = m.id JOIN places p ON p.code = e.place
            WHERE m.book_year >= :season AND p.kind IN ('home', 'out') GROUP BY 1, 2),
          now AS (SELECT place, item, amount FROM balances WHERE standing_at IS NOT NULL),
          standing AS (
            SELECT CASE WHEN t.container IS NULL THEN 'bulk:' || t.lot ELSE %s END AS node, t.grams,
              t.container, k.twice, EXISTS (SELECT 1 FROM shows h WHERE h.code = p.code
                AND h.state IN ('closed', 'settled')) AS over, coalesce(b.amount, 0) - coalesce(a.later, 0) AS closing,
              coalesce(b.amount, 0) - coalesce(a.later, 0) - coalesce(a.within, 0) AS opening
            FROM now b FULL JOIN after a ON a.place = b.place AND a.item = b.item
              JOIN places p ON p.code = coalesce(b.place, a.place)
              JOIN thing t ON t.id = coalesce(b.item, a.item)
              LEFT JOIN known k ON k.place = p.code AND k.container = t.container AND k.lot = t.lot
            WHERE p.kind IN ('home', 'out'))
          SELECT node, sum(opening * grams) AS opening, sum(closing * grams) AS closing,
            avg(grams) AS usual, bool_or(over) AS over,
            count(*) AS items, count(*) FILTER (WHERE twice) AS twice
          FROM standing WHERE opening <> 0 OR closing <> 0 OR twice IS NOT NULL GROUP BY 1 ORDER BY 1
          """
              .formatted(JARS);

  private static final String READINGS =
      NODES
          + """
          SELECT lot, nth, 'weighing' AS kind, result, result_u FROM again
          UNION ALL
          SELECT * FROM (
            SELECT DISTINCT ON (r.lot, r.kind) r.lot, 0::bigint, r.kind, r.result, r.result_u
            FROM barrel_readings r JOIN lots l ON l.code = r.lot
            WHERE l.kind = 'bulk' AND r.kind IN ('weighing', 'dipstick') AND r.read_on <= :last
              AND NOT EXISTS (SELECT 1 FROM again a WHERE a.lot = r.lot AND a.recorded_at <= r.recorded_at)
            ORDER BY r.lot, r.kind, r.recorded_at DESC) AS filled
          """;

  private static final String MADE =
      """
      SELECT CAST(r.movement AS text) AS movement, r.lot FROM canning_runs r
        JOIN movements m ON m.id = r.movement WHERE m.book_year = :season
      """;

  private static final String RUNS =
      """
      SELECT count(*) FROM canning_runs r JOIN movements m ON m.id = r.movement
      WHERE m.book_year = :season AND NOT EXISTS (
        SELECT 1 FROM movements x WHERE x.reverses = m.id AND x.book_year = :season)
      """;

  private static final String SOLD =
      """
      SELECT s.lot, l.brix::float8 AS brix,
        CASE WHEN s.ticket #>> '{bookDifference,weight,value}' IS NOT NULL
          THEN s.ticket #>> '{ours,weight,value}' END AS ours,
        s.ticket #>> '{ours,weight,unit}' AS ours_unit,
        s.ticket #>> '{theirs,weight,value}' AS theirs, s.ticket #>> '{theirs,weight,unit}' AS theirs_unit
      FROM bulk_sales s JOIN movements m ON m.id = s.movement JOIN lots l ON l.code = s.lot
      WHERE m.book_year = :season AND NOT EXISTS (SELECT 1 FROM movements x WHERE x.reverses = m.id)
      """;

  private static final String TAGS = "SELECT lot, tag FROM fillings";

  private static final String PLACES = "SELECT code, name FROM places";

  private final EntityManager entities;
  private final WeightText weights;

  BookFlows(EntityManager entities, WeightText weights) {
    this.entities = entities;
    this.weights = weights;
  }

  /** How many runs are in a year's flows, each of which is at least one flow from a barrel. */
  public int runs(int season) {
    return ((Number)
            entities.createNativeQuery(RUNS).setParameter("season", season).getSingleResult())
        .intValue();
  }

  public List<Moved> moved(Period period) {
    return rows(
        period.of(entities, MOVED),
        row ->
            new Moved(
                row.get("a", String.class),
                row.get("b", String.class),
                row.get("kind", String.class),
                number(row, "grams"),
                number(row, "pieces"),
                row.get("lines", Number.class).longValue(),
                row.get("emptied", Boolean.class)));
  }

  public List<Stands> stands(Period period) {
    return rows(
        period.of(entities, STANDS),
        row ->
            new Stands(
                row.get("node", String.class),
                number(row, "opening"),
                number(row, "closing"),
                number(row, "usual"),
                row.get("items", Number.class).longValue(),
                row.get("twice", Number.class).longValue(),
                row.get("over", Boolean.class)));
  }

  public List<Reading> readings(Period period) {
    return rows(
        period.of(entities, READINGS),
        row ->
            new Reading(
                row.get("lot", String.class),
                row.get("nth", Number.class).intValue(),
                row.get("kind", String.class),
                number(row, "result"),
                number(row, "result_u")));
  }

  public List<Made> made(int season) {
    return rows(
        entities.createNativeQuery(MADE, Tuple.class).setParameter("season", season),
        row -> new Made(row.get("movement", String.class), row.get("lot", String.class)));
  }

  public List<Sold> sold(int season) {
    return rows(
        entities.createNativeQuery(SOLD, Tuple.class).setParameter("season", season),
        row ->
            new Sold(
                row.get("lot", String.class),
                number(row, "brix"),
                weights.grams(row.get("ours", String.class), row.get("ours_unit", String.class)),
                weights.grams(
                    row.get("theirs", String.class), row.get("theirs_unit", String.class))));
  }

  /** Lots and the tags of their vessels. */
  public List<String[]> tags() {
    return pairs(TAGS, "lot", "tag");
  }

  /** Codes and names of places. */
  public List<String[]> places() {
    return pairs(PLACES, "code", "name");
  }

  private List<String[]> pairs(String sql, String a, String b) {
    return rows(
        entities.createNativeQuery(sql, Tuple.class),
        row -> new String[] {row.get(a, String.class), row.get(b, String.class)});
  }

  private static <T> List<T> rows(Query query, Function<Tuple, T> read) {
    List<?> rows = query.getResultList();
    return rows.stream().map(Tuple.class::cast).map(read).toList();
  }

  private static double number(Tuple row, String column) {
    Number number = row.get(column, Number.class);
    return number == null ? 0 : number.doubleValue();
  }
}
