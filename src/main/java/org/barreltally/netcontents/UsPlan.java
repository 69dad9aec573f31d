package org.barreltally.netcontents;

import java.math.BigDecimal;
import java.util.List;
import org.barreltally.measure.ReferenceTable;
import org.barreltally.refusal.InvalidField;

/**
 * A row of the US sampling plan, {@code db/reference/net_contents_sampling.csv} (NIST Handbook 133,
 * table 2-1): for a lot of {@code from} to {@code to}, how many are weighed, the sample correction
 * factor, and how many may be short by more than the allowed variation.
 */
record UsPlan(int from, int to, int sampleSize, BigDecimal factor, int allowed) {

  private static final List<UsPlan> ROWS =
      ReferenceTable.rows("net_contents_sampling.csv").stream()
          .map(
              row ->
                  new UsPlan(
                      Tables.whole(row, "lot_from"),
                      Tables.upTo(row, "lot_to"),
                      Tables.whole(row, "sample_size"),
                      Tables.decimal(row, "sample_correction_factor"),
                      Tables.whole(row, "packages_over_tolerance_allowed")))
          .toList();

  /**
   * The row of a lot.
   *
   * @throws InvalidField if the lot is too small for the plan
   * @throws WrongSampleSize if the plan wants another sample
   */
  static UsPlan of(int lotSize, int sampleSize) {
    UsPlan plan =
        ROWS.stream()
            .filter(row -> lotSize >= row.from && lotSize <= row.to)
            .findFirst()
            .orElseThrow(
                () ->
                    new InvalidField(
                        "lotSize", "A sample is drawn from a lot of at least two jars."));
    if (sampleSize != plan.sampleSize) {
      throw new WrongSampleSize(
          sampleSize, "The US plan weighs %d of a lot of %d".formatted(plan.sampleSize, lotSize));
    }
    return plan;
  }
}
