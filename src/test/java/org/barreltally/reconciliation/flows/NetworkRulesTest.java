package org.barreltally.reconciliation.flows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.barreltally.refusal.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is no network, each refused by its name and field. */
class NetworkRulesTest {

  private static final List<String> NODES = List.of("room", "canner");
  private static final Flow IN = Flow.measured("in", null, "room", 10, 1);
  private static final Flow ON = Flow.unmeasured("on", "room", "canner");

  static Stream<Arguments> refused() {
    return Stream.of(
        of("invalid-field", "nodes", List.of(), List.of(IN)),
        of("invalid-field", "nodes", null, List.of(IN)),
        of("invalid-field", "flows", NODES, List.of()),
        of("invalid-field", "nodes[1]", List.of("room", " "), List.of(IN)),
        of("invalid-field", "nodes[0]", List.of("x".repeat(121)), List.of(IN)),
        of("network-too-large", "nodes", many(), List.of(IN)),
        of("network-too-large", "flows", NODES, Collections.nCopies(1001, IN)),
        of("named-twice", "nodes[1]", List.of("room", "room"), List.of(IN)),
        of("named-twice", "flows[1].name", NODES, List.of(IN, IN)),
        of("invalid-field", "flows[1].name", NODES, nullAfter(IN)),
        of("unknown-node", "flows[0].from", NODES, List.of(measured("attic", "room", 1.0, 1.0))),
        of("unknown-node", "flows[0].to", NODES, List.of(measured("room", "attic", 1.0, 1.0))),
        of("flow-to-itself", "flows[0].to", NODES, List.of(measured("room", "room", 1.0, 1.0))),
        of("invalid-field", "flows[0].from", NODES, List.of(measured(null, null, 1.0, 1.0))),
        of("variance-unusable", "flows[0].variance", NODES, List.of(measured(0.0))),
        of("variance-unusable", "flows[0].variance", NODES, List.of(measured(-1.0))),
        of("variance-unusable", "flows[0].variance", NODES, List.of(measured((Double) null))),
        of("variance-unusable", "flows[0].variance", NODES, List.of(measured(Double.NaN))),
        of(
            "variance-unusable",
            "flows[0].variance",
            NODES,
            List.of(measured(Double.POSITIVE_INFINITY))),
        of(
            "invalid-field",
            "flows[0].measured",
            NODES,
            List.of(measured("room", null, Double.NaN, 1.0))),
        of("invalid-field", "flows[0].measured", NODES, List.of(measured("room", null, 1e13, 1.0))),
        of("invalid-field", "flows[0].measured", NODES, List.of(measured("room", null, null, 1.0))),
        of("nothing-measured", "flows", NODES, List.of(ON)));
  }

  @ParameterizedTest
  @MethodSource("refused")
  void it_is_refused(String code, String field, List<String> nodes, List<Flow> flows) {
    Refusal refusal = assertThrows(Refusal.class, () -> new FlowNetwork(nodes, flows));
    assertEquals(code, refusal.code());
    assertEquals(field, refusal.errors().get(0).field());
  }

  @Test
  void parts_that_no_flow_joins_are_named() {
    FlowNetwork apart = new FlowNetwork(NODES, List.of(IN, measured("canner", null, 1.0, 1.0)));
    Refusal refusal = assertThrows(NetworkInParts.class, apart::inOnePiece);
    assertTrue(refusal.detail().contains("canner to room"), refusal.detail());
    new FlowNetwork(NODES, List.of(IN, ON)).inOnePiece();
  }

  private static Flow measured(Double variance) {
    return measured("room", "canner", 1.0, variance);
  }

  private static Flow measured(String from, String to, Double value, Double variance) {
    return new Flow("f", from, to, value, variance);
  }

  private static List<Flow> nullAfter(Flow flow) {
    List<Flow> flows = new ArrayList<>(List.of(flow));
    flows.add(null);
    return flows;
  }

  private static List<String> many() {
    return IntStream.range(0, 1001).mapToObj(i -> "n" + i).toList();
  }

  private static Arguments of(String code, String field, List<String> nodes, List<Flow> flows) {
    return Arguments.of(code, field, nodes, flows);
  }
}
