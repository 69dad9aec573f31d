package org.barreltally.shows.pages;

import io.quarkus.qute.TemplateExtension;
import org.barreltally.shows.plan.ShowPlan;

/** What a page says of a line of a plan beside its parts. */
@TemplateExtension
final class PlanRisk {

  private PlanRisk() {}

  /** The probability, 0 to 1, that more is asked for than is taken. */
  static double risk(ShowPlan.Line line) {
    return 1 - line.enough();
  }
}
