package org.barreltally.recall.rest;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.barreltally.lots.JarsTold;
import org.barreltally.lots.NamedHolders.Holding;
import org.barreltally.lots.Whereabouts;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.recall.Findings;
import org.barreltally.recall.Holder;
import org.barreltally.recall.Recall;

/**
 * A recall with what is left of it now. Shares are fractions (0 to 1) of a lot's syrup.
 *
 * @param state {@code open, ended, rehearsal}
 * @param madeOf what went into the recalled lot: the share of each ancestor in it
 * @param touched the recalled lot and everything made of it, with the share that is of it
 * @param onHand jars at own places, at home and out
 * @param gone jars that nobody has any more
 * @param holders who has the rest, by name
 * @param publicRemainder what left to people whose names are not known
 * @param accounted jars whose whereabouts the book knows, of {@code total} made
 */
public record RecallView(
    UUID id,
    String lot,
    String barrel,
    String reason,
    boolean rehearsal,
    String state,
    Instant startedAt,
    Recall.End ended,
    List<Share> madeOf,
    List<Touched> touched,
    List<Jars> onHand,
    List<Syrup> syrupOnHand,
    List<Jars> gone,
    List<HolderView> holders,
    Remainder publicRemainder,
    long accounted,
    long total,
    List<String> cautions) {

  private static final int SHARE_DECIMALS = 6;
  private static final double G_PER_KG = 1000;

  private static final List<String> CAUTIONS =
      List.of(
          "Your food inspector and your state agency decide what a recall takes and whom to tell.",
          "A jar that bulges or leaks can burst: do not open it; wear gloves and cover your eyes.");

  public record Share(String lot, BigDecimal share) {}

  public record Touched(String lot, BigDecimal share, boolean held) {}

  /**
   * @param certainty {@code exact}, or {@code possible} where nobody wrote the lot down
   */
  public record Jars(String place, String lot, String container, long count, String certainty) {}

  public record Syrup(String place, String lot, Quantity mass) {}

  public record HolderView(
      int number,
      String name,
      List<String> address,
      String contact,
      Collection<String> channels,
      String certainty,
      List<Held> lines) {}

  /**
   * What a holder has: jars ({@code container} and {@code count}) or syrup in bulk ({@code mass}).
   */
  public record Held(String lot, String container, Long count, Quantity mass, String certainty) {}

  /**
   * What people without a name have.
   *
   * @param jars surely of these lots
   * @param possibleJars so many more, sold where nobody wrote the lot down
   */
  public record Remainder(long jars, long possibleJars, List<Line> lines) {

    public record Line(
        String account, String container, Long count, Long possible, Quantity mass) {}
  }

  static RecallView of(Findings found) {
    Recall recall = found.recall();
    return new RecallView(
        recall.id(),
        recall.lot(),
        recall.barrel(),
        recall.reason(),
        recall.rehearsal(),
        recall.state(),
        recall.startedAt(),
        recall.end(),
        found.madeOf().entrySet().stream()
            .map(e -> new Share(e.getKey(), rounded(e.getValue())))
            .toList(),
        recall.touched().stream()
            .map(t -> new Touched(t.lot(), rounded(t.share()), found.held().get(t.lot())))
            .toList(),
        found.onHand().stream().map(RecallView::jars).toList(),
        found.syrup().stream().map(RecallView::syrup).toList(),
        found.gone().stream().map(RecallView::jars).toList(),
        found.holders().stream().map(RecallView::holder).toList(),
        remainder(found.unnamed()),
        found.accounted(),
        found.total(),
        CAUTIONS);
  }

  private static Jars jars(JarsTold told) {
    return new Jars(
        told.place(), told.lot(), told.container(), told.count(), certainty(told.exact()));
  }

  private static Syrup syrup(Whereabouts.Bulk bulk) {
    return new Syrup(bulk.place(), bulk.lot(), mass(bulk.grams()));
  }

  private static HolderView holder(Holder holder) {
    return new HolderView(
        holder.number(),
        holder.name(),
        holder.address(),
        holder.contact(),
        holder.channels(),
        certainty(holder.exact()),
        holder.holdings().stream().map(RecallView::held).toList());
  }

  private static Held held(Holding holding) {
    boolean jars = holding.container() != null;
    return new Held(
        holding.lot(),
        holding.container(),
        jars ? holding.amount() : null,
        jars ? null : mass(holding.amount()),
        certainty(holding.exact()));
  }

  private static Remainder remainder(List<Findings.Unnamed> unnamed) {
    return new Remainder(
        unnamed.stream()
            .filter(rest -> rest.container() != null)
            .mapToLong(Findings.Unnamed::surely)
            .sum(),
        unnamed.stream().mapToLong(Findings.Unnamed::possibly).sum(),
        unnamed.stream()
            .map(
                rest ->
                    rest.container() == null
                        ? new Remainder.Line(rest.account(), null, null, null, mass(rest.surely()))
                        : new Remainder.Line(
                            rest.account(), rest.container(), rest.surely(), rest.possibly(), null))
            .toList());
  }

  private static String certainty(boolean exact) {
    return exact ? "exact" : "possible";
  }

  private static Quantity mass(long grams) {
    return Quantity.rounded(grams / G_PER_KG, Unit.KG, 3);
  }

  private static BigDecimal rounded(double share) {
    return BigDecimal.valueOf(share).setScale(SHARE_DECIMALS, RoundingMode.HALF_UP);
  }
}
