package org.barreltally.documents.season;

import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.sql.Date;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Money;

/** A row that was found, told in words and figures as the book prints them. */
final class Told {

  private static final double G_PER_KG = 1000;

  private final Tuple row;

  Told(Tuple row) {
    this.row = row;
  }

  /** Empty where there is nothing. */
  String text(String column) {
    Object value = row.get(column);
    return value == null ? "" : value.toString();
  }

  /** A code such as {@code very-dark} in words. */
  String words(String column) {
    return text(column).replace('-', ' ');
  }

  boolean yes(String column) {
    return Boolean.TRUE.equals(row.get(column));
  }

  long whole(String column) {
    return row.get(column) instanceof Number number ? number.longValue() : 0;
  }

  /** Empty where there is nothing. */
  String count(String column) {
    return row.get(column) instanceof Number number ? Long.toString(number.longValue()) : "";
  }

  BigDecimal decimal(String column) {
    return row.get(column) instanceof Number number
        ? new BigDecimal(number.toString())
        : BigDecimal.ZERO;
  }

  /** With so many decimals; empty where there is nothing. */
  String rounded(String column, int decimals) {
    return row.get(column) == null
        ? ""
        : decimal(column).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** Of grams; empty where there is nothing. */
  String kg(String column) {
    return row.get(column) == null ? "" : kg(decimal(column).doubleValue());
  }

  static String kg(double grams) {
    return Quantity.rounded(grams / G_PER_KG, Unit.KG, 1).value().toPlainString();
  }

  /** Of milliliters at 68 °F, in US gallons. */
  static String gallons(double mL) {
    return Quantity.rounded(mL, Unit.ML, 3).to(Unit.GAL, 2).value().toPlainString();
  }

  String gallons(String column) {
    return row.get(column) == null ? "" : gallons(decimal(column).doubleValue());
  }

  /** Of the currency in the column {@code currency}; empty where there is nothing. */
  String money(String column) {
    return row.get(column) == null || row.get("currency") == null
        ? ""
        : Money.rounded(decimal(column), text("currency")).toString();
  }

  /** The farm's day of an instant. */
  Instant instant(String column) {
    Object value = row.get(column);
    return value instanceof OffsetDateTime at ? at.toInstant() : (Instant) value;
  }

  LocalDate day(String column) {
    Object value = row.get(column);
    return value instanceof Date date ? date.toLocalDate() : (LocalDate) value;
  }
}
