package org.barreltally.netcontents;

import java.util.Optional;
import org.barreltally.measure.Quantity;

/** The tests of single jars, one for each manner. */
final class SingleJars {

  static final String NOT_ENTERED =
      "Single jars were not checked: the allowed variation for this size was not entered. Read it in"
          + " the table of maximum allowable variations of NIST Handbook 133 and enter it at"
          + " /api/net-contents/allowed-variations. Only the average was tested.";

  private SingleJars() {}

  /**
   * European manner: at most the plan's number short by more than T, and none by more than 2T.
   *
   * @throws NoToleranceKnown if the table does not reach that far
   */
  static Individual european(EuPlan plan, Sample sample, Contents contents) {
    Quantity tolerance =
        TolerableDeficiency.of(contents.container().netContents())
            .orElseThrow(() -> new NoToleranceKnown(contents.container()));
    double grams = contents.grams(tolerance);
    int beyond = sample.shortBy(contents.nominalGrams(), grams);
    int beyondTwice = sample.shortBy(contents.nominalGrams(), 2 * grams);
    Verdict verdict = european(plan, beyond, beyondTwice);
    String words =
        "%d short by more than T (%s), at most %d may be; %d by more than 2T, none may be.%s"
            .formatted(
                beyond,
                tolerance,
                plan.accepted(),
                beyondTwice,
                verdict == Verdict.SECOND_SAMPLE
                    ? " A second sample of " + plan.sampleSize() + " decides."
                    : "");
    return new Individual(verdict, tolerance, grams, beyond, plan.accepted(), beyondTwice, words);
  }

  private static Verdict european(EuPlan plan, int beyond, int beyondTwice) {
    if (beyondTwice > 0 || beyond >= plan.refusedFrom()) {
      return Verdict.FAIL;
    }
    return beyond <= plan.accepted() ? Verdict.PASS : Verdict.SECOND_SAMPLE;
  }

  /** US manner: at most the plan's number short by more than the allowed variation, if known. */
  static Individual american(
      UsPlan plan, Sample sample, Contents contents, Optional<AllowedVariation> entered) {
    if (entered.isEmpty()) {
      return new Individual(
          Verdict.NOT_CHECKED, null, null, null, plan.allowed(), null, NOT_ENTERED);
    }
    Quantity tolerance = entered.get().allowed();
    double grams = contents.grams(tolerance);
    int beyond = sample.shortBy(contents.nominalGrams(), grams);
    return new Individual(
        Verdict.passIf(beyond <= plan.allowed()),
        tolerance,
        grams,
        beyond,
        plan.allowed(),
        null,
        "%d short by more than the allowed variation (%s, entered from %s), at most %d may be."
            .formatted(beyond, tolerance, entered.get().source(), plan.allowed()));
  }
}
