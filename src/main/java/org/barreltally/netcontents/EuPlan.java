package org.barreltally.netcontents;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.measure.ReferenceTable;

/**
 * A sample size of the European reference test: its factor of the mean test ({@code
 * net_contents_mean_test_eu.csv}, UK SI 2006/659 schedule 2) and how many may be short by more than
 * T ({@code net_contents_defectives_eu.csv}, Directive 76/211/EEC annex II).
 *
 * @param lotFrom the least lot the plan uses this sample for
 * @param lotTo the greatest
 * @param accepted so many beyond T pass
 * @param refusedFrom so many or more fail; between the two a second sample decides
 */
record EuPlan(
    int sampleSize, BigDecimal factor, int lotFrom, int lotTo, int accepted, int refusedFrom) {

  private static final List<EuPlan> ROWS =
      ReferenceTable.rows("net_contents_mean_test_eu.csv").stream().map(EuPlan::read).toList();

  /**
   * The row of a sample.
   *
   * @throws WrongSampleSize if there is no factor for it, or it is larger than the lot
   */
  static EuPlan of(int lotSize, int sampleSize) {
    Optional<EuPlan> plan = ROWS.stream().filter(row -> row.sampleSize == sampleSize).findFirst();
    if (plan.isEmpty() || sampleSize > lotSize) {
      throw new WrongSampleSize(
          sampleSize,
          "The European reference test weighs "
              + ROWS.stream()
                  .map(row -> Integer.toString(row.sampleSize))
                  .collect(Collectors.joining(", "))
              + " jars, no more than the lot has ("
              + lotSize
              + ")");
    }
    return plan.get();
  }

  /** What to mind if the plan uses this sample for lots of another size. */
  Optional<String> caution(int lotSize) {
    return lotSize >= lotFrom && lotSize <= lotTo
        ? Optional.empty()
        : Optional.of(
            "For a lot of %d the European plan draws another sample than %d (under 100 it looks at every jar). Ask the weights-and-measures office which sample counts."
                .formatted(lotSize, sampleSize));
  }

  private static EuPlan read(CSVRecord mean) {
    int size = Tables.whole(mean, "sample_size");
    CSVRecord defectives =
        ReferenceTable.rows("net_contents_defectives_eu.csv").stream()
            .filter(row -> Tables.whole(row, "sample_size") == size)
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no number of defectives for " + size));
    return new EuPlan(
        size,
        Tables.decimal(mean, "factor"),
        Tables.whole(defectives, "lot_from"),
        Tables.upTo(defectives, "lot_to"),
        Tables.whole(defectives, "accepted"),
        Tables.whole(defectives, "refused_from"));
  }
}
