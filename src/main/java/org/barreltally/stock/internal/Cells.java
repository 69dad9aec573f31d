package org.barreltally.stock.internal;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;
import org.barreltally.refusal.Refusal.FieldError;

/** One row of a file: its cells are read by type, and what is wrong is gathered by column. */
public final class Cells {

  private static final int LENGTH_MAX = 100;
  private static final Pattern QUANTITY =
      Pattern.compile("([-+]?[0-9]{1,15}(?:\\.[0-9]{1,15})?) ?([A-Za-z]{1,8})");
  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]{1,15}(?:\\.[0-9]{1,15})?");

  private final long line;
  private final CSVRecord row;
  private final List<FieldError> errors = new ArrayList<>();

  Cells(long line, CSVRecord row) {
    this.line = line;
    this.row = row;
    if (!row.isConsistent()) {
      errors.add(
          new FieldError(
              "line " + line,
              "The header has %d columns and this line has %d. Put fields with commas in quotes."
                  .formatted(row.getParser().getHeaderNames().size(), row.size())));
    }
  }

  public List<FieldError> errors() {
    return List.copyOf(errors);
  }

  public boolean areClean() {
    return errors.isEmpty();
  }

  /** Notes what is wrong in a column of this line. */
  public void wrong(Column column, String mend) {
    wrong(column.label(), mend);
  }

  private void wrong(String column, String mend) {
    errors.add(new FieldError("line " + line + ", column " + column, mend));
  }

  /**
   * Notes a refusal of this line's values.
   *
   * @param columnOf the column of a field path
   */
  public void refused(Refusal refusal, Function<String, String> columnOf) {
    if (refusal.errors().isEmpty()) {
      wrong(Column.KIND, refusal.detail());
    }
    refusal.errors().forEach(e -> wrong(columnOf.apply(e.field()), e.message()));
  }

  /** The text of a cell; null if it is empty or there is no such column. */
  public String text(Column column) {
    if (!row.isSet(column.label())) {
      return null;
    }
    String text = row.get(column.label());
    if (text.length() > LENGTH_MAX || text.chars().anyMatch(Character::isISOControl)) {
      wrong(column, "Give at most 100 characters, without line ends.");
      return null;
    }
    return text.isEmpty() ? null : text;
  }

  /** A quantity with its unit, for example {@code 486.5 lb}; null if the cell is empty. */
  public Quantity quantity(Column column) {
    return read(
        column,
        text -> {
          Matcher typed = QUANTITY.matcher(text);
          if (!typed.matches()) {
            throw new InvalidField("", "Give a number and its unit, for example 486.5 lb.");
          }
          return Quantity.of(typed.group(1), Unit.of(typed.group(2)));
        });
  }

  /** As {@link #quantity}; a number alone is in the usual unit. */
  public Quantity quantity(Column column, Unit usual) {
    String text = text(column);
    return text != null && NUMBER.matcher(text).matches()
        ? read(column, number -> Quantity.of(number, usual))
        : quantity(column);
  }

  public Double number(Column column) {
    return read(
        column,
        text -> {
          if (!NUMBER.matcher(text).matches()) {
            throw new InvalidField("", "Give a number, for example 57.5.");
          }
          return new BigDecimal(text).doubleValue();
        });
  }

  public LocalDate day(Column column) {
    return read(
        column,
        text -> {
          try {
            return LocalDate.parse(text);
          } catch (DateTimeException e) {
            throw new InvalidField("", "Give a date such as 2026-03-14.");
          }
        });
  }

  /** A cell read by a function that may refuse; null if it is empty or was refused. */
  public <T> T read(Column column, Function<String, T> reading) {
    String text = text(column);
    try {
      return text == null ? null : reading.apply(text);
    } catch (Refusal refusal) {
      wrong(column, refusal.detail());
      return null;
    }
  }

  /** Notes every column that is filled although rows of this kind have none. */
  public void only(boolean barrel) {
    for (Column column : Column.values()) {
      if (!column.belongsTo(barrel) && text(column) != null) {
        wrong(
            column,
            "%s no %s. Leave it empty."
                .formatted(barrel ? "A barrel has" : "Jars have", column.label()));
      }
    }
  }
}
