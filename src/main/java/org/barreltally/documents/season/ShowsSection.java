package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;

/** The shows of the year with what their settlements came to. */
@ApplicationScoped
class ShowsSection implements SeasonBookSection {

  private static final String SHOWS =
      """
      SELECT h.name, h.town, h.starts, coalesce(t.state, 'applied') AS state,
        s.told #>> '{takings,currency}' AS currency,
        CAST(s.told #>> '{takings,amount}' AS numeric) AS takings,
        CAST(s.told #>> '{cashOverShort,amount}' AS numeric) AS cash,
        CAST(s.told #>> '{profit,amount}' AS numeric) AS profit,
        (SELECT sum(CAST(j ->> 'count' AS bigint)) FROM jsonb_array_elements(s.told -> 'sold') j) AS jars
      FROM shows h
        LEFT JOIN LATERAL (SELECT t.state FROM show_steps t WHERE t.show = h.id AND t.recorded_at <= :asof
          ORDER BY t.recorded_at DESC, t.id DESC LIMIT 1) t ON true
        LEFT JOIN LATERAL (SELECT s.told FROM show_settlements s WHERE s.show = h.id AND s.recorded_at <= :asof
          ORDER BY s.recorded_at DESC, s.id DESC LIMIT 1) s ON true
      WHERE h.booked_at <= :asof AND (extract(year FROM h.starts) = :year
        OR EXISTS (SELECT 1 FROM show_settlements o JOIN movements m ON m.id = o.movement
          WHERE o.show = h.id AND m.book_year = :year))
      ORDER BY h.starts, h.code
      """;

  private final BookRows rows;

  ShowsSection(BookRows rows) {
    this.rows = rows;
  }

  @Override
  public int order() {
    return 800;
  }

  @Override
  public String title() {
    return "Shows";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.note(
        "Shows that began in the year or were settled in it, by their last settlement. Profit is"
            + " after fee, travel and helper; whether the cost of the syrup is in it, the settlement says.");
    out.table(
        Heading.of("Show", 0.27),
        Heading.of("From", 0.12),
        Heading.of("State", 0.11),
        Heading.number("jars sold", 0.08),
        Heading.number("Takings", 0.15),
        Heading.number("Cash over or short", 0.13),
        Heading.number("Profit", 0.14));
    rows.each(
        SHOWS,
        year,
        show ->
            out.row(
                show.text("name") + ", " + show.text("town"),
                show.text("starts"),
                show.words("state"),
                show.count("jars"),
                show.money("takings"),
                show.money("cash"),
                show.money("profit")));
  }
}
