package org.barreltally.reconciliation.rest;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.reconciliation.flows.Flow;
import org.barreltally.reconciliation.flows.FlowNetwork;

/** A network of the caller's own as it is sent. */
public record NetworkSaid(List<String> nodes, List<FlowSaid> flows) {

  /**
   * @param from left out where it comes from outside
   * @param to left out where it goes outside
   * @param measured in any unit, the same for all; left out where nobody measured
   * @param variance the square of the standard uncertainty of what was measured
   */
  public record FlowSaid(
      String name, String from, String to, BigDecimal measured, BigDecimal variance) {

    Flow asFlow() {
      return new Flow(name, from, to, number(measured), number(variance));
    }

    private static Double number(BigDecimal decimal) {
      return decimal == null ? null : (Double) decimal.doubleValue();
    }
  }

  FlowNetwork asNetwork() {
    List<Flow> read = null;
    if (flows != null) {
      read = new ArrayList<>();
      for (FlowSaid flow : flows) {
        read.add(flow == null ? null : flow.asFlow());
      }
    }
    return new FlowNetwork(nodes, read).inOnePiece();
  }
}
