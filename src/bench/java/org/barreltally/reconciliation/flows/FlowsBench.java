package org.barreltally.reconciliation.flows;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * How long networks take without database and web: nodes joined at random, half as many as flows, one
 * flow in ten not measured, three measurements wrong. Run by {@code flows.sh}.
 */
public final class FlowsBench {

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private FlowsBench() {}

  public static void main(String[] arguments) {
    for (int size : new int[] {200, 1000}) {
      FlowNetwork network = network(size, new Random(size));
      double[] ms = new double[size == 200 ? 100 : 10];
      Reconciled last = null;
      double cpu = 0;
      for (int n = 0; n < ms.length; n++) {
        long begin = System.nanoTime();
        long cpuBegin = THREADS.getCurrentThreadCpuTime();
        last = Reconciler.reconcile(network);
        ms[n] = (System.nanoTime() - begin) / 1e6;
        cpu = (THREADS.getCurrentThreadCpuTime() - cpuBegin) / 1e6;
      }
      double first = ms[0];
      double[] warm = Arrays.copyOfRange(ms, ms.length / 2, ms.length);
      Arrays.sort(warm);
      System.out.printf(
          "%d flows, %d nodes, %d unmeasured, %d degrees of freedom, %d suspects:"
              + " first %.1f ms, then median %.1f ms, slowest %.1f ms; %.1f ms of processor the last time%n",
          size,
          network.nodes().size(),
          network.flows().stream().filter(flow -> !flow.isMeasured()).count(),
          last.globalTest().degreesOfFreedom(),
          last.suspects().size(),
          first,
          warm[warm.length / 2],
          warm[warm.length - 1],
          cpu);
    }
  }

  /** What truly flows is a sum of loops over the outside, so that every node balances. */
  private static FlowNetwork network(int size, Random random) {
    int count = size / 2;
    List<String> nodes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      nodes.add("n" + i);
    }
    int[][] ends = new int[size][];
    for (int j = 0; j < size; j++) {
      int to = j < count ? j : random.nextInt(count + 1);
      int from = j < count ? (j == 0 ? count : random.nextInt(j)) : random.nextInt(count + 1);
      ends[j] = new int[] {from, from == to ? (to + 1) % (count + 1) : to};
    }
    double[] truth = new double[size];
    for (int extra = count; extra < size; extra++) {
      double amount = 10 + 90 * random.nextDouble();
      truth[extra] += amount;
      carry(truth, ends, ends[extra][0], count, amount);
      carry(truth, ends, ends[extra][1], count, -amount);
    }
    List<Flow> flows = new ArrayList<>();
    for (int j = 0; j < size; j++) {
      double wrong = j % (size / 3) == 7 ? 40 : 0;
      String from = ends[j][0] == count ? null : nodes.get(ends[j][0]);
      String to = ends[j][1] == count ? null : nodes.get(ends[j][1]);
      flows.add(
          j % 10 == 9
              ? Flow.unmeasured("f" + j, from, to)
              : Flow.measured("f" + j, from, to, truth[j] + random.nextGaussian() + wrong, 1));
    }
    return new FlowNetwork(nodes, flows);
  }

  /** Flow j brings to node j, for each j below the count: carries an amount there from outside. */
  private static void carry(double[] truth, int[][] ends, int node, int outside, double amount) {
    int at = node;
    while (at != outside) {
      truth[at] += amount;
      at = ends[at][0];
    }
  }
}
