package org.barreltally.reconciliation.flows;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;

/**
 * A P = Q R by Householder reflections, each on the column of which most is left (Businger and
 * Golub, Numerische Mathematik 7 (1965), 269–276), so that the diagonal of R never grows and tells
 * the rank. Hipparchus's own (RRQRDecomposition, 4.0.3) chooses among whole columns instead of what
 * is left of them, and loses the rank of balances that follow from others.
 */
final class PivotedQr {

  private static final double NOTHING = 1e-10;

  /** By column: above the diagonal R, from it on the reflector of the step. */
  private final double[][] columns;

  private final double[] diagonal;
  private final int[] order;
  private final int rank;

  PivotedQr(RealMatrix matrix) {
    columns = matrix.transpose().getData();
    order = new int[columns.length];
    for (int j = 0; j < order.length; j++) {
      order[j] = j;
    }
    int steps = Math.min(matrix.getRowDimension(), columns.length);
    diagonal = new double[steps];
    int done = 0;
    while (done < steps && step(done)) {
      done++;
    }
    rank = done;
  }

  /** Whether anything was left. */
  private boolean step(int at) {
    int most = at;
    double squareMost = -1;
    for (int j = at; j < columns.length; j++) {
      double square = squareFrom(columns[j], at);
      if (square > squareMost * (1 + 1e-12)) {
        squareMost = square;
        most = j;
      }
    }
    swap(at, most);
    double[] column = columns[at];
    double length = Math.sqrt(Math.max(0, squareMost));
    if (length <= NOTHING * (at == 0 ? 0 : Math.abs(diagonal[0])) || length == 0) {
      return false;
    }
    diagonal[at] = column[at] > 0 ? -length : length;
    column[at] -= diagonal[at];
    for (int j = at + 1; j < columns.length; j++) {
      reflect(at, columns[j]);
    }
    return true;
  }

  private void swap(int a, int b) {
    double[] column = columns[a];
    columns[a] = columns[b];
    columns[b] = column;
    int which = order[a];
    order[a] = order[b];
    order[b] = which;
  }

  private static double squareFrom(double[] column, int from) {
    double square = 0;
    for (int i = from; i < column.length; i++) {
      square += column[i] * column[i];
    }
    return square;
  }

  private void reflect(int step, double[] vector) {
    double[] reflector = columns[step];
    double part = 0;
    for (int i = step; i < vector.length; i++) {
      part += reflector[i] * vector[i];
    }
    part /= diagonal[step] * reflector[step];
    for (int i = step; i < vector.length; i++) {
      vector[i] += part * reflector[i];
    }
  }

  int rank() {
    return rank;
  }

  /** Which column of the matrix went to this place. */
  int order(int place) {
    return order[place];
  }

  /** Of R, at or above the diagonal. */
  double r(int row, int column) {
    return row == column ? diagonal[row] : columns[column][row];
  }

  /** Qᵀ times a vector, in place. */
  double[] turn(double[] vector) {
    for (int step = 0; step < rank; step++) {
      reflect(step, vector);
    }
    return vector;
  }

  /** Q times a vector, in place. */
  double[] turnBack(double[] vector) {
    for (int step = rank - 1; step >= 0; step--) {
      reflect(step, vector);
    }
    return vector;
  }

  /** The first columns of Q, as many as the rank; one of nothing if that is none. */
  RealMatrix basis() {
    int rows = columns[0].length;
    RealMatrix basis = new Array2DRowRealMatrix(rows, Math.max(1, rank));
    for (int k = 0; k < rank; k++) {
      double[] unit = new double[rows];
      unit[k] = 1;
      for (int step = k; step >= 0; step--) { // later ones find nothing to turn
        reflect(step, unit);
      }
      basis.setColumn(k, unit);
    }
    return basis;
  }
}
