package org.barreltally.stock.pages;

import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barreltally.measure.ColorClass;
import org.barreltally.stock.StockRow;

/**
 * Jars by size and grade, added up over places and lots.
 *
 * @param held of all
 */
@TemplateData
public record Totals(List<Line> lines, long jars, long held) {

  /**
   * @param grade null where nobody wrote it down
   * @param held of the jars
   */
  @TemplateData
  public record Line(String size, ColorClass grade, long jars, long held) {

    Line plus(Line other) {
      return new Line(size, grade, jars + other.jars, held + other.held);
    }
  }

  static Totals of(List<StockRow> rows) {
    Map<String, Line> lines = new TreeMap<>();
    long jars = 0;
    long held = 0;
    for (StockRow row : rows) {
      long heldHere = row.held() ? row.onHand() : 0;
      String key = row.container() + " " + (row.grade() == null ? "~" : row.grade().ordinal());
      lines.merge(key, new Line(row.container(), row.grade(), row.onHand(), heldHere), Line::plus);
      jars += row.onHand();
      held += heldHere;
    }
    return new Totals(List.copyOf(lines.values()), jars, held);
  }
}
