package org.barreltally.gifts.internal;

import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.barreltally.pricing.Money;

/** A row of a query, read by type; a null stays null. */
record Row(Tuple row) {

  /** What rows with a column {@code order_id} say of each order, in the order of the rows. */
  static <T> Map<UUID, List<T>> byOrder(List<Row> rows, Function<Row, T> what) {
    return rows.stream()
        .collect(
            Collectors.groupingBy(
                row -> row.id("order_id"), Collectors.mapping(what, Collectors.toList())));
  }

  String text(String column) {
    return row.get(column, String.class);
  }

  UUID id(String column) {
    return row.get(column, UUID.class);
  }

  Integer whole(String column) {
    Number number = row.get(column, Number.class);
    return number == null ? null : number.intValue();
  }

  long pieces(String column) {
    return row.get(column, Number.class).longValue();
  }

  LocalDate day(String column) {
    Object day = row.get(column);
    return day instanceof java.sql.Date date ? date.toLocalDate() : (LocalDate) day;
  }

  Money money(String column, String currency) {
    BigDecimal amount = row.get(column, BigDecimal.class);
    return amount == null ? null : Money.rounded(amount, currency);
  }
}
