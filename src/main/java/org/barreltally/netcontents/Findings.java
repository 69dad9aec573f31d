package org.barreltally.netcontents;

import java.util.List;

/** What one manner found in a sample. */
record Findings(AverageTest average, Individual individual, List<String> cautions) {

  boolean suggestHold() {
    return average.verdict() == Verdict.FAIL || individual.verdict() == Verdict.FAIL;
  }

  /** Why the lot had better be held; null if nothing failed. */
  String why() {
    if (!suggestHold()) {
      return null;
    }
    String mean =
        "The mean is too far under the contents on the label: "
            + "refill or relabel the lot before it goes out.";
    if (individual.verdict() != Verdict.FAIL) {
      return mean;
    }
    String single = "Too many single jars are short: look at every jar before one goes out.";
    return average.verdict() == Verdict.FAIL ? mean + " " + single : single;
  }
}
