package org.barreltally.web.pages;

import io.quarkus.qute.TemplateData;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Rows of a form that offer what there is, such as the lots of a room, for somebody to fill in some
 * of them. Which lot it is goes along hidden, so a row counts as left blank when nothing was typed
 * beside that.
 *
 * @param offered in their order, whatever was typed
 * @param free numbers of rows for what is not offered
 */
@TemplateData
public record OfferedRows<T>(List<Row<T>> offered, List<Integer> free) {

  /** A row: its number in the form and what it offers. */
  @TemplateData
  public record Row<T>(int number, T what) {}

  /**
   * What was sent without the rows in which nothing was typed.
   *
   * @param list the list of the rows, for example {@code lines}
   * @param filledIn the fields that somebody types in
   */
  public static MultivaluedMap<String, String> without(
      MultivaluedMap<String, String> said, String list, String... filledIn) {
    Pattern row = Pattern.compile(Pattern.quote(list) + "\\[(\\d+)]\\..*");
    MultivaluedMap<String, String> kept = new MultivaluedHashMap<>();
    said.forEach(
        (field, values) -> {
          Matcher in = row.matcher(field);
          boolean isBlank =
              in.matches()
                  && Arrays.stream(filledIn)
                      .map(part -> said.getFirst(list + "[" + in.group(1) + "]." + part))
                      .allMatch(text -> text == null || text.isBlank());
          if (!isBlank) {
            kept.put(field, values);
          }
        });
    return kept;
  }

  /**
   * The rows of a form: those filled in keep their numbers, so that refusals stand beside them.
   *
   * @param key what tells one that is offered from the others, in the order of {@code fields}
   * @param fields the hidden fields that hold it
   * @param blank how many rows there are at least for what is not offered
   */
  public static <T> OfferedRows<T> of(
      Form form,
      String list,
      List<T> offered,
      Function<T, List<String>> key,
      List<String> fields,
      int blank) {
    Map<List<String>, Integer> typed = new HashMap<>();
    List<Integer> free = new ArrayList<>();
    List<List<String>> keys = offered.stream().map(key).toList();
    int next = form.rows(list, 0).size();
    for (int n = 0; n < next; n++) {
      List<String> said = said(form, list, n, fields);
      if (!keys.contains(said) || typed.putIfAbsent(said, n) != null) {
        free.add(n);
      }
    }
    List<Row<T>> rows = new ArrayList<>();
    for (int n = 0; n < offered.size(); n++) {
      Integer number = typed.get(keys.get(n));
      rows.add(new Row<>(number == null ? next++ : number, offered.get(n)));
    }
    while (free.size() < blank) {
      free.add(next++);
    }
    return new OfferedRows<>(List.copyOf(rows), List.copyOf(free));
  }

  private static List<String> said(Form form, String list, int row, List<String> fields) {
    return fields.stream().map(field -> form.value(form.row(list, row, field))).toList();
  }
}
