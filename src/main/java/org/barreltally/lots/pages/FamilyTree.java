package org.barreltally.lots.pages;

import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.barreltally.lots.Parent;
import org.barreltally.lots.rest.TraceView;

/**
 * A lot's family as a drawing: ancestors to the left, descendants to the right, one column for each
 * step of the longest way there, and a line with its share for every link. What does not fit is
 * counted, and stands in the lists beside the drawing.
 *
 * @param left how many lots beyond the drawing are ancestors or descendants
 */
@TemplateData
public record FamilyTree(List<Node> nodes, List<Line> lines, int width, int height, int left) {

  private static final int STEPS_MAX = 6;
  private static final int ROWS_MAX = 12;
  private static final int BOX_WIDTH = 150;
  private static final int BOX_HEIGHT = 46;
  private static final int COLUMN = 250;
  private static final int ROW = 64;
  private static final int EDGE = 4;

  /**
   * A lot.
   *
   * @param share of an ancestor in the lot, or of the lot in a descendant; null of the lot itself
   */
  @TemplateData
  public record Node(String lot, BigDecimal share, boolean own, int x, int y) {

    public int middle() {
      return x + BOX_WIDTH / 2;
    }
  }

  /**
   * A link, from parent to child.
   *
   * @param film whether only an unwashed vessel links the two
   */
  @TemplateData
  public record Line(
      String parent,
      String child,
      double share,
      boolean film,
      int x1,
      int y1,
      int x2,
      int y2,
      int textX,
      int textY) {}

  public int boxWidth() {
    return BOX_WIDTH;
  }

  public int boxHeight() {
    return BOX_HEIGHT;
  }

  /** Whether there is anything to draw beside the lot itself. */
  public boolean isAlone() {
    return lines.isEmpty();
  }

  static FamilyTree of(String lot, List<Parent> above, List<Parent> below, TraceView trace) {
    Map<String, BigDecimal> shares = new HashMap<>();
    trace.ancestors().forEach(share -> shares.put(share.lot(), share.share()));
    trace.descendants().forEach(share -> shares.put(share.lot(), share.share()));
    Map<String, Integer> steps = new HashMap<>();
    steps(lot, above, Parent::child, Parent::parent).forEach((code, n) -> steps.put(code, -n));
    steps.putAll(steps(lot, below, Parent::parent, Parent::child));
    return drawn(lot, steps, shares, above, below);
  }

  private static FamilyTree drawn(
      String lot,
      Map<String, Integer> steps,
      Map<String, BigDecimal> shares,
      List<Parent> above,
      List<Parent> below) {
    TreeMap<Integer, List<String>> columns = new TreeMap<>();
    steps.forEach(
        (code, step) -> {
          if (Math.abs(step) <= STEPS_MAX) {
            columns.computeIfAbsent(step, n -> new ArrayList<>()).add(code);
          }
        });
    Comparator<String> greatestShare =
        Comparator.comparing(
            (String code) -> shares.getOrDefault(code, BigDecimal.ONE), Comparator.reverseOrder());
    columns.replaceAll(
        (step, codes) ->
            codes.stream()
                .sorted(greatestShare.thenComparing(Comparator.naturalOrder()))
                .limit(ROWS_MAX)
                .toList());
    int rows = columns.values().stream().mapToInt(List::size).max().orElse(1);
    Map<String, Node> nodes = new LinkedHashMap<>();
    int first = columns.firstKey();
    columns.forEach(
        (step, codes) -> {
          int top = (rows - codes.size()) * ROW / 2 + EDGE;
          for (String code : codes) {
            nodes.put(
                code,
                new Node(
                    code, shares.get(code), code.equals(lot), (step - first) * COLUMN + EDGE, top));
            top += ROW;
          }
        });
    List<Line> lines = new ArrayList<>();
    above.forEach(link -> line(link, nodes, 0.3).ifPresent(lines::add));
    below.forEach(link -> line(link, nodes, 0.7).ifPresent(lines::add));
    return new FamilyTree(
        List.copyOf(nodes.values()),
        lines,
        (columns.lastKey() - first) * COLUMN + BOX_WIDTH + 2 * EDGE,
        (rows - 1) * ROW + BOX_HEIGHT + 2 * EDGE,
        steps.size() - nodes.size());
  }

  /**
   * @param at where on its line the share is written: where lines lie farthest apart
   */
  private static Optional<Line> line(Parent link, Map<String, Node> nodes, double at) {
    Node from = nodes.get(link.parent());
    Node to = nodes.get(link.child());
    if (from == null || to == null) {
      return Optional.empty();
    }
    int x1 = from.x() + BOX_WIDTH;
    int y1 = from.y() + BOX_HEIGHT / 2;
    int x2 = to.x();
    int y2 = to.y() + BOX_HEIGHT / 2;
    return Optional.of(
        new Line(
            link.parent(),
            link.child(),
            link.share(),
            link.grams() == 0,
            x1,
            y1,
            x2,
            y2,
            (int) Math.round(x1 + at * (x2 - x1)),
            (int) Math.round(y1 + at * (y2 - y1)) - 4));
  }

  /** The longest way to every lot, each visited once all ways to it are known. */
  private static Map<String, Integer> steps(
      String lot, List<Parent> links, Function<Parent, String> near, Function<Parent, String> far) {
    Map<String, List<String>> leaving = new HashMap<>();
    Map<String, Integer> waitingFor = new HashMap<>();
    for (Parent link : links) {
      leaving.computeIfAbsent(near.apply(link), code -> new ArrayList<>()).add(far.apply(link));
      waitingFor.merge(far.apply(link), 1, Integer::sum);
    }
    Map<String, Integer> steps = new LinkedHashMap<>();
    steps.put(lot, 0);
    Deque<String> ready = new ArrayDeque<>(List.of(lot));
    while (!ready.isEmpty()) {
      String from = ready.poll();
      for (String to : leaving.getOrDefault(from, List.of())) {
        steps.merge(to, steps.get(from) + 1, Math::max);
        if (waitingFor.merge(to, -1, Integer::sum) == 0) {
          ready.add(to);
        }
      }
    }
    return steps;
  }
}
