package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;

/** What landowners were owed for the season and what was handed over. */
@ApplicationScoped
class SharesSection implements SeasonBookSection {

  private static final String LEASES =
      """
      SELECT l.bush, t.basis, t.currency, c.taps, c.taps * t.rate_per_tap AS owed, d.jars, d.ml,
        (SELECT e.on_day FROM lease_closings e WHERE e.lease = l.id AND e.recorded_at <= :asof) AS closed
      FROM leases l
        LEFT JOIN LATERAL (SELECT * FROM lease_terms t WHERE t.lease = l.id AND t.recorded_at <= :asof
          ORDER BY t.recorded_at DESC, t.id DESC LIMIT 1) t ON true
        LEFT JOIN LATERAL (SELECT c.taps FROM lease_taps c
          WHERE c.lease = l.id AND c.kind = t.governs AND c.recorded_at <= :asof
          ORDER BY c.from_day DESC, c.recorded_at DESC, c.id DESC LIMIT 1) c ON true
        LEFT JOIN LATERAL (
          SELECT sum(CAST(j ->> 'count' AS bigint)) AS jars,
            sum(CAST(j ->> 'count' AS bigint) * CAST(j ->> 'mLEach' AS numeric)) AS ml
          FROM lease_deliveries d JOIN movements m ON m.id = d.movement
            CROSS JOIN LATERAL jsonb_array_elements(d.lines) j
          WHERE d.lease = l.id AND m.book_year <= :year
            AND NOT EXISTS (SELECT 1 FROM movements x WHERE x.reverses = m.id AND x.book_year <= :year)) d ON true
      WHERE l.season = :year AND l.recorded_at <= :asof ORDER BY l.bush, l.id
      """;

  private final BookRows rows;

  SharesSection(BookRows rows) {
    this.rows = rows;
  }

  @Override
  public int order() {
    return 1000;
  }

  @Override
  public String title() {
    return "Landowners' shares";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.note(
        "Leases of the season, by their bush; the statements name the landowners and reckon what"
            + " counts against the rent. Rent in syrup is barter: your tax preparer decides what to report.");
    out.table(
        Heading.of("Bush", 0.26),
        Heading.of("Basis", 0.17),
        Heading.number("taps", 0.08),
        Heading.number("Rent owed", 0.15),
        Heading.number("jars handed over", 0.1),
        Heading.number("gal in them", 0.1),
        Heading.of("Closed on", 0.14));
    rows.each(
        LEASES,
        year,
        lease ->
            out.row(
                lease.text("bush"),
                lease.words("basis"),
                lease.count("taps"),
                lease.money("owed"),
                lease.count("jars"),
                lease.gallons("ml"),
                lease.text("closed")));
  }
}
