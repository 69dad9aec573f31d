package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;
import org.barreltally.ledger.Days;

/** Gift orders with the states of their boxes; nobody is named. */
@ApplicationScoped
class GiftsSection implements SeasonBookSection {

  private static final String ORDERS =
      """
      WITH lines AS (
        SELECT l.order_id, l.boxes * l.price AS goods, coalesce(s.becomes, 'confirmed') AS state
        FROM gift_lines l LEFT JOIN LATERAL (SELECT s.becomes FROM gift_steps s
          WHERE s.order_id = l.order_id AND s.n = l.n AND s.becomes IS NOT NULL AND s.recorded_at <= :asof
          ORDER BY s.recorded_at DESC, s.id DESC LIMIT 1) s ON true)
      SELECT o.recorded_at, o.currency, row_number() OVER (ORDER BY o.recorded_at, o.id) AS number,
        (SELECT count(*) FROM lines l WHERE l.order_id = o.id) AS recipients,
        (SELECT string_agg(c.state || ' ' || c.n, ', ' ORDER BY c.state)
          FROM (SELECT l.state, count(*) AS n FROM lines l WHERE l.order_id = o.id GROUP BY l.state) c) AS states,
        (SELECT sum(l.goods) FROM lines l WHERE l.order_id = o.id AND l.state <> 'cancelled') AS goods,
        (SELECT sum(p.amount) FROM gift_payments p WHERE p.order_id = o.id AND p.recorded_at <= :asof) AS paid
      FROM gift_orders o
      WHERE o.recorded_at >= :from AND o.recorded_at < :until AND o.recorded_at <= :asof
      ORDER BY o.recorded_at, o.id
      """;

  private final BookRows rows;
  private final Days days;

  GiftsSection(BookRows rows, Days days) {
    this.rows = rows;
    this.days = days;
  }

  @Override
  public int order() {
    return 900;
  }

  @Override
  public String title() {
    return "Gift orders";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.note(
        "Orders taken in the year. They stand by number; who ordered and who received is not part"
            + " of this book. Goods are the prices of boxes not cancelled, without postage.");
    out.table(
        Heading.of("Order", 0.1),
        Heading.of("Taken on", 0.15),
        Heading.number("recipients", 0.12),
        Heading.of("States", 0.31),
        Heading.number("Goods", 0.16),
        Heading.number("Paid", 0.16));
    rows.each(
        ORDERS,
        year,
        order ->
            out.row(
                "no. " + order.count("number"),
                days.dateOf(order.instant("recorded_at")).toString(),
                order.count("recipients"),
                order.words("states"),
                order.money("goods"),
                order.money("paid")));
  }
}
