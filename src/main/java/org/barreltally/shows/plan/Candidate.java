package org.barreltally.shows.plan;

/**
 * One kind of jar when the scarce room is shared out.
 *
 * @param demand to expect
 * @param costs of a wrong number
 * @param wanted pieces by the newsvendor rule
 * @param promised the most that can be promised, 0 or more
 * @param kg one packed piece weighs, above 0
 * @param facing length of shelf a facing takes, inches, above 0
 * @param inFacing pieces a facing shows, refills included; 0 where it fits on no shelf
 */
record Candidate(
    Demand demand,
    Costs costs,
    long wanted,
    long promised,
    double kg,
    double facing,
    int inFacing) {

  /** The most pieces that are worth taking and can be. */
  int most() {
    return inFacing == 0 ? 0 : (int) Math.max(0, Math.min(wanted, promised));
  }

  int facings(int pieces) {
    return pieces == 0 ? 0 : (pieces - 1) / inFacing + 1;
  }

  /** What the first so many pieces are expected to bring, by number from 0 to {@link #most()}. */
  double[] gains() {
    double[] gains = new double[most() + 1];
    for (int n = 1; n < gains.length; n++) {
      gains[n] = gains[n - 1] + costs.gain(demand.atLeast(n));
    }
    return gains;
  }
}
