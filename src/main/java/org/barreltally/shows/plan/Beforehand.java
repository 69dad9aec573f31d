package org.barreltally.shows.plan;

/**
 * What is held likely before any count: it keeps a fit from running away on thin history and fades
 * as counts come in.
 *
 * @param guess pieces per unit of exposure; above 0
 * @param exposure of the show the guess was made for, above 0
 * @param guessWeight how many shows the guess counts for
 * @param shape the likeliest shape
 * @param shapeSpread standard deviation of the logarithm of the shape
 */
public record Beforehand(
    double guess, double exposure, double guessWeight, double shape, double shapeSpread) {

  /** A guess stands for a quarter of one show. */
  static final double GUESS_WEIGHT = 0.25;

  /**
   * Takings of like shows vary by about 58 % (shape 3) if nobody knows better. No source: chosen
   * wide, and left behind after some ten shows.
   */
  static final double SHAPE = 3;

  static final double SHAPE_SPREAD = 1;

  static Beforehand guessing(double guess, double exposure) {
    return new Beforehand(guess, exposure, GUESS_WEIGHT, SHAPE, SHAPE_SPREAD);
  }

  double logDensity(double mean, double shapeTried) {
    double off = Math.log(shapeTried / shape) / shapeSpread;
    double counted =
        new NegativeBinomial(shapeTried, mean * exposure).logProbability(guess * exposure);
    return guessWeight * counted - off * off / 2;
  }
}
