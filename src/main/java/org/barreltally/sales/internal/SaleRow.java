package org.barreltally.sales.internal;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.pricing.Money;
import org.barreltally.sales.Note;
import org.barreltally.sales.SaidSale;
import org.barreltally.sales.Sale;

/**
 * A sale about to be kept.
 *
 * @param said in canonical form
 */
public record SaleRow(Sale sale, String currency, String said) {

  private static final String INSERT =
      """
      INSERT INTO sales (id, place, channel, said_at, happened_at, price_list, currency, total,
        deal_saving, tax, cash, card, owing, change, said, movement, buyer, recorded_at, recorded_by)
      SELECT s.*, ?::timestamptz, ?::uuid
      FROM unnest(?::uuid[], ?::text[], ?::text[], ?::timestamptz[], ?::timestamptz[], ?::uuid[],
        ?::text[], ?::numeric[], ?::numeric[], ?::numeric[], ?::numeric[], ?::numeric[],
        ?::numeric[], ?::numeric[], ?::text[], ?::uuid[], ?::uuid[]) AS s
      """;

  private static final String INSERT_LINES =
      """
      INSERT INTO sale_lines (sale, line, container, lot, item, pieces, unit_price, price_said, amount)
      SELECT * FROM unnest(?::uuid[], ?::smallint[], ?::text[], ?::text[], ?::uuid[], ?::bigint[],
        ?::numeric[], ?::boolean[], ?::numeric[])
      """;

  private static final String INSERT_NOTES =
      """
      INSERT INTO sale_notes (sale, line, code, detail)
      SELECT * FROM unnest(?::uuid[], ?::smallint[], ?::text[], ?::text[])
      """;

  /** A line of a sale, numbered from 1. */
  private record Line(UUID sale, int number, Sale.Line line) {}

  private record Noted(UUID sale, Note note) {}

  /** Adds what keeps some sales, in three statements however many there are. */
  static void add(List<SaleRow> rows, Instant now, UUID by, Bundle write) {
    addHeads(rows, now, by, write);
    addLines(rows.stream().flatMap(SaleRow::lines).toList(), write);
    List<Noted> notes =
        rows.stream()
            .flatMap(row -> row.sale.notes().stream().map(note -> new Noted(row.sale.id(), note)))
            .toList();
    if (!notes.isEmpty()) {
      addNotes(notes, write);
    }
  }

  private static void addHeads(List<SaleRow> rows, Instant now, UUID by, Bundle write) {
    write.add(
        INSERT,
        now,
        by,
        Column.of("uuid", rows, row -> row.sale.id()),
        Column.of("text", rows, row -> row.sale.place()),
        Column.of("text", rows, row -> row.sale.channel().code()),
        Column.of("timestamptz", rows, row -> row.sale.at().toString()),
        Column.of("timestamptz", rows, row -> row.sale.bookedAt().toString()),
        Column.of("uuid", rows, row -> row.sale.priceList()),
        Column.of("text", rows, SaleRow::currency),
        Column.of("numeric", rows, row -> amount(row.sale.total())),
        Column.of("numeric", rows, row -> amount(row.sale.dealSaving())),
        Column.of("numeric", rows, row -> amount(row.sale.tax())),
        Column.of("numeric", rows, row -> row.paid(SaidSale.Paid::cash)),
        Column.of("numeric", rows, row -> row.paid(SaidSale.Paid::card)),
        Column.of("numeric", rows, row -> row.paid(SaidSale.Paid::owing)),
        Column.of("numeric", rows, row -> amount(row.sale.changeDue())),
        Column.of("text", rows, SaleRow::said),
        Column.of("uuid", rows, row -> row.sale.movement()),
        Column.of("uuid", rows, row -> row.sale.buyer()));
  }

  private static void addLines(List<Line> lines, Bundle write) {
    write.add(
        INSERT_LINES,
        Column.of("uuid", lines, Line::sale),
        Column.of("smallint", lines, Line::number),
        Column.of("text", lines, one -> one.line.container()),
        Column.of("text", lines, one -> one.line.saidLot()),
        Column.of("uuid", lines, one -> one.line.item()),
        Column.of("bigint", lines, one -> one.line.count()),
        Column.of("numeric", lines, one -> amount(one.line.price())),
        Column.of("boolean", lines, one -> one.line.priceSaid()),
        Column.of("numeric", lines, one -> amount(one.line.amount())));
  }

  private static void addNotes(List<Noted> notes, Bundle write) {
    write.add(
        INSERT_NOTES,
        Column.of("uuid", notes, Noted::sale),
        Column.of("smallint", notes, one -> one.note.line()),
        Column.of("text", notes, one -> one.note.code()),
        Column.of("text", notes, one -> one.note.detail()));
  }

  private Stream<Line> lines() {
    List<Sale.Line> lines = sale.lines();
    return IntStream.range(0, lines.size()).mapToObj(n -> new Line(sale.id(), n + 1, lines.get(n)));
  }

  private BigDecimal paid(Function<SaidSale.Paid, Money> how) {
    return sale.paid() == null ? null : amount(how.apply(sale.paid()));
  }

  private static BigDecimal amount(Money money) {
    return money == null ? null : money.amount();
  }
}
