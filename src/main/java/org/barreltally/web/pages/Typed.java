package org.barreltally.web.pages;

import jakarta.ws.rs.core.MultivaluedMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barreltally.web.problem.Problem;
import org.barreltally.web.problem.Refused;

/** What a browser sent of a form, as text by field, without what was left blank. */
final class Typed {

  private static final int FIELDS_MAX = 3_000;
  private static final int TEXT_MAX = 10_000;
  private static final Pattern ROW = Pattern.compile("\\[(\\d{1,4})]");

  /** {@code contents[1].substitutes[0].grade} is two deep; nothing is deeper. */
  private static final int DEPTH_MAX = 2;

  private Typed() {}

  /**
   * Rows that were left blank are taken out and those after them move up, so that a row's number is
   * its number in the JSON.
   */
  static Map<String, String> of(MultivaluedMap<String, String> said) {
    if (said.size() > FIELDS_MAX) {
      throw tooMuch();
    }
    Map<String, String> typed = new LinkedHashMap<>();
    said.forEach(
        (field, values) -> {
          String text = values.isEmpty() ? "" : values.get(values.size() - 1).strip();
          if (text.length() > TEXT_MAX || field.length() > 200) {
            throw tooMuch();
          }
          if (!text.isEmpty()) {
            typed.put(field, text);
          }
        });
    return movedUp(typed);
  }

  /** Lists first, then the lists within their rows. */
  private static Map<String, String> movedUp(Map<String, String> typed) {
    Map<String, String> moved = typed;
    for (int depth = 1; depth <= DEPTH_MAX; depth++) {
      moved = movedUp(moved, depth);
    }
    return moved;
  }

  private static Map<String, String> movedUp(Map<String, String> typed, int depth) {
    Map<String, TreeMap<Integer, Integer>> rows = new LinkedHashMap<>();
    typed.forEach(
        (field, text) -> {
          Matcher row = ROW.matcher(field);
          if (isAt(row, depth) && !isUnit(field)) {
            rows.computeIfAbsent(field.substring(0, row.start()), list -> new TreeMap<>())
                .put(Integer.valueOf(row.group(1)), 0);
          }
        });
    for (TreeMap<Integer, Integer> numbers : rows.values()) {
      int next = 0;
      for (Map.Entry<Integer, Integer> number : numbers.entrySet()) {
        number.setValue(next++);
      }
    }
    Map<String, String> moved = new LinkedHashMap<>();
    typed.forEach(
        (field, text) -> {
          Matcher row = ROW.matcher(field);
          if (!isAt(row, depth)) {
            moved.put(field, text);
            return;
          }
          String list = field.substring(0, row.start());
          Integer now = rows.getOrDefault(list, new TreeMap<>()).get(Integer.valueOf(row.group(1)));
          if (now != null) {
            moved.put(list + "[" + now + "]" + field.substring(row.end()), text);
          }
        });
    return moved;
  }

  /** Finds the row number at that depth: the second of {@code contents[1].substitutes[0]}. */
  private static boolean isAt(Matcher row, int depth) {
    for (int n = 0; n < depth; n++) {
      if (!row.find()) {
        return false;
      }
    }
    return true;
  }

  /** A unit is always sent; it alone fills no row. */
  private static boolean isUnit(String field) {
    return field.endsWith(".unit") || field.endsWith(".currency");
  }

  private static Refused tooMuch() {
    return new Refused(
        new Problem(400, "form-too-large", "That is more than a form holds", "Send it in parts."));
  }
}
