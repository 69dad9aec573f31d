package org.barreltally.reconciliation.flows;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Values x nearest to measured ones m that satisfy linear balances: the least of (x − m)ᵀ S⁻¹ (x −
 * m) subject to A x + B u = 0, where nobody measured u.
 *
 * <p>The unmeasured are projected out: rows P with P B = 0 leave P A x = 0 (Crowe, García Campos
 * and Hrymak, AIChE Journal 29 (1983), from memory). With S = L Lᵀ and w = L⁻¹x the balances are a
 * subspace; the columns of {@code basis} span what it forbids, so w = (I − Q Qᵀ) L⁻¹m. The vector
 * Qᵀ L⁻¹m is what the measurements contradict each other by: as many independent numbers, each of
 * standard uncertainty 1, as there are redundant balances. No normal matrix is formed or inverted,
 * and balances that follow from others do no harm.
 */
final class LeastSquares {

  private final RealMatrix root;
  private final RealVector measured;
  private final Elimination unmeasured;
  private final RealMatrix a;
  private final OrthonormalRows rows;

  /** By value, how far its adjustment moves with each contradiction. */
  private final RealMatrix moves;

  private final RealVector contradiction;
  private final RealVector reconciled;

  private LeastSquares(RealMatrix a, Elimination unmeasured, double[] measured, RealMatrix root) {
    this.a = a;
    this.unmeasured = unmeasured;
    this.root = root;
    this.measured = new ArrayRealVector(measured);
    this.rows = OrthonormalRows.of(times(unmeasured.project(a), root));
    this.moves = root.multiply(rows.basis());
    RealVector scaled = solveLower(root, this.measured);
    this.contradiction = rows.basis().preMultiply(scaled);
    RealVector once = scaled.subtract(rows.basis().operate(contradiction));
    // What rounding left is projected out a second time.
    RealVector twice = once.subtract(rows.basis().operate(rows.basis().preMultiply(once)));
    this.reconciled = root.operate(twice);
  }

  /**
   * @param a balances by measured values
   * @param b balances by unmeasured values; may have no columns
   * @param u standard uncertainties, not correlated
   */
  static LeastSquares of(double[][] a, double[][] b, double[] measured, double[] u) {
    return new LeastSquares(
        new Array2DRowRealMatrix(a, false),
        Elimination.of(b),
        measured,
        MatrixUtils.createRealDiagonalMatrix(u));
  }

  /** As above, for measurements that are correlated: their covariances, positive definite. */
  static LeastSquares correlated(
      double[][] a, double[][] b, double[] measured, double[][] covariance) {
    RealMatrix s = new Array2DRowRealMatrix(covariance);
    return new LeastSquares(
        new Array2DRowRealMatrix(a, false),
        Elimination.of(b),
        measured,
        new CholeskyDecomposition(s).getL());
  }

  /** How many independent balances check the measurements. */
  int redundancy() {
    return rows.rank();
  }

  /** χ²: the least of the weighted squares. */
  double objective() {
    return contradiction.dotProduct(contradiction);
  }

  /** The contradictions in their orthonormal directions, each of standard uncertainty 1. */
  double[] contradiction() {
    return contradiction.toArray();
  }

  double[] reconciled() {
    return reconciled.toArray();
  }

  double adjustment(int j) {
    return reconciled.getEntry(j) - measured.getEntry(j);
  }

  /** Standard uncertainty of the adjustment of a value; 0 where nothing checks it. */
  double adjustmentU(int j) {
    return moves.getRowVector(j).getNorm();
  }

  /** Standard uncertainty of a reconciled value. */
  double reconciledU(int j) {
    RealVector row = root.getRowVector(j);
    double adjusted = adjustmentU(j);
    return Math.sqrt(Math.max(0, row.dotProduct(row) - adjusted * adjusted));
  }

  /** How much of a measured value's variance the others can check, 0 (none) to 1 (all). */
  double checked(int j) {
    double part = adjustmentU(j) / root.getRowVector(j).getNorm();
    return part * part;
  }

  /** What a measured value that is one too high adds to the contradictions. */
  double[] biasOf(int j) {
    if (root instanceof DiagonalMatrix diagonal) {
      return rows.basis().getRowVector(j).mapDivide(diagonal.getEntry(j, j)).toArray();
    }
    RealVector unit = new ArrayRealVector(root.getRowDimension());
    unit.setEntry(j, 1);
    return rows.basis().preMultiply(solveLower(root, unit)).toArray();
  }

  /**
   * What it adds to the contradictions if one more comes in by a balance than goes out by it; null
   * if no measurement can show it.
   */
  double[] imbalanceOf(int balance) {
    return rows.directionOf(unmeasured.projectionOf(balance));
  }

  /** The unmeasured values that the reconciled ones lead to. */
  double[] unmeasured() {
    return unmeasured.solve(a.operate(reconciled).mapMultiply(-1)).toArray();
  }

  /** Whether an unmeasured value follows from the measured ones. */
  boolean determined(int j) {
    return unmeasured.determined(j);
  }

  /** Standard uncertainty of an unmeasured value that is determined. */
  double unmeasuredU(int j) {
    // A row of the map from reconciled to unmeasured values, times the root of their covariance.
    RealVector row = root.preMultiply(a.preMultiply(unmeasured.rowOfInverse(j)));
    double adjusted = rows.basis().preMultiply(row).getNorm();
    return Math.sqrt(Math.max(0, row.dotProduct(row) - adjusted * adjusted));
  }

  private static RealMatrix times(RealMatrix matrix, RealMatrix root) {
    // A diagonal matrix would be multiplied like any other.
    return root instanceof DiagonalMatrix diagonal
        ? diagonal.multiply(matrix.transpose()).transpose()
        : matrix.multiply(root);
  }

  private static RealVector solveLower(RealMatrix lower, RealVector right) {
    RealVector solved = right.copy();
    if (lower instanceof DiagonalMatrix diagonal) {
      double[] scale = diagonal.getDataRef();
      for (int i = 0; i < scale.length; i++) {
        solved.setEntry(i, solved.getEntry(i) / scale[i]);
      }
      return solved;
    }
    MatrixUtils.solveLowerTriangularSystem(lower, solved);
    return solved;
  }
}
