package org.barreltally.web.pages;

import io.quarkus.qute.TemplateData;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Jars of one size and lot that a form offers in a row of its own, for somebody to say how many.
 *
 * @param n number of the row
 * @param there pieces that stand there by the book; null where it is not said
 */
@TemplateData
public record JarRow(int n, String container, String grade, String lot, Long there, boolean held) {

  private static final Pattern ROW = Pattern.compile("([A-Za-z]+)\\[(\\d{1,4})]\\.([A-Za-z]+)");

  /** Jars to offer; the form numbers them. */
  public static JarRow of(String container, String grade, String lot, Long there, boolean held) {
    return new JarRow(0, container, grade, lot, there, held);
  }

  /** The offered jars in the rows of a form: those typed in keep their numbers, the rest follow. */
  public static List<JarRow> in(Form form, String list, List<JarRow> offered) {
    List<JarRow> rows = new ArrayList<>();
    List<JarRow> left = new ArrayList<>(offered);
    for (int n : form.rows(list, 0)) {
      String container = form.value(form.row(list, n, "container"));
      String lot = form.value(form.row(list, n, "lot"));
      JarRow known =
          left.stream()
              .filter(jar -> jar.container.equals(container) && lot.equals(text(jar.lot)))
              .findFirst()
              .orElse(of(container, null, lot, null, false));
      left.remove(known);
      rows.add(known.numbered(n));
    }
    int next = rows.size();
    for (JarRow jar : left) {
      rows.add(jar.numbered(next++));
    }
    return rows;
  }

  private JarRow numbered(int number) {
    return new JarRow(number, container, grade, lot, there, held);
  }

  private static String text(String lot) {
    return lot == null ? "" : lot;
  }

  /** What was sent without the offered rows in which none of these fields was filled in. */
  public static MultivaluedMap<String, String> filled(
      MultivaluedMap<String, String> said, String list, String... fields) {
    MultivaluedMap<String, String> filled = new MultivaluedHashMap<>();
    said.forEach(
        (field, values) -> {
          Matcher row = ROW.matcher(field);
          boolean blank =
              row.matches()
                  && row.group(1).equals(list)
                  && Arrays.stream(fields)
                      .map(name -> said.getFirst(list + "[" + row.group(2) + "]." + name))
                      .allMatch(text -> text == null || text.isBlank());
          if (!blank) {
            filled.put(field, values);
          }
        });
    return filled;
  }
}
