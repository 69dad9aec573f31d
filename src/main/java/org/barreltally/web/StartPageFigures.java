package org.barreltally.web;

import io.quarkus.qute.TemplateData;
import java.util.List;
import org.barreltally.measure.Quantity;

/** How much there is, for the page of today. The capability that holds the stock gives it. */
public interface StartPageFigures {

  /**
   * Syrup in bulk.
   *
   * @param vessels barrels and heels with syrup in them
   * @param weight as a scale reads in air
   * @param volume at 68 °F
   */
  @TemplateData
  record Syrup(int vessels, Quantity weight, Quantity volume, List<SyrupOfGrade> grades) {}

  /** Syrup in bulk of one grade; a null grade is not graded yet. */
  @TemplateData
  record SyrupOfGrade(String grade, int vessels, Quantity volume) {}

  /**
   * Jars on hand at home and out, by size and grade.
   *
   * @param grades codes of the grades that have a column, lightest first
   */
  @TemplateData
  record Shelf(List<String> grades, List<SizeRow> rows) {}

  /**
   * Jars of one size.
   *
   * @param counts pieces by grade, in the order of {@link Shelf#grades()}
   */
  @TemplateData
  record SizeRow(String container, List<Long> counts, long total) {}

  /** The syrup in bulk. */
  Syrup syrup();

  /** The jars. */
  Shelf shelf();
}
