package org.barreltally.reconciliation.flows;

/**
 * What would be wrong if it were: a measured value, or a node of which a flow was not told.
 *
 * @param direction what an error of one adds to the contradictions
 */
record Suspicion(String flow, String node, double[] direction) {

  double length() {
    return Math.sqrt(dot(direction, direction));
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
