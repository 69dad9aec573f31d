package org.barreltally.canning.pages;

import io.quarkus.qute.TemplateData;
import org.barreltally.canning.PackSheet;
import org.barreltally.web.problem.Problem;

/**
 * What a run in the making comes to.
 *
 * @param sheet null while it cannot be reckoned
 * @param notYet why it cannot; null when it can
 */
@TemplateData
public record Reckoned(PackSheet sheet, ShrinkBars bars, Problem notYet) {

  static Reckoned of(PackSheet sheet) {
    return new Reckoned(sheet, ShrinkBars.of(sheet.shrink()), null);
  }

  static Reckoned not(Problem why) {
    return new Reckoned(null, null, why);
  }
}
