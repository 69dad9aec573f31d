package org.barreltally.shows.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * Finds the mean and shape that make the counts likeliest, over the logarithms of both (Nelder and
 * Mead's simplex). The shape is kept within {@value #LEAST_SHAPE} to {@value #MOST_SHAPE}: beyond,
 * nothing can be told from none and from Poisson.
 */
final class Fitting {

  static final double LEAST_SHAPE = 0.02;
  static final double MOST_SHAPE = 1e4;

  private static final int MOST_VALUES = 2_000;
  private static final double STEP = 0.4;
  private static final double ENOUGH = 1e-7;

  private Fitting() {}

  /** Maximum likelihood from the counts alone; at least one of them is above 0. */
  static Fit likeliest(List<CensoredCount> counts) {
    return likeliest(counts, Optional.empty());
  }

  /** Maximum of the likelihood times what was held likely beforehand. */
  static Fit likeliest(List<CensoredCount> counts, Beforehand beforehand) {
    return likeliest(counts, Optional.of(beforehand));
  }

  private static Fit likeliest(List<CensoredCount> counts, Optional<Beforehand> beforehand) {
    CensoredLikelihood likelihood = new CensoredLikelihood(counts);
    double start = roughMean(counts, beforehand);
    MultivariateFunction value =
        point -> {
          double shape = shapeOf(point[1]);
          double mean = start * Math.exp(Math.max(-30, Math.min(30, point[0])));
          double outside = Math.max(0, Math.abs(point[1] - Math.log(shape)));
          return likelihood.at(mean, shape)
              + beforehand.map(b -> b.logDensity(mean, shape)).orElse(0.0)
              - outside;
        };
    // The simplex may collapse against the largest shape; begun anew there, it opens again.
    PointValuePair first = climb(value, new double[] {0, Math.log(Beforehand.SHAPE)}, STEP);
    PointValuePair best = climb(value, first.getPoint(), STEP / 8);
    double[] point = best.getPoint();
    return new Fit(start * Math.exp(point[0]), shapeOf(point[1]), best.getValue());
  }

  private static PointValuePair climb(MultivariateFunction value, double[] from, double step) {
    return new SimplexOptimizer(new SimpleValueChecker(-1, ENOUGH))
        .optimize(
            new MaxEval(MOST_VALUES),
            GoalType.MAXIMIZE,
            new ObjectiveFunction(value),
            new InitialGuess(from),
            new NelderMeadSimplex(2, step));
  }

  /** The likeliest mean, pieces per unit of exposure, where the shape is known. */
  static double likeliestMean(List<CensoredCount> counts, double shape, Beforehand beforehand) {
    CensoredLikelihood likelihood = new CensoredLikelihood(counts);
    double start = roughMean(counts, Optional.of(beforehand));
    DoubleUnaryOperator value =
        log -> {
          double mean = start * Math.exp(log);
          return likelihood.at(mean, shape) + beforehand.logDensity(mean, shape);
        };
    return start
        * Math.exp(
            new BrentOptimizer(1e-6, 1e-6)
                .optimize(
                    new MaxEval(MOST_VALUES),
                    GoalType.MAXIMIZE,
                    new UnivariateObjectiveFunction(value::applyAsDouble),
                    new SearchInterval(-6, 6, 0))
                .getPoint());
  }

  private static double shapeOf(double log) {
    return Math.max(LEAST_SHAPE, Math.min(MOST_SHAPE, Math.exp(log)));
  }

  private static double roughMean(List<CensoredCount> counts, Optional<Beforehand> beforehand) {
    double pieces = beforehand.map(b -> b.guessWeight() * b.guess() * b.exposure()).orElse(0.0);
    double exposure = beforehand.map(b -> b.guessWeight() * b.exposure()).orElse(0.0);
    for (CensoredCount count : counts) {
      if (count.tells()) {
        pieces += count.weight() * count.pieces();
        exposure += count.weight() * count.exposure();
      }
    }
    if (!(pieces > 0)) {
      throw new IllegalArgumentException("nothing was ever sold and nothing guessed");
    }
    return pieces / exposure;
  }
}
