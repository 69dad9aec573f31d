package org.barreltally.reconciliation.flows;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** Takes unmeasured values out of balances and finds them again afterwards. */
final class Elimination {

  private static final double NOTHING = 1e-9;
  private static final double ROUNDING = 1e-14;

  private final int balances;
  private final int unknowns;
  private final int rank;

  /** Of the balances by unmeasured values; null if there are none. */
  private final PivotedQr qr;

  private Elimination(int balances, int unknowns, PivotedQr qr) {
    this.balances = balances;
    this.unknowns = unknowns;
    this.qr = qr;
    this.rank = qr == null ? 0 : qr.rank();
  }

  static Elimination of(double[][] b) {
    int unknowns = b[0].length;
    return new Elimination(
        b.length,
        unknowns,
        unknowns == 0 ? null : new PivotedQr(new Array2DRowRealMatrix(b, false)));
  }

  /** The balances that are left of these when the unmeasured are taken out; at least one row. */
  RealMatrix project(RealMatrix a) {
    if (rank == 0) {
      return a;
    }
    RealMatrix left =
        new Array2DRowRealMatrix(Math.max(1, balances - rank), a.getColumnDimension());
    for (int j = 0; j < a.getColumnDimension() && rank < balances; j++) {
      double[] turned = qr.turn(a.getColumn(j));
      for (int i = rank; i < balances; i++) {
        left.setEntry(i - rank, j, Math.abs(turned[i]) < ROUNDING ? 0 : turned[i]);
      }
    }
    return left;
  }

  /** What is left of a one on the right side of one balance. */
  RealVector projectionOf(int balance) {
    double[] unit = new double[balances];
    unit[balance] = 1;
    if (rank == 0) {
      return new ArrayRealVector(unit, false);
    }
    return rank == balances
        ? new ArrayRealVector(1)
        : new ArrayRealVector(qr.turn(unit), rank, balances - rank);
  }

  /** Unmeasured values for a right side; one of many where some are not determined. */
  RealVector solve(RealVector right) {
    RealVector solved = new ArrayRealVector(unknowns);
    if (rank == 0) {
      return solved;
    }
    double[] turned = qr.turn(right.toArray());
    for (int i = rank - 1; i >= 0; i--) {
      double left = turned[i];
      for (int k = i + 1; k < rank; k++) {
        left -= qr.r(i, k) * solved.getEntry(qr.order(k));
      }
      solved.setEntry(qr.order(i), left / qr.r(i, i));
    }
    return solved;
  }

  /** Whether the balances leave a value only one way to be. */
  boolean determined(int j) {
    int place = placeOf(j);
    if (place >= rank) {
      return false;
    }
    double[] y = againstColumns(place);
    for (int k = rank; k < unknowns; k++) {
      double moved = 0;
      for (int i = 0; i < rank; i++) {
        moved += y[i] * qr.r(i, k);
      }
      if (Math.abs(moved) > NOTHING) {
        return false;
      }
    }
    return true;
  }

  /** The row that, times minus the measured part of the balances, gives a determined value. */
  RealVector rowOfInverse(int j) {
    double[] row = new double[balances];
    double[] y = againstColumns(placeOf(j));
    System.arraycopy(y, 0, row, 0, rank);
    return new ArrayRealVector(qr.turnBack(row), false);
  }

  /** y with yᵀ R1 = eᵀ of a place. */
  private double[] againstColumns(int place) {
    double[] y = new double[rank];
    for (int i = place; i < rank; i++) {
      double left = i == place ? 1 : 0;
      for (int k = place; k < i; k++) {
        left -= qr.r(k, i) * y[k];
      }
      y[i] = left / qr.r(i, i);
    }
    return y;
  }

  private int placeOf(int j) {
    for (int i = 0; i < unknowns; i++) {
      if (qr.order(i) == j) {
        return i;
      }
    }
    throw new IllegalArgumentException("no unmeasured value " + j);
  }
}
