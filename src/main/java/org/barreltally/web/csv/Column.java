package org.barreltally.web.csv;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * A column of a table: one field of the items, named as it is in JSON, the fields within a field
 * with a dot between, such as {@code mass.value} and {@code mass.unit}. A quantity keeps its two
 * columns even where all rows have one unit, so that the columns depend on the kind of list alone
 * and a sheet or script made for them goes on working.
 *
 * @param path of the field within an item; empty for the item itself
 */
record Column(List<String> path) {

  /** The heading of the only column where items have no fields. */
  private static final String PLAIN = "item";

  private static final String BETWEEN = "; ";

  String heading() {
    return path.isEmpty() ? PLAIN : String.join(".", path);
  }

  Column within(String field) {
    List<String> deeper = new ArrayList<>(path);
    deeper.add(field);
    return new Column(List.copyOf(deeper));
  }

  /**
   * What stands in the cell: a number as it is, text made harmless, plain values of a list with a
   * semicolon between, and as JSON what is a list of several things.
   */
  String cell(JsonNode item) {
    JsonNode found = item;
    for (String field : path) {
      found = found.path(field);
    }
    if (found.isMissingNode() || found.isNull()) {
      return "";
    }
    if (found.isBoolean()) {
      return found.asText();
    }
    if (found.isNumber()) {
      return found.decimalValue().toPlainString();
    }
    return Formulas.disarmed(found.isTextual() ? found.textValue() : several(found));
  }

  private static String several(JsonNode found) {
    List<String> values = new ArrayList<>();
    for (JsonNode each : found) {
      if (!found.isArray() || each.isContainerNode()) {
        return found.isEmpty() ? "" : found.toString();
      }
      values.add(each.asText());
    }
    return String.join(BETWEEN, values);
  }
}
