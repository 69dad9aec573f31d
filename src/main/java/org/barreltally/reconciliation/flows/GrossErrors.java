package org.barreltally.reconciliation.flows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Finds which single error explains most of the contradictions, sets it aside, and looks again: the
 * generalised likelihood ratio test with serial elimination (Narasimhan and Mah, AIChE Journal 33
 * (1987), from memory). For a measured value the test is the maximum-power measurement test of
 * Tamhane and Mah (Technometrics 27 (1985), 409–422). Errors of which the contradictions show
 * nothing but the same direction cannot be told apart, and are named together.
 */
final class GrossErrors {

  private static final int MOST_SUSPECTS = 8;
  private static final double SAME = 1e-9;
  private static final double NOTHING = 1e-7;

  private final double[] contradiction;
  private final List<Suspicion> all;
  private final double critical;

  GrossErrors(double[] contradiction, List<Suspicion> all) {
    this.contradiction = contradiction;
    this.all = all;
    this.critical = critical(differing());
  }

  /** What the largest of so many tests exceeds once in twenty (Šidák 1967). */
  static double critical(int tests) {
    double each = -Math.expm1(Math.log1p(-GlobalTest.LEVEL) / Math.max(1, tests));
    return new NormalDistribution().inverseCumulativeProbability(1 - each / 2);
  }

  double critical() {
    return critical;
  }

  /** How many suspicions differ: those of one direction are one test. */
  private int differing() {
    Random fixed = new Random(20);
    double[] probe = fixed.doubles(contradiction.length, 0.5, 1.5).toArray();
    double[] marks =
        all.stream()
            .mapToDouble(s -> Math.abs(Suspicion.dot(s.direction(), probe)) / s.length())
            .sorted()
            .toArray();
    int count = 0;
    for (int i = 0; i < marks.length; i++) {
      count += i == 0 || marks[i] - marks[i - 1] > SAME ? 1 : 0;
    }
    return count;
  }

  List<Suspect> find() {
    double[] left = contradiction.clone();
    List<double[]> directions = new ArrayList<>();
    all.forEach(s -> directions.add(s.direction().clone()));
    List<List<Integer>> found = new ArrayList<>();
    List<Double> scores = new ArrayList<>();
    List<GlobalTest> after = new ArrayList<>();
    int most = Math.min(MOST_SUSPECTS, contradiction.length);
    while (found.size() < most) {
      double[] scored = scores(left, directions);
      int best = best(scored);
      if (best < 0 || Math.abs(scored[best]) <= critical) {
        break;
      }
      found.add(like(directions.get(best), directions));
      scores.add(scored[best]);
      setAside(directions.get(best), left, directions);
      after.add(GlobalTest.of(Suspicion.dot(left, left), contradiction.length - found.size()));
    }
    return told(found, scores, after);
  }

  private double[] scores(double[] left, List<double[]> directions) {
    double[] scores = new double[directions.size()];
    for (int i = 0; i < scores.length; i++) {
      double[] direction = directions.get(i);
      double length = Math.sqrt(Suspicion.dot(direction, direction));
      scores[i] =
          length <= NOTHING * all.get(i).length() ? 0 : Suspicion.dot(direction, left) / length;
    }
    return scores;
  }

  private static int best(double[] scores) {
    int best = -1;
    for (int i = 0; i < scores.length; i++) {
      best = best < 0 || Math.abs(scores[i]) > Math.abs(scores[best]) + SAME ? i : best;
    }
    return best;
  }

  private List<Integer> like(double[] direction, List<double[]> directions) {
    double square = Suspicion.dot(direction, direction);
    List<Integer> like = new ArrayList<>();
    for (int i = 0; i < directions.size(); i++) {
      double[] other = directions.get(i);
      double otherSquare = Suspicion.dot(other, other);
      double both = Suspicion.dot(direction, other);
      if (otherSquare > NOTHING * NOTHING * all.get(i).length() * all.get(i).length()
          && both * both >= (1 - SAME) * square * otherSquare) {
        like.add(i);
      }
    }
    return like;
  }

  private static void setAside(double[] direction, double[] left, List<double[]> directions) {
    double length = Math.sqrt(Suspicion.dot(direction, direction));
    double[] unit = Arrays.stream(direction).map(each -> each / length).toArray();
    takeOut(unit, left);
    directions.forEach(each -> takeOut(unit, each));
  }

  private static void takeOut(double[] unit, double[] vector) {
    double part = Suspicion.dot(unit, vector);
    for (int i = 0; i < vector.length; i++) {
      vector[i] -= part * unit[i];
    }
  }

  private List<Suspect> told(
      List<List<Integer>> found, List<Double> scores, List<GlobalTest> after) {
    List<Suspect> told = new ArrayList<>();
    for (int n = 0; n < found.size(); n++) {
      List<Suspect.Reading> readings = new ArrayList<>();
      for (int i : found.get(n)) {
        readings.add(reading(i, n, found));
      }
      told.add(new Suspect(scores.get(n), List.copyOf(readings), after.get(n)));
    }
    return told;
  }

  /**
   * The error of one way to read a suspect, estimated together with the first ways of the others.
   */
  private Suspect.Reading reading(int which, int n, List<List<Integer>> found) {
    int count = found.size();
    double[][] columns = new double[count][];
    for (int k = 0; k < count; k++) {
      columns[k] = all.get(k == n ? which : found.get(k).get(0)).direction();
    }
    RealMatrix g = new Array2DRowRealMatrix(columns);
    RealMatrix inverse =
        new CholeskyDecomposition(g.multiplyTransposed(g), 1e-9, 0).getSolver().getInverse();
    double error = inverse.operate(g.operate(new ArrayRealVector(contradiction))).getEntry(n);
    Suspicion suspicion = all.get(which);
    return new Suspect.Reading(
        suspicion.flow(), suspicion.node(), error, Math.sqrt(inverse.getEntry(n, n)));
  }
}
