package org.barreltally.netcontents;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.settings.NetContentsRegime;

/** Writes a check out, rounded for people to hundredths of a gram. */
record CheckWriter(Contents contents, Sample sample, Findings findings, Uncertain scale) {

  private static final int DECIMALS = 2;

  NetContentsCheck write(
      UUID id,
      String lot,
      int lotSize,
      NetContentsRegime regime,
      List<String> cautions,
      Instant checkedAt) {
    AverageTest average = findings.average();
    Individual individual = findings.individual();
    return new NetContentsCheck(
        id,
        lot,
        contents.container().code(),
        regime,
        lotSize,
        sample.size(),
        contents.container().netContents(),
        grams(contents.nominalGrams()),
        grams(sample.mean()),
        grams(sample.standardDeviation()),
        average.factor(),
        grams(average.margin()),
        average.verdict(),
        grams(sample.shortest()),
        individual.tolerance(),
        individual.toleranceGrams() == null ? null : grams(individual.toleranceGrams()),
        individual.beyond(),
        individual.allowed(),
        individual.beyondTwice(),
        individual.verdict(),
        individual.words(),
        new NetContentsCheck.Weighing(
            grams(scale.u()), Math.abs(average.margin()) <= Uncertain.COVERAGE * scale.u()),
        findings.suggestHold(),
        findings.why(),
        List.copyOf(cautions),
        sample.weights(),
        checkedAt);
  }

  private static Quantity grams(double grams) {
    return Quantity.rounded(grams, Unit.G, DECIMALS);
  }
}
