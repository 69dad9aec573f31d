package org.barreltally.shows.plan;

/**
 * What is believed of one item at one show: its usual rate of demand, and how far single occasions
 * spread about it. Where occasions spread, a count says less of the usual rate: it is heard as if
 * the show had been that much smaller (credibility after Bühlmann and Straub, ASTIN Bulletin 5
 * (1970) 111; from memory), so that even endless visitors tell no more than one occasion can.
 *
 * @param usual pieces per unit of exposure
 * @param within squared coefficient of variation from occasion to occasion, 0 or more
 */
record ShowRate(GammaPoisson usual, double within) {

  static ShowRate of(double mean, Spread spread, double doubtOfMean) {
    return new ShowRate(
        GammaPoisson.ofMean(mean, 1 / (spread.between() + doubtOfMean)), spread.within());
  }

  ShowRate after(CensoredCount count) {
    double heard = count.weight() / (1 + within * usual.mean() * count.exposure());
    double pieces = heard * count.pieces();
    double exposure = heard * count.exposure();
    return new ShowRate(
        count.soldOut() ? usual.afterAtLeast(pieces, exposure) : usual.after(pieces, exposure),
        within);
  }

  /** The demand at an exposure: the negative binomial with the mixture's mean and variance. */
  NegativeBinomial demand(double exposure) {
    double spread = (1 + within) * (1 + 1 / usual.shape()) - 1;
    return new NegativeBinomial(1 / spread, usual.mean() * exposure);
  }
}
