package org.barreltally.netcontents;

import org.barreltally.refusal.Refusal;

/** Another number of jars was weighed than the plan of the regime wants. */
public final class WrongSampleSize extends Refusal {

  /**
   * @param weighed how many there are
   * @param wanted what the plan wants, the beginning of a sentence
   */
  public WrongSampleSize(int weighed, String wanted) {
    super(
        Kind.RULE,
        "wrong-sample-size",
        "The sample has the wrong size",
        wanted + "; there are " + weighed + " weights. Draw at random and weigh that many.",
        "netWeights");
  }
}
