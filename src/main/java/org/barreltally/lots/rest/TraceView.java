package org.barreltally.lots.rest;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import org.barreltally.lots.Parent;
import org.barreltally.lots.Trace;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Unit;

/**
 * A trace as the interface shows it. Shares are fractions (0 to 1) of a lot's syrup; weights are as
 * a scale reads in air.
 *
 * @param ancestors the share of each in this lot
 * @param descendants the share of this lot in each
 * @param accounted jars of this lot and its descendants whose whereabouts the book knows
 * @param total jars made of this lot and its descendants
 */
public record TraceView(
    String lot,
    List<ParentShare> parents,
    List<ChildShare> children,
    List<Share> ancestors,
    List<Share> descendants,
    List<Jars> whereabouts,
    List<BulkSyrup> syrup,
    long accounted,
    long total) {

  private static final int SHARE_DECIMALS = 6;
  private static final double G_PER_KG = 1000;

  public record ParentShare(String lot, Quantity weight, BigDecimal share, List<Integer> seasons) {}

  public record ChildShare(String lot, Quantity weight, BigDecimal share) {}

  public record Share(String lot, BigDecimal share) {}

  /**
   * Jars at a place or with a recipient. {@code exact} if they surely are there; {@code possible}
   * if they were sold or carried without lot and may be there: the same jar can then stand in
   * several lines.
   */
  public record Jars(
      String lot, String place, String recipient, String container, long count, String certainty) {}

  /** Syrup in bulk that stands at a place, or went to an account of that name. */
  public record BulkSyrup(String lot, String place, Quantity mass) {}

  static TraceView of(Trace trace) {
    return new TraceView(
        trace.lot().code(),
        trace.parents().stream().map(p -> parent(p, trace)).toList(),
        trace.children().stream()
            .map(
                c ->
                    new ChildShare(
                        c.child(),
                        pounds(c.grams(), trace.lot().brix().value()),
                        rounded(c.share())))
            .toList(),
        shares(trace.ancestors()),
        shares(trace.descendants()),
        JarRows.of(trace),
        trace.bulk().stream()
            .filter(b -> b.grams() > 0 && !"conversion".equals(b.placeKind()))
            .map(
                b ->
                    new BulkSyrup(
                        b.lot(), b.place(), Quantity.rounded(b.grams() / G_PER_KG, Unit.KG, 3)))
            .toList(),
        trace.jarsAccounted(),
        trace.jarsMade());
  }

  private static ParentShare parent(Parent parent, Trace trace) {
    return new ParentShare(
        parent.parent(),
        pounds(parent.grams(), trace.brix().get(parent.parent())),
        rounded(parent.share()),
        trace.seasons().get(parent.parent()));
  }

  private static List<Share> shares(Map<String, Double> shares) {
    return shares.entrySet().stream()
        .map(e -> new Share(e.getKey(), rounded(e.getValue())))
        .toList();
  }

  private static BigDecimal rounded(double share) {
    return BigDecimal.valueOf(share).setScale(SHARE_DECIMALS, RoundingMode.HALF_UP);
  }

  private static Quantity pounds(long grams, double brix) {
    return Quantity.rounded(new Syrup(brix).weightInAir(grams), Unit.G, 3).to(Unit.LB, 2);
  }
}
