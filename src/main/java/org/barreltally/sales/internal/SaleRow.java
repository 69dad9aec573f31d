package org.barreltally.sales.internal;

import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
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

  static final String INSERT =
      """
      INSERT INTO sales (id, place, channel, said_at, happened_at, price_list, currency, total,
        deal_saving, tax, cash, card, owing, change, said, movement, buyer, recorded_at, recorded_by)
      VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""";

  static final String INSERT_LINE =
      """
      INSERT INTO sale_lines (sale, line, container, lot, item, pieces, unit_price, price_said, amount)
      VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)""";

  static final String INSERT_NOTE =
      "INSERT INTO sale_notes (sale, line, code, detail) VALUES (?, ?, ?, ?)";

  void bind(PreparedStatement head, Instant now, UUID by) throws SQLException {
    SaidSale.Paid paid = sale.paid();
    head.setObject(1, sale.id());
    head.setString(2, sale.place());
    head.setString(3, sale.channel().code());
    head.setObject(4, sale.at().atOffset(ZoneOffset.UTC));
    head.setObject(5, sale.bookedAt().atOffset(ZoneOffset.UTC));
    head.setObject(6, sale.priceList(), Types.OTHER);
    head.setString(7, currency);
    head.setBigDecimal(8, amount(sale.total()));
    head.setBigDecimal(9, amount(sale.dealSaving()));
    head.setBigDecimal(10, amount(sale.tax()));
    head.setBigDecimal(11, paid == null ? null : amount(paid.cash()));
    head.setBigDecimal(12, paid == null ? null : amount(paid.card()));
    head.setBigDecimal(13, paid == null ? null : amount(paid.owing()));
    head.setBigDecimal(14, amount(sale.changeDue()));
    head.setString(15, said);
    head.setObject(16, sale.movement());
    head.setObject(17, sale.buyer(), Types.OTHER);
    head.setObject(18, now.atOffset(ZoneOffset.UTC));
    head.setObject(19, by);
    head.addBatch();
  }

  void bindLines(PreparedStatement insert) throws SQLException {
    int number = 0;
    for (Sale.Line line : sale.lines()) {
      insert.setObject(1, sale.id());
      insert.setInt(2, ++number);
      insert.setString(3, line.container());
      insert.setString(4, line.saidLot());
      insert.setObject(5, line.item());
      insert.setLong(6, line.count());
      insert.setBigDecimal(7, amount(line.price()));
      insert.setBoolean(8, line.priceSaid());
      insert.setBigDecimal(9, amount(line.amount()));
      insert.addBatch();
    }
  }

  void bindNotes(PreparedStatement insert) throws SQLException {
    for (Note note : sale.notes()) {
      insert.setObject(1, sale.id());
      insert.setInt(2, note.line());
      insert.setString(3, note.code());
      insert.setString(4, note.detail());
      insert.addBatch();
    }
  }

  private static BigDecimal amount(Money money) {
    return money == null ? null : money.amount();
  }
}
