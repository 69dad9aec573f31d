package org.barreltally.stock.pages;

import io.quarkus.qute.TemplateData;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.barreltally.stock.StockRow;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Show;

/**
 * The sheet a counter fills in: the lots that stand at a place by size, without a figure, and room
 * for what else turns up.
 */
@TemplateData
public record CountSheetForm(List<Row> rows, List<Integer> more) {

  private static final int MORE = 4;

  /** A line of the sheet. */
  @TemplateData
  public record Row(int n, String container, String lot, String grade) {

    public String at() {
      return "lines[" + n + "]";
    }

    public String field(String name) {
      return at() + "." + name;
    }
  }

  /** What a counter looks for. */
  record Jar(String container, String lot) {}

  /**
   * @param asked jars to be counted, in this order
   * @param grades by lot, in words
   * @param beyond whether other jars may be added
   */
  static CountSheetForm of(Form form, List<Jar> asked, Map<String, String> grades, boolean beyond) {
    Map<Jar, Integer> typed = typed(form);
    Set<Integer> shown = new HashSet<>();
    List<Row> rows = new ArrayList<>();
    int next = form.rows("lines", 0).size();
    for (Jar jar : asked) {
      Integer at = typed.get(jar);
      int n = at == null ? next++ : at;
      shown.add(n);
      rows.add(new Row(n, jar.container(), jar.lot(), grades.getOrDefault(jar.lot(), "")));
    }
    List<Integer> more =
        form.rows("lines", 0).stream()
            .filter(n -> !shown.contains(n))
            .collect(Collectors.toCollection(ArrayList::new));
    if (beyond) {
      IntStream.range(next, next + MORE).forEach(more::add);
    }
    return new CountSheetForm(rows, more);
  }

  private static Map<Jar, Integer> typed(Form form) {
    Map<Jar, Integer> typed = new HashMap<>();
    for (int n : form.rows("lines", 0)) {
      typed.putIfAbsent(
          new Jar(
              form.value(form.row("lines", n, "container")),
              form.value(form.row("lines", n, "lot"))),
          n);
    }
    return typed;
  }

  /** The jars that stand at a place by the book; of those without a lot nothing can be counted. */
  static List<Jar> standing(List<StockRow> rows) {
    return rows.stream()
        .filter(row -> row.container() != null && row.lot() != null)
        .map(row -> new Jar(row.container(), row.lot()))
        .sorted(Comparator.comparing(Jar::container).thenComparing(Jar::lot))
        .toList();
  }

  static Map<String, String> grades(List<StockRow> rows) {
    Map<String, String> grades = new HashMap<>();
    rows.stream()
        .filter(row -> row.lot() != null)
        .forEach(row -> grades.put(row.lot(), Show.grade(row.grade())));
    return grades;
  }
}
