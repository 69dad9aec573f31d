package org.barreltally.gifts;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The columns of a file of recipients, in the order they have where there is no header. */
enum RecipientColumn {
  NAME("name", "name"),
  LINE1("line1", "address.lines[0]"),
  LINE2("line2", "address.lines[1]"),
  TOWN("town", "address.town"),
  REGION("region", "address.region"),
  POSTCODE("postcode", "address.postcode"),
  COUNTRY("country", "address.country"),
  BOX("box", "box"),
  COUNT("count", "count"),
  CARD("card", "card"),
  DELIVERY("delivery", "delivery"),
  POSTAGE("postage", "postage"),
  SEND_BY("sendBy", "sendBy"),
  WANTED_BY("wantedBy", "wantedBy"),
  CARRIER("carrier", "carrier");

  private final String label;
  private final String field;

  RecipientColumn(String label, String field) {
    this.label = label;
    this.field = field;
  }

  /** As it stands in the header. */
  String label() {
    return label;
  }

  static List<String> labels() {
    return Arrays.stream(values()).map(RecipientColumn::label).toList();
  }

  /** Written in any case, with blanks or not. */
  static Optional<RecipientColumn> headed(String cell) {
    String plain = cell.strip().toLowerCase(Locale.ROOT).replaceAll("[ _-]", "");
    return Arrays.stream(values())
        .filter(column -> column.label.toLowerCase(Locale.ROOT).equals(plain))
        .findFirst();
  }

  /** The label of the column that fills a field of a recipient. */
  static String of(String field) {
    return Arrays.stream(values())
        .filter(column -> column.field.equals(field))
        .findFirst()
        .map(RecipientColumn::label)
        .orElse(field.startsWith("address") ? LINE1.label : NAME.label);
  }
}
