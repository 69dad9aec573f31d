package org.barreltally.reconciliation.flows;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** An orthonormal basis of the rows of a matrix, each row brought to length 1 before. */
final class OrthonormalRows {

  /** Of the longest row: less is rounding errors. */
  private static final double NOTHING = 1e-13;

  private static final double UNEQUAL = 1e-7;

  private final RealMatrix basis;
  private final PivotedQr qr;
  private final double[] scales;

  private OrthonormalRows(PivotedQr qr, double[] scales) {
    this.basis = qr.basis();
    this.qr = qr;
    this.scales = scales;
  }

  static OrthonormalRows of(RealMatrix matrix) {
    int count = matrix.getRowDimension();
    double longest = 0;
    double[] scales = new double[count];
    for (int i = 0; i < count; i++) {
      scales[i] = matrix.getRowVector(i).getNorm();
      longest = Math.max(longest, scales[i]);
    }
    RealMatrix columns = new Array2DRowRealMatrix(matrix.getColumnDimension(), count);
    for (int i = 0; i < count; i++) {
      scales[i] = scales[i] <= longest * NOTHING ? 0 : 1 / scales[i];
      columns.setColumnVector(i, matrix.getRowVector(i).mapMultiply(scales[i]));
    }
    return new OrthonormalRows(new PivotedQr(columns), scales);
  }

  int rank() {
    return qr.rank();
  }

  /** Its columns are the basis; a single column of nothing if there are no rows. */
  RealMatrix basis() {
    return basis;
  }

  /**
   * The coordinates g in the basis for which the rows times (basis g) give the right side; null if
   * there are none, or the right side is nothing.
   */
  double[] directionOf(RealVector right) {
    int rank = rank();
    if (rank == 0 || right.getNorm() < UNEQUAL) {
      return null;
    }
    double[] g = new double[rank];
    for (int i = 0; i < scales.length; i++) {
      double left = right.getEntry(qr.order(i)) * scales[qr.order(i)];
      for (int k = 0; k < Math.min(i, rank); k++) {
        left -= qr.r(k, i) * g[k];
      }
      if (i < rank) {
        g[i] = left / qr.r(i, i);
      } else if (Math.abs(left) > UNEQUAL * new ArrayRealVector(g, false).getNorm()) {
        return null;
      }
    }
    return g;
  }
}
