package org.barreltally.pricing.rest;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.BasketLine;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/**
 * What somebody would buy.
 *
 * @param deal whether deals apply; null for no
 * @param place for tax; null for none
 * @param on null for today
 */
public record AskQuote(List<Line> lines, Boolean deal, String place, LocalDate on) {

  private static final int LINES_MAX = 500;
  private static final int COUNT_MAX = 100_000;

  /**
   * @param price agreed for one jar; null for the list's
   */
  public record Line(String container, ColorClass grade, Integer count, Money price) {}

  /**
   * @throws InvalidField naming every field that needs mending
   */
  List<BasketLine> basket() {
    if (lines == null || lines.isEmpty() || lines.size() > LINES_MAX) {
      throw new InvalidField("lines", "Give 1 to " + LINES_MAX + " lines.");
    }
    List<FieldError> errors = new ArrayList<>();
    List<BasketLine> basket = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      if (line == null || line.container() == null) {
        errors.add(
            new FieldError(
                "lines[" + i + "].container", "Give the code of a container, for example PT."));
      } else if (line.count() == null || line.count() < 1 || line.count() > COUNT_MAX) {
        errors.add(
            new FieldError(
                "lines[" + i + "].count", "Give a whole number from 1 to " + COUNT_MAX + "."));
      } else {
        basket.add(new BasketLine(line.container(), line.grade(), line.count(), line.price()));
      }
    }
    if (!errors.isEmpty()) {
      throw new InvalidField(errors);
    }
    return basket;
  }
}
