package org.barreltally.gifts.pages;

import io.quarkus.qute.TemplateData;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.barreltally.gifts.CarrierTable;
import org.barreltally.gifts.Weekday;
import org.barreltally.gifts.Zone;
import org.barreltally.web.pages.Form;

/**
 * A carrier's table as a person types it: what is many, such as the beginnings of postcodes, stands
 * in one field with commas or blanks between.
 */
final class CarrierText {

  /** A day of the week to tick. */
  @TemplateData
  public record DayBox(String field, String code, boolean ticked) {}

  private static final Pattern MANY = Pattern.compile("closed|zones\\[\\d+]\\.(\\w+)");
  private static final Pattern BETWEEN = Pattern.compile("[\\s,;]+");
  private static final List<String> LISTS = List.of("countries", "regions", "postcodes");
  private static final int ROWS_LEAST = 4;
  private static final int ROWS_FREE = 2;

  private CarrierText() {}

  /** What was typed, with each of many in a field of its own beside the text it stands in. */
  static MultivaluedMap<String, String> apart(MultivaluedMap<String, String> said) {
    MultivaluedMap<String, String> apart = new MultivaluedHashMap<>();
    apart.putAll(said);
    said.forEach(
        (field, texts) -> {
          var many = MANY.matcher(field);
          if (many.matches() && (many.group(1) == null || LISTS.contains(many.group(1)))) {
            String[] parts = BETWEEN.split(texts.get(0).strip());
            for (int n = 0; n < parts.length; n++) {
              apart.putSingle(field + "[" + n + "]", written(field, parts[n]));
            }
          }
        });
    return apart;
  }

  private static String written(String field, String part) {
    return field.endsWith(".countries") ? part.toUpperCase(Locale.ROOT) : part;
  }

  /** A form that begins with a table that is known. */
  static Form of(CarrierTable table) {
    List<Object> filled = new ArrayList<>();
    add(filled, "name", table.name());
    List<Weekday> days = table.weekdays() == null ? List.of() : table.weekdays();
    for (int n = 0; n < days.size(); n++) {
      add(filled, "weekdays[" + n + "]", days.get(n).code());
    }
    add(filled, "closed", joined(table.closed()));
    for (int n = 0; n < table.zones().size(); n++) {
      Zone zone = table.zones().get(n);
      String row = "zones[" + n + "].";
      add(filled, row + "name", zone.name());
      add(filled, row + "days", zone.days());
      add(filled, row + "countries", joined(zone.countries()));
      add(filled, row + "regions", joined(zone.regions()));
      add(filled, row + "postcodes", joined(zone.postcodes()));
    }
    return Form.with(filled.toArray());
  }

  private static void add(List<Object> filled, String field, Object text) {
    filled.add(field);
    filled.add(text);
  }

  private static String joined(List<?> many) {
    return many == null || many.isEmpty()
        ? null
        : many.stream().map(Object::toString).collect(Collectors.joining(", "));
  }

  /** The days of the week, Monday to Friday ticked where nobody has said otherwise. */
  static List<DayBox> weekdays(Form form) {
    List<String> said =
        form.rows("weekdays", 0).stream().map(n -> form.value(form.item("weekdays", n))).toList();
    boolean untouched = said.isEmpty() && form.value("name").isEmpty();
    return Arrays.stream(Weekday.values())
        .map(
            day ->
                new DayBox(
                    form.item("weekdays", day.ordinal()),
                    day.code(),
                    untouched ? day.compareTo(Weekday.SAT) < 0 : said.contains(day.code())))
        .toList();
  }

  /** How many rows for zones the form shows. */
  static int zones(Form form) {
    return Math.max(ROWS_LEAST, form.rows("zones", 0).size() + ROWS_FREE);
  }
}
