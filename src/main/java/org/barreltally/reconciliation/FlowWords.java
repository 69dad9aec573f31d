package org.barreltally.reconciliation;

import org.barreltally.measure.Quantity;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Unit;
import org.barreltally.reconciliation.flows.Suspect;

/** What a season reconciled comes to, said the same wherever it is told. */
public final class FlowWords {

  /** For volumes: syrup as the trade mostly fills it. */
  private static final Syrup USUAL = new Syrup(66.9);

  private FlowWords() {}

  /** Of grams of syrup, lb as a scale reads in air. */
  public static Quantity weight(double grams) {
    return Quantity.rounded(USUAL.weightInAir(grams), Unit.G, 3).to(Unit.LB, 2);
  }

  /** Of grams of syrup of 66.9 °Bx, gal at 68 °F. */
  public static Quantity volume(double grams) {
    return Quantity.rounded(USUAL.mLAt20(grams), Unit.ML, 3).to(Unit.GAL, 3);
  }

  /** What does not fit, and where to look. */
  public static String of(Suspect.Reading reading) {
    double error = reading.error();
    String much =
        weight(error).value().abs() + " lb (" + volume(error).value().abs() + " gal at 68 °F)";
    if (reading.flow() != null) {
      return "%s: what was told is probably %s too %s. Weigh or count it again, or look at the slip."
          .formatted(reading.flow(), much, error > 0 ? "high" : "low");
    }
    return error > 0
        ? "%s: about %s came in that is not told to have left. Look for a posting that was lost, a loss, or a wrong count."
            .formatted(reading.node(), much)
        : "%s: about %s left that is not told to have come in. Look for a posting that was lost, one told twice, or a wrong count."
            .formatted(reading.node(), much);
  }

  /** What the season comes to. */
  public static String of(SeasonReconciled season) {
    if (season.found() == null) {
      return "Nothing was measured in " + season.season() + ".";
    }
    if (season.found().critical() == null) {
      return "Nothing was measured twice, so no measurement checks another. Weigh barrels again and"
          + " count shelves.";
    }
    if (season.found().suspects().isEmpty()) {
      return season.found().globalTest().passed()
          ? "What was measured agrees within what measuring can tell."
          : "Taken together the measurements agree less well than they should, but none stands out.";
    }
    return season.found().suspects().size() == 1
        ? "One thing does not fit: look at it first."
        : season.found().suspects().size() + " things do not fit: look at the first one first.";
  }
}
