package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.barreltally.errands.Progress;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;
import org.barreltally.refusal.Refusal.FieldError;
import org.barreltally.settings.FarmSettings;

/**
 * Reads a file of recipients. Every line that needs mending is named at once, and nothing is taken
 * until the whole file is clean.
 */
@ApplicationScoped
public class RecipientFile {

  private static final Pattern PATH = Pattern.compile("recipients\\[(\\d+)\\]\\.?(.*)");
  private static final Pattern AMOUNT = Pattern.compile("[0-9]{1,9}([.,][0-9]{1,3})?");
  private static final String WHOLE_LINE = "line ";

  private final GiftBoxes boxes;
  private final Carriers carriers;
  private final FarmSettings settings;
  private final Days days;

  RecipientFile(GiftBoxes boxes, Carriers carriers, FarmSettings settings, Days days) {
    this.boxes = boxes;
    this.carriers = carriers;
    this.settings = settings;
    this.days = days;
  }

  /**
   * The recipients of the file, in its order.
   *
   * @throws BrokenRecipientFile if it cannot be read at all
   * @throws InvalidField naming everything that needs mending by line and column
   */
  @Transactional
  public List<Recipient> read(byte[] file) {
    return read(file, Progress.UNWATCHED);
  }

  /** As {@link #read(byte[])}; {@code progress} is told of the lines. */
  @Transactional
  public List<Recipient> read(byte[] file, Progress progress) {
    RecipientText text = RecipientText.of(file);
    if (text.rows().isEmpty()) {
      throw new BrokenRecipientFile("There are no recipients under the header.");
    }
    progress.of(text.rows().size());
    List<FieldError> errors = new ArrayList<>();
    List<Recipient> recipients = new ArrayList<>();
    Map<String, String> currencies = new HashMap<>();
    for (RecipientText.Line row : text.rows()) {
      recipients.add(
          recipient(cells(text.columns(), row, errors), row.number(), errors, currencies));
      progress.done(1);
    }
    Faults faults = new Faults();
    RecipientRules rules = new RecipientRules(faults, boxes, carriers.holding(null), days, null);
    for (int i = 0; i < recipients.size(); i++) {
      rules.read(recipients.get(i), "recipients[" + i + "]");
    }
    faults.errors().forEach(error -> named(error, text.rows(), errors));
    if (!errors.isEmpty()) {
      throw new InvalidField(errors);
    }
    return recipients;
  }

  /** What is wrong, by line and column; a cell that could not be read is named but once. */
  private static void named(
      FieldError error, List<RecipientText.Line> rows, List<FieldError> errors) {
    Matcher path = PATH.matcher(error.field());
    if (!path.matches()) {
      throw new IllegalStateException("not the path of a recipient: " + error.field());
    }
    String place =
        place(
            rows.get(Integer.parseInt(path.group(1))).number(), RecipientColumn.of(path.group(2)));
    if (errors.stream().noneMatch(known -> known.field().equals(place))) {
      errors.add(new FieldError(place, error.message()));
    }
  }

  private static String place(long line, String column) {
    return WHOLE_LINE + line + ", column " + column;
  }

  private static Map<RecipientColumn, String> cells(
      List<RecipientColumn> columns, RecipientText.Line row, List<FieldError> errors) {
    if (row.cells().size() > columns.size()) {
      errors.add(
          new FieldError(
              WHOLE_LINE + row.number(),
              "It has %d fields, and there are %d columns. Put fields with the separator in quotes."
                  .formatted(row.cells().size(), columns.size())));
    }
    Map<RecipientColumn, String> cells = new EnumMap<>(RecipientColumn.class);
    for (int i = 0; i < Math.min(columns.size(), row.cells().size()); i++) {
      if (!row.cells().get(i).isEmpty()) {
        cells.put(columns.get(i), row.cells().get(i));
      }
    }
    return cells;
  }

  private Recipient recipient(
      Map<RecipientColumn, String> cells,
      long line,
      List<FieldError> errors,
      Map<String, String> currencies) {
    return new Recipient(
        cells.get(RecipientColumn.NAME),
        address(cells),
        cells.get(RecipientColumn.BOX),
        read(
            cells,
            RecipientColumn.COUNT,
            line,
            errors,
            "Give a whole number of boxes.",
            this::count),
        cells.get(RecipientColumn.CARD),
        read(
            cells,
            RecipientColumn.DELIVERY,
            line,
            errors,
            "Give one of post, collect, by-hand.",
            RecipientFile::delivery),
        postage(cells, line, errors, currencies),
        day(cells, RecipientColumn.WANTED_BY, line, errors),
        day(cells, RecipientColumn.SEND_BY, line, errors),
        cells.get(RecipientColumn.CARRIER));
  }

  private static Address address(Map<RecipientColumn, String> cells) {
    List<String> lines =
        Stream.of(RecipientColumn.LINE1, RecipientColumn.LINE2)
            .map(cells::get)
            .filter(cell -> cell != null)
            .toList();
    String town = cells.get(RecipientColumn.TOWN);
    String postcode = cells.get(RecipientColumn.POSTCODE);
    return lines.isEmpty() && town == null && postcode == null
        ? null
        : new Address(
            lines,
            town,
            cells.get(RecipientColumn.REGION),
            postcode,
            cells.get(RecipientColumn.COUNTRY));
  }

  /** In the currency of its box, or of the farm where the box is not known. */
  private Money postage(
      Map<RecipientColumn, String> cells,
      long line,
      List<FieldError> errors,
      Map<String, String> currencies) {
    String currency =
        currencies.computeIfAbsent(
            cells.getOrDefault(RecipientColumn.BOX, ""),
            box ->
                boxes
                    .named(box)
                    .map(found -> found.price().currency())
                    .orElse(settings.now().said().currency()));
    return read(
        cells,
        RecipientColumn.POSTAGE,
        line,
        errors,
        "Give an amount such as 12.50.",
        text -> {
          if (!AMOUNT.matcher(text).matches()) {
            throw new IllegalArgumentException("no amount");
          }
          return new Money(new BigDecimal(text.replace(',', '.')), currency);
        });
  }

  private static LocalDate day(
      Map<RecipientColumn, String> cells,
      RecipientColumn column,
      long line,
      List<FieldError> errors) {
    return read(cells, column, line, errors, "Give a day such as 2026-12-15.", LocalDate::parse);
  }

  private Integer count(String text) {
    return Integer.valueOf(text);
  }

  private static Delivery delivery(String text) {
    return Arrays.stream(Delivery.values())
        .filter(delivery -> delivery.code().equalsIgnoreCase(text))
        .findFirst()
        .orElseThrow(IllegalArgumentException::new);
  }

  private interface Reading<T> {
    T of(String text);
  }

  private static <T> T read(
      Map<RecipientColumn, String> cells,
      RecipientColumn column,
      long line,
      List<FieldError> errors,
      String mend,
      Reading<T> reading) {
    String text = cells.get(column);
    try {
      return text == null ? null : reading.of(text);
    } catch (IllegalArgumentException | DateTimeException unreadable) {
      errors.add(new FieldError(place(line, column.label()), mend));
    } catch (Refusal refused) {
      errors.add(new FieldError(place(line, column.label()), refused.detail()));
    }
    return null;
  }
}
