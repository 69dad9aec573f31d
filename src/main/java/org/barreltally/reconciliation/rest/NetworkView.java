package org.barreltally.reconciliation.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.barreltally.reconciliation.flows.GlobalTest;
import org.barreltally.reconciliation.flows.Reconciled;
import org.barreltally.reconciliation.flows.ReconciledFlow;
import org.barreltally.reconciliation.flows.ReconciledNode;
import org.barreltally.reconciliation.flows.Suspect;

/**
 * A network reconciled, in the unit in which it was sent.
 *
 * @param criticalStandardized what one standardized adjustment exceeds once in twenty by chance
 * @param suspects the likeliest first
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record NetworkView(
    TestView globalTest,
    BigDecimal criticalStandardized,
    List<SuspectView> suspects,
    List<FlowView> flows,
    List<NodeView> nodes) {

  private static final MathContext DIGITS = new MathContext(10);

  /** Whether all measurements together agree; critical at 5 %. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record TestView(
      BigDecimal chiSquared, int degreesOfFreedom, BigDecimal critical, boolean passed) {

    static TestView of(GlobalTest test) {
      return new TestView(
          number(test.chiSquared()),
          test.degreesOfFreedom(),
          number(test.critical()),
          test.passed());
    }
  }

  /**
   * @param readings ways to read it that no measurement tells apart
   * @param restAfter how the rest agrees when it is set aside
   */
  public record SuspectView(
      BigDecimal standardized, List<ReadingView> readings, TestView restAfter) {

    static SuspectView of(Suspect suspect) {
      return new SuspectView(
          number(suspect.standardized()),
          suspect.readings().stream().map(ReadingView::of).toList(),
          TestView.of(suspect.after()));
    }
  }

  /**
   * @param error of a flow: measured too high by it; of a node: so much more came in than left
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record ReadingView(
      String flow, String node, BigDecimal error, BigDecimal standardUncertainty) {

    static ReadingView of(Suspect.Reading reading) {
      return new ReadingView(
          reading.flow(), reading.node(), number(reading.error()), number(reading.u()));
    }
  }

  /**
   * @param reconciled left out where it follows from nothing
   * @param checked how much of the measurement's variance others check, 0 to 1
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record FlowView(
      String name,
      String from,
      String to,
      BigDecimal measured,
      BigDecimal reconciled,
      BigDecimal standardUncertainty,
      BigDecimal adjustment,
      BigDecimal standardized,
      BigDecimal checked,
      boolean suspect) {

    static FlowView of(ReconciledFlow flow) {
      return new FlowView(
          flow.flow().name(),
          flow.flow().from(),
          flow.flow().to(),
          number(flow.flow().measured()),
          number(flow.reconciled()),
          number(flow.u()),
          number(flow.adjustment()),
          number(flow.standardized()),
          number(flow.checked()),
          flow.suspect());
    }
  }

  /** What was measured in less what was measured out; left out where not all was. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record NodeView(
      String name, BigDecimal imbalance, BigDecimal standardUncertainty, BigDecimal standardized) {

    static NodeView of(ReconciledNode node) {
      return new NodeView(
          node.name(), number(node.imbalance()), number(node.u()), number(node.standardized()));
    }
  }

  static NetworkView of(Reconciled found) {
    return new NetworkView(
        TestView.of(found.globalTest()),
        number(found.critical()),
        found.suspects().stream().map(SuspectView::of).toList(),
        found.flows().stream().map(FlowView::of).toList(),
        found.nodes().stream().map(NodeView::of).toList());
  }

  static BigDecimal number(Double value) {
    if (value == null) {
      return null;
    }
    BigDecimal rounded = BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
