package org.barreltally.shows.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * Finds the mean and shape that make the counts likeliest, over the logarithms of both (Powell's
 * BOBYQA, which bends a parabola through six points and trusts it within a shrinking radius). The
 * shape is kept within {@value #LEAST_SHAPE} to {@value #MOST_SHAPE}: beyond, nothing can be told
 * from none and from Poisson.
 */
final class Fitting {

  static final double LEAST_SHAPE = 0.02;
  static final double MOST_SHAPE = 1e4;

  private static final int MOST_VALUES = 2_000;
  private static final int INTERPOLATION_POINTS = 6;
  private static final double STEP = 0.4;
  private static final double ENOUGH = 2e-5;
  private static final double MOST_LOG_OFF = 30;

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
          double mean = start * Math.exp(point[0]);
          double shape = Math.exp(point[1]);
          return likelihood.at(mean, shape)
              + beforehand.map(b -> b.logDensity(mean, shape)).orElse(0.0);
        };
    PointValuePair best =
        new BOBYQAOptimizer(INTERPOLATION_POINTS, STEP, ENOUGH)
            .optimize(
                new MaxEval(MOST_VALUES),
                GoalType.MAXIMIZE,
                new ObjectiveFunction(value),
                new InitialGuess(new double[] {0, Math.log(Beforehand.SHAPE)}),
                new SimpleBounds(
                    new double[] {-MOST_LOG_OFF, Math.log(LEAST_SHAPE)},
                    new double[] {MOST_LOG_OFF, Math.log(MOST_SHAPE)}));
    double[] point = best.getPoint();
    return new Fit(start * Math.exp(point[0]), Math.exp(point[1]), best.getValue());
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
