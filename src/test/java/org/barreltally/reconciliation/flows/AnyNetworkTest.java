package org.barreltally.reconciliation.flows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Networks at random whose truth is known, against two other ways to the answer: the stationary
 * point of the Lagrangian by LU, and the loops of the network as free variables by singular values.
 * {@code -Dbarreltally.seed=} repeats one.
 */
class AnyNetworkTest {

  static LongStream seeds() {
    Long one = Long.getLong("barreltally.seed");
    return one != null ? LongStream.of(one) : LongStream.range(0, 60);
  }

  /** A network, and what truly flows in it. */
  private record Known(FlowNetwork network, double[] truth) {}

  @ParameterizedTest
  @MethodSource("seeds")
  void what_is_reconciled_balances_and_is_nearest(long seed) {
    Known known = known(new Random(seed), 0.3);
    Reconciled found = Reconciler.reconcile(known.network());
    List<ReconciledFlow> flows = found.flows();
    double largest = 0;
    double truths = 0;
    double its = 0;
    for (int j = 0; j < flows.size(); j++) {
      Flow flow = flows.get(j).flow();
      largest = Math.max(largest, Math.abs(known.truth()[j]));
      if (flow.isMeasured()) {
        truths += Math.pow(flow.measured() - known.truth()[j], 2) / flow.variance();
        its += Math.pow(flow.measured() - flows.get(j).reconciled(), 2) / flow.variance();
      }
    }
    for (String node : known.network().nodes()) {
      Double left = left(node, flows);
      if (left != null) {
        assertEquals(0, left / largest, 1e-9, node);
      }
    }
    assertTrue(its <= truths * (1 + 1e-9) + 1e-9);
    assertEquals(its, found.globalTest().chiSquared(), 1e-6 * Math.max(1, its));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void it_agrees_with_the_lagrangian_solved_densely(long seed) {
    Known known = known(new Random(seed), 0);
    List<Flow> flows = known.network().flows();
    int n = flows.size();
    int k = known.network().nodes().size();
    double[][] a = known.network().balances(flows);
    RealMatrix system = new Array2DRowRealMatrix(n + k, n + k);
    RealVector right = new ArrayRealVector(n + k);
    for (int j = 0; j < n; j++) {
      double weight = 1 / flows.get(j).variance();
      system.setEntry(j, j, weight);
      right.setEntry(j, weight * flows.get(j).measured());
      for (int i = 0; i < k; i++) {
        system.setEntry(j, n + i, a[i][j]);
        system.setEntry(n + i, j, a[i][j]);
      }
    }
    RealMatrix inverse = new LUDecomposition(system, 1e-14).getSolver().getInverse();
    RealVector solved = inverse.operate(right);
    Reconciled found = Reconciler.reconcile(known.network());
    for (int j = 0; j < n; j++) {
      ReconciledFlow flow = found.flows().get(j);
      assertEquals(
          solved.getEntry(j), flow.reconciled(), 1e-6 * Math.abs(solved.getEntry(j)) + 1e-6);
      // The upper left block of the inverse is the covariance of the reconciled values.
      assertEquals(Math.sqrt(Math.abs(inverse.getEntry(j, j))), flow.u(), 1e-4 * flow.u() + 1e-6);
    }
    assertEquals(k, found.globalTest().degreesOfFreedom());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void with_unmeasured_flows_it_agrees_with_the_loops_solved_by_singular_values(long seed) {
    Known known = known(new Random(seed), 0.4);
    List<Flow> flows = known.network().flows();
    int n = flows.size();
    double[][] loops = loops(known.network());
    RealMatrix weighted = new Array2DRowRealMatrix(n, loops.length);
    RealVector right = new ArrayRealVector(n);
    for (int j = 0; j < n; j++) {
      Flow flow = flows.get(j);
      if (flow.isMeasured()) {
        double u = Math.sqrt(flow.variance());
        right.setEntry(j, flow.measured() / u);
        for (int c = 0; c < loops.length; c++) {
          weighted.setEntry(j, c, loops[c][j] / u);
        }
      }
    }
    SingularValueDecomposition svd = new SingularValueDecomposition(weighted);
    RealVector y = pseudoInverse(svd, right);
    Reconciled found = Reconciler.reconcile(known.network());
    for (int j = 0; j < n; j++) {
      double solved = 0;
      for (int c = 0; c < loops.length; c++) {
        solved += loops[c][j] * y.getEntry(c);
      }
      ReconciledFlow flow = found.flows().get(j);
      if (flow.reconciled() != null) {
        assertEquals(solved, flow.reconciled(), 1e-6 * Math.abs(solved) + 1e-5, flow.flow().name());
      } else {
        assertNull(flow.flow().measured());
        assertTrue(free(j, loops, flows), flow.flow().name() + " can be determined");
      }
    }
  }

  private static RealVector pseudoInverse(SingularValueDecomposition svd, RealVector right) {
    RealVector turned = svd.getUT().operate(right);
    double[] values = svd.getSingularValues();
    for (int i = 0; i < values.length; i++) {
      turned.setEntry(i, values[i] > 1e-9 * values[0] ? turned.getEntry(i) / values[i] : 0);
    }
    return svd.getV().operate(turned);
  }

  /** Whether some combination of loops moves an unmeasured flow and no measured one. */
  private static boolean free(int j, double[][] loops, List<Flow> flows) {
    // Rank of the loops on measured flows, with and without the flow in question.
    return rank(loops, flows, -1) < rank(loops, flows, j);
  }

  private static int rank(double[][] loops, List<Flow> flows, int also) {
    RealMatrix rows = new Array2DRowRealMatrix(flows.size(), loops.length);
    for (int j = 0; j < flows.size(); j++) {
      for (int c = 0; c < loops.length; c++) {
        rows.setEntry(j, c, flows.get(j).isMeasured() || j == also ? loops[c][j] : 0);
      }
    }
    return new SingularValueDecomposition(rows).getRank();
  }

  /**
   * One loop for each flow that a tree of flows does not need; the outside is one more node. The
   * tree is the first flow that reaches each node, as known() makes it.
   */
  private static double[][] loops(FlowNetwork network) {
    List<Flow> flows = network.flows();
    int tree = network.nodes().size();
    double[][] a = network.balances(flows);
    List<double[]> loops = new ArrayList<>();
    for (int extra = tree; extra < flows.size(); extra++) {
      double[] loop = new double[flows.size()];
      loop[extra] = 1;
      // Node i is reached by flow i from an earlier node: empty the nodes from the last to the
      // first.
      for (int i = tree - 1; i >= 0; i--) {
        double in = 0;
        for (int j = 0; j < flows.size(); j++) {
          in += a[i][j] * loop[j];
        }
        loop[i] -= in / a[i][i];
      }
      loops.add(loop);
    }
    return loops.toArray(double[][]::new);
  }

  /**
   * Flow i, of the first ones, joins node i to an earlier node or the outside; the rest join any.
   */
  private static Known known(Random random, double unmeasured) {
    int k = 1 + random.nextInt(12);
    int extra = 1 + random.nextInt(2 * k);
    List<String> nodes = new ArrayList<>();
    List<String[]> ends = new ArrayList<>();
    for (int i = 0; i < k; i++) {
      nodes.add("n" + i);
      String other = i == 0 ? null : nodes.get(random.nextInt(i));
      ends.add(new String[] {other, nodes.get(i)});
    }
    for (int e = 0; e < extra; e++) {
      int from = random.nextInt(k + 1);
      int to = (from + 1 + random.nextInt(k)) % (k + 1);
      ends.add(new String[] {from == k ? null : nodes.get(from), to == k ? null : nodes.get(to)});
    }
    double[] truth = truth(nodes, ends, random);
    List<Flow> flows = new ArrayList<>();
    for (int j = 0; j < ends.size(); j++) {
      double u = Math.pow(10, random.nextDouble() * 2 - 1);
      boolean known = j == 0 || random.nextDouble() >= unmeasured;
      flows.add(
          new Flow(
              "f" + j,
              ends.get(j)[0],
              ends.get(j)[1],
              known ? truth[j] + u * random.nextGaussian() : null,
              known ? u * u : null));
    }
    return new Known(new FlowNetwork(nodes, flows), truth);
  }

  private static double[] truth(List<String> nodes, List<String[]> ends, Random random) {
    List<Flow> bare = new ArrayList<>();
    ends.forEach(end -> bare.add(new Flow("f" + bare.size(), end[0], end[1], 1.0, 1.0)));
    double[] truth = new double[ends.size()];
    for (double[] loop : loops(new FlowNetwork(nodes, bare))) {
      double times = 100 * random.nextDouble();
      for (int j = 0; j < truth.length; j++) {
        truth[j] += times * loop[j];
      }
    }
    return truth;
  }

  /** In less out of reconciled values; null if one of them is not known. */
  private static Double left(String node, List<ReconciledFlow> flows) {
    double left = 0;
    for (ReconciledFlow flow : flows) {
      boolean in = node.equals(flow.flow().to());
      if (in || node.equals(flow.flow().from())) {
        if (flow.reconciled() == null) {
          return null;
        }
        left += in ? flow.reconciled() : -flow.reconciled();
      }
    }
    return left;
  }
}
