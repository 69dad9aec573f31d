package org.barreltally.lots.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.barreltally.lots.Parent;
import org.barreltally.lots.rest.TraceView;
import org.junit.jupiter.api.Test;

/** The drawing of a family: who stands where, what stands on the lines, what is left out. */
class FamilyTreeTest {

  /** C of A and B, where B is of A too: A is two steps away by the longer way. */
  @Test
  void an_ancestor_stands_as_far_left_as_its_longest_way() {
    FamilyTree tree =
        FamilyTree.of(
            "C",
            List.of(
                new Parent("C", "A", 250, 0.25),
                new Parent("C", "B", 750, 0.75),
                new Parent("B", "A", 100, 1)),
            List.of(new Parent("D", "C", 10, 0.1)),
            shares(Map.of("A", 1.0, "B", 0.75), Map.of("D", 0.1)));
    Map<String, FamilyTree.Node> at = byLot(tree);
    assertTrue(at.get("A").x() < at.get("B").x());
    assertTrue(at.get("B").x() < at.get("C").x());
    assertTrue(at.get("C").x() < at.get("D").x());
    assertEquals(at.get("B").x() - at.get("A").x(), at.get("C").x() - at.get("B").x());
    assertTrue(at.get("C").own());
    assertEquals(
        List.of(0.25, 0.75, 1.0, 0.1), tree.lines().stream().map(FamilyTree.Line::share).toList());
    assertEquals(0, tree.left());
    assertFalse(tree.isAlone());
  }

  @Test
  void a_line_runs_from_parent_to_child_and_an_unwashed_vessel_is_a_film() {
    FamilyTree tree =
        FamilyTree.of(
            "C",
            List.of(new Parent("C", "A", 0, 0)),
            List.of(),
            shares(Map.of("A", 0.0), Map.of()));
    FamilyTree.Line line = tree.lines().get(0);
    FamilyTree.Node parent = byLot(tree).get("A");
    FamilyTree.Node child = byLot(tree).get("C");
    assertTrue(line.film());
    assertEquals(parent.x() + tree.boxWidth(), line.x1());
    assertEquals(child.x(), line.x2());
    assertEquals(child.x() + tree.boxWidth() + 4, tree.width());
  }

  @Test
  void a_lot_without_family_is_alone() {
    FamilyTree tree = FamilyTree.of("C", List.of(), List.of(), shares(Map.of(), Map.of()));
    assertTrue(tree.isAlone());
    assertEquals(1, tree.nodes().size());
  }

  /** Thirty barrels in one run: twelve are drawn, the greatest shares first, eighteen counted. */
  @Test
  void what_does_not_fit_is_counted() {
    List<Parent> above = new ArrayList<>();
    Map<String, Double> shares =
        java.util.stream.IntStream.range(0, 30)
            .boxed()
            .collect(Collectors.toMap(n -> "B%02d".formatted(n), n -> n / 435.0));
    shares.forEach((lot, share) -> above.add(new Parent("C", lot, 1, share)));
    FamilyTree tree = FamilyTree.of("C", above, List.of(), shares(shares, Map.of()));
    assertEquals(13, tree.nodes().size());
    assertEquals(12, tree.lines().size());
    assertEquals(18, tree.left());
    assertEquals("B29", tree.nodes().get(0).lot());
  }

  /** Heels over forty years: the way is doubled at every step, the drawing is not. */
  @Test
  void many_ways_between_the_same_lots_are_walked_once() {
    List<Parent> above = new ArrayList<>();
    for (int n = 1; n <= 40; n++) {
      above.add(new Parent("L" + (n - 1), "L" + n, 1, 0.5));
      above.add(new Parent("L" + (n - 1), "M" + n, 1, 0.5));
      above.add(new Parent("M" + n, "L" + n, 1, 1));
    }
    FamilyTree tree = FamilyTree.of("L0", above, List.of(), shares(Map.of(), Map.of()));
    assertEquals(7, tree.nodes().size());
    assertEquals(74, tree.left());
  }

  private static Map<String, FamilyTree.Node> byLot(FamilyTree tree) {
    return tree.nodes().stream()
        .collect(Collectors.toMap(FamilyTree.Node::lot, Function.identity()));
  }

  private static TraceView shares(Map<String, Double> ancestors, Map<String, Double> descendants) {
    return new TraceView(
        "C", List.of(), List.of(), list(ancestors), list(descendants), List.of(), List.of(), 0, 0);
  }

  private static List<TraceView.Share> list(Map<String, Double> shares) {
    return shares.entrySet().stream()
        .map(one -> new TraceView.Share(one.getKey(), BigDecimal.valueOf(one.getValue())))
        .toList();
  }
}
