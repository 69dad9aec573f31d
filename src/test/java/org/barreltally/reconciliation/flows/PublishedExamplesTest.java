package org.barreltally.reconciliation.flows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked examples from outside. */
class PublishedExamplesTest {

  /**
   * Narasimhan and Jordache, Data Reconciliation and Gross Error Detection (2000), chapter 1: a
   * heat exchanger with a bypass. The values are from memory; the arithmetic was recomputed and
   * agrees.
   */
  @Test
  void a_heat_exchanger_with_a_bypass() {
    Reconciled found = Reconciler.reconcile(exchanger(101.91, 64.45, 34.65, 64.20, 36.44, 98.88));
    double[] published = {100.22, 64.50, 35.72, 64.50, 35.72, 100.22};
    for (int i = 0; i < published.length; i++) {
      assertEquals(published[i], found.flows().get(i).reconciled(), 0.005);
    }
    assertEquals(4, found.globalTest().degreesOfFreedom());
  }

  /**
   * The same, by hand. With a = f2 = f4 and b = f3 = f5 the sum (a + b − 101.91)² + (a − 64.45)² +
   * (b − 34.65)² + (a − 64.20)² + (b − 36.44)² + (a + b − 98.88)² is least where 4a + 2b = 101.91 +
   * 98.88 + 64.45 + 64.20 = 329.44 and 2a + 4b = 101.91 + 98.88 + 34.65 + 36.44 = 271.88; so b = (2
   * × 271.88 − 329.44)/6 = 35.72 and a = 64.50. The covariance of (a, b) is the inverse of ((4, 2),
   * (2, 4)): 1/12 ((4, −2), (−2, 4)); of f1 therefore 4/12 + 4/12 − 4/12 = 1/3.
   */
  @Test
  void its_uncertainties_by_hand() {
    Reconciled found = Reconciler.reconcile(exchanger(101.91, 64.45, 34.65, 64.20, 36.44, 98.88));
    assertEquals(35.72, found.flow("f3").reconciled(), 1e-9);
    assertEquals(64.50, found.flow("f4").reconciled(), 1e-9);
    assertEquals(Math.sqrt(1.0 / 3), found.flow("f1").u(), 1e-12);
    assertEquals(Math.sqrt(1.0 / 3), found.flow("f5").u(), 1e-12);
    // f1: adjusted by −1.69, with variance 1 − 1/3.
    assertEquals(-1.69 / Math.sqrt(2.0 / 3), found.flow("f1").standardized(), 1e-9);
    double chiSquared =
        1.69 * 1.69 + 0.05 * 0.05 + 1.07 * 1.07 + 0.30 * 0.30 + 0.72 * 0.72 + 1.34 * 1.34;
    assertEquals(chiSquared, found.globalTest().chiSquared(), 1e-9);
    // 9.488 for 4 degrees of freedom: any table of χ² at 5 %.
    assertEquals(9.488, found.globalTest().critical(), 0.0005);
    assertTrue(found.globalTest().passed());
    assertEquals(List.of(), found.suspects());
  }

  @Test
  void it_finds_a_gross_error_planted_into_it() {
    Reconciled found = Reconciler.reconcile(exchanger(101.91, 74.45, 34.65, 64.20, 36.44, 98.88));
    assertFalse(found.globalTest().passed());
    Suspect first = found.suspects().get(0);
    assertEquals("f2", first.readings().get(0).flow());
    // Without f2: 3a + 2b = 264.99 and 2a + 4b = 271.88, so a = 64.525 and f2 is 74.45 − 64.525
    // off.
    assertEquals(74.45 - 64.525, first.readings().get(0).error(), 1e-9);
    // The covariance of (a, b) is then 1/8 ((4, −2), (−2, 3)): a has 1/2, f2 itself 1.
    assertEquals(Math.sqrt(1.5), first.readings().get(0).u(), 1e-9);
    assertTrue(first.after().passed());
  }

  private static FlowNetwork exchanger(double... measured) {
    String[][] ends = {
      {null, "split"},
      {"split", "exchanger"},
      {"split", "valve"},
      {"exchanger", "mix"},
      {"valve", "mix"},
      {"mix", null}
    };
    List<Flow> flows = new java.util.ArrayList<>();
    for (int i = 0; i < ends.length; i++) {
      flows.add(Flow.measured("f" + (i + 1), ends[i][0], ends[i][1], measured[i], 1));
    }
    return new FlowNetwork(List.of("split", "exchanger", "valve", "mix"), flows);
  }

  /**
   * VDI 2048, part 1 (October 2000): the water and steam of a turbine plant, kg/s, with 95 % half
   * widths and two correlations. Data and balances as printed in OpenModelica's user guide, chapter
   * Data Reconciliation, which compares its results with the standard's; results as in the tests of
   * the open library dvrlib (test/vdi2048_test.cc), to six digits.
   */
  @Test
  void the_turbine_plant_of_vdi_2048() {
    double[] measured = {
      46.241, 45.668, 44.575, 44.319, 0.525, 69.978, 10.364, 3.744, 4.391, 18.498, 2.092
    };
    double[] halfWidths = {
      0.800, 0.790, 0.535, 0.532, 0.105, 0.854, 0.168, 0.058, 0.058, 0.205, 0.272
    };
    // mFDKeI, mFDKeII, mSpI, mSpII, mV, mHK, mA7, mA6, mA5, mHDNK, mD; then unmeasured mFD1, mFD2,
    // mFD3, mHDAnz.
    double[][] a = {
      {1, 1, 0, 0, -0.2, 0, 0, 0, 0, 0, 0},
      {0, 0, 1, 1, -0.6, 0, 0, 0, 0, 0, 0},
      {0, 0, 0, 0, 0.4, 1, 1, 1, 1, 0, 0},
      {0, 0, 0, 0, 0, 0, 1, 1, 1, 0, 0},
      {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
      {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
      {0, 0, 0, 0, 0, 0, 0, 0, 0, -1, 0},
    };
    double[][] b = {
      {-1, 0, 0, 0},
      {0, -1, 0, 0},
      {0, 0, -1, 0},
      {0, 0, 0, -1},
      {1, -1, 0, 0},
      {0, 1, -1, 0},
      {0, 0, 0, 1},
    };
    LeastSquares found = LeastSquares.correlated(a, b, measured, covariance(halfWidths));
    double[] reconciled = {
      44.9644892,
      44.4179721,
      44.9259040,
      44.6670964,
      0.5263479,
      70.5530608,
      10.3757830,
      3.7454044,
      4.3924044,
      18.5135918,
      2.092
    };
    double[] reconciledHalfWidths = {
      0.5756266, 0.5728176, 0.4044632, 0.4029194, 0.1046234, 0.5598728, 0.1330034, 0.0566953,
      0.0566953, 0.1371025, 0.272
    };
    for (int j = 0; j < measured.length; j++) {
      assertEquals(reconciled[j], found.reconciled()[j], 1e-6);
      assertEquals(reconciledHalfWidths[j], 1.96 * found.reconciledU(j), 1e-6);
    }
    double[] unmeasured = {89.2771918, 89.2771918, 89.2771918, 18.5135918};
    for (int j = 0; j < unmeasured.length; j++) {
      assertTrue(found.determined(j));
      assertEquals(unmeasured[j], found.unmeasured()[j], 1e-6);
    }
    assertEquals(3, found.redundancy());
    assertEquals(0, found.checked(10), 1e-12); // mD stands in no balance
    // The guide prints 7.81473 for three degrees of freedom.
    assertEquals(7.81473, GlobalTest.of(found.objective(), 3).critical(), 5e-6);
  }

  /** From 95 % half widths, 1.96 standard uncertainties, and the two correlations. */
  private static double[][] covariance(double[] halfWidths) {
    double[][] covariance = new double[halfWidths.length][halfWidths.length];
    for (int i = 0; i < halfWidths.length; i++) {
      covariance[i][i] = halfWidths[i] * halfWidths[i] / (1.96 * 1.96);
    }
    correlate(covariance, 0, 1, 0.2);
    correlate(covariance, 2, 3, 0.4);
    return covariance;
  }

  private static void correlate(double[][] covariance, int i, int j, double r) {
    covariance[i][j] = r * Math.sqrt(covariance[i][i] * covariance[j][j]);
    covariance[j][i] = covariance[i][j];
  }
}
