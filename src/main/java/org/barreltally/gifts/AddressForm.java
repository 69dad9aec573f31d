package org.barreltally.gifts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.measure.ReferenceTable;

/**
 * How a country orders the lines of an address: {@code db/reference/address_forms.csv}, after the
 * public guide of the Universal Postal Union (S42 and its country sheets), from memory.
 *
 * @param needed parts without which a parcel is not taken
 * @param postcode its pattern in capitals; null where anything is taken
 * @param example of a postcode; null where there is none
 * @param capitals parts written in capitals
 */
record AddressForm(
    String form, Set<String> needed, Pattern postcode, String example, Set<String> capitals) {

  private static final String OTHERS = "*";
  private static final Map<String, AddressForm> FORMS = new LinkedHashMap<>();

  static {
    ReferenceTable.rows("address_forms.csv").forEach(row -> FORMS.put(row.get("country"), of(row)));
  }

  static AddressForm of(String country) {
    return FORMS.getOrDefault(country, FORMS.get(OTHERS));
  }

  private static AddressForm of(CSVRecord row) {
    String pattern = row.get("postcode");
    return new AddressForm(
        row.get("form"),
        words(row.get("needed")),
        pattern.isEmpty() ? null : Pattern.compile(pattern),
        row.get("example").isEmpty() ? null : row.get("example"),
        words(row.get("capitals")));
  }

  private static Set<String> words(String cell) {
    return cell.isEmpty() ? Set.of() : Set.of(cell.split(" "));
  }

  /**
   * The lines of a label from the top.
   *
   * @param home two letters of the sender's country, under whose own addresses no country stands
   */
  List<String> lines(String name, Address address, String home) {
    List<String> lines = new ArrayList<>();
    for (String line : form.split("\\|")) {
      if (line.equals("{lines}")) {
        lines.addAll(address.lines());
      } else {
        String filled =
            line.replace("{name}", part("name", name))
                .replace("{town}", part("town", address.town()))
                .replace("{region}", part("region", address.region()))
                .replace("{postcode}", part("postcode", address.postcode()))
                .strip();
        if (!filled.isEmpty()) {
          lines.add(filled);
        }
      }
    }
    if (!address.country().equals(home)) {
      lines.add(Countries.capitals(address.country()));
    }
    return lines;
  }

  private String part(String part, String text) {
    if (text == null) {
      return "";
    }
    return capitals.contains(part) ? text.toUpperCase(Locale.ROOT) : text;
  }
}
