package org.barreltally.bulk;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.BarrelState;
import org.barreltally.barrels.Barrels;
import org.barreltally.barrels.Drained;
import org.barreltally.barrels.Draw;
import org.barreltally.barrels.Drawing;
import org.barreltally.barrels.Readings;
import org.barreltally.bulk.internal.BulkBook;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.lots.LotHeld;
import org.barreltally.measure.Grams;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;

/**
 * Sells barrels whole. Our weight leaves to the buyers; what the book had more or less goes to the
 * unexplained, so that nothing is left in the barrel.
 */
@ApplicationScoped
public class BulkSelling {

  private final Barrels barrels;
  private final Drawing drawing;
  private final Readings readings;
  private final Ledger ledger;
  private final BulkBook book;
  private final Days days;
  private final Ids ids;

  BulkSelling(
      Barrels barrels,
      Drawing drawing,
      Readings readings,
      Ledger ledger,
      BulkBook book,
      Days days,
      Ids ids) {
    this.barrels = barrels;
    this.drawing = drawing;
    this.readings = readings;
    this.ledger = ledger;
    this.book = book;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Sells a barrel.
   *
   * @param versions of the barrel as its seller read it; null when the seller does not mind
   * @throws org.barreltally.barrels.UnknownVessel if no vessel of that tag was ever filled
   * @throws org.barreltally.barrels.ChangedSince if it changed since
   * @throws LotHeld if its lot is held
   * @throws Drained if nothing is in it
   * @throws PriceMissing if a grade has no price
   */
  @Transactional
  public BulkSale sell(String tag, Set<String> versions, SellBulk said) {
    LocalDate on = days.happened(said.on(), "on");
    BulkRules.check(said);
    PricesByGrade prices = PricesByGrade.of(said);
    barrels.unchanged(tag, versions);
    Barrel barrel = sellable(tag, on);
    Uncertain weighed = grams(said.ours(), "ours", barrel);
    grams(said.theirs(), "theirs", barrel);
    grams(said.agreed(), "agreed", barrel);
    Figures ours = figures(said.ours(), prices, "our");
    Figures agreed = figures(said.agreed(), prices, "agreed");
    BulkSale.BookDifference difference = difference(barrel, weighed);
    BulkSale sale =
        new BulkSale(
            ids.next(),
            on,
            tag,
            barrel.lot().code(),
            book.buyer(said.buyer()),
            post(barrel, on, Grams.rounded(weighed.value())),
            syrup(barrel),
            ours,
            figures(said.theirs(), prices, "their"),
            agreed,
            agreed.amount(),
            Variance.between(ours, agreed),
            difference,
            cautions(barrel, said, difference));
    book.keep(sale);
    return sale;
  }

  private Barrel sellable(String tag, LocalDate on) {
    Barrel barrel = barrels.at(tag);
    if (barrel.lot().held()) {
      throw new LotHeld(barrel.lot().code(), null);
    }
    if (barrel.state() == BarrelState.DRAINED) {
      throw new Drained(tag, null);
    }
    if (on.isBefore(barrel.filledOn())) {
      throw new InvalidField(
          "on",
          "%s was filled on %s; it cannot be sold on %s.".formatted(tag, barrel.filledOn(), on));
    }
    return barrel;
  }

  private Uncertain grams(SellBulk.Side side, String name, Barrel barrel) {
    try {
      return readings.drawn(side.weight(), barrel.lot().brix().value(), "weight");
    } catch (Refusal refusal) {
      throw refusal.under(name);
    }
  }

  private static Figures figures(SellBulk.Side side, PricesByGrade prices, String name) {
    return Figures.of(side.weight(), side.grade(), prices.of(side.grade(), name));
  }

  private UUID post(Barrel barrel, LocalDate on, long grams) {
    long left = Math.round(barrel.grams().value()) - grams;
    UUID movement =
        ledger.post(
            Movement.of(MovementKind.BULK_SALE, days.during(on))
                .move(barrel.place(), PlaceCode.BULK_BUYER, barrel.item(), grams)
                .move(barrel.place(), PlaceCode.UNEXPLAINED, barrel.item(), left)
                .build());
    drawing.taken(List.of(new Draw(barrel, barrel.grams(), true)));
    return movement;
  }

  private static BulkSale.BookDifference difference(Barrel barrel, Uncertain weighed) {
    double grams = weighed.value() - barrel.grams().value();
    Quantity pounds = Quantity.rounded(barrel.syrup().weightInAir(grams), Unit.G, 3).to(Unit.LB, 2);
    return new BulkSale.BookDifference(pounds, weighed.differsFrom(barrel.grams()));
  }

  private static BulkSale.Syrup syrup(Barrel barrel) {
    return new BulkSale.Syrup(
        barrel.seasons(),
        BigDecimal.valueOf(barrel.lot().brix().value()).setScale(2, RoundingMode.HALF_UP),
        barrel.lot().transmittance(),
        barrel.lot().taste(),
        barrel.material());
  }

  private static List<String> cautions(
      Barrel barrel, SellBulk said, BulkSale.BookDifference difference) {
    List<String> cautions = new ArrayList<>();
    barrel.material().caution().ifPresent(cautions::add);
    if (difference.beyondUncertainty()) {
      cautions.add(
          "Our weight and the book differ by %s, more than both may be off. Look for another draw or"
                  .formatted(difference.weight())
              + " a slip of the pen.");
    }
    if (barrel.lot().grade() != said.ours().grade()) {
      cautions.add(
          "The book has lot %s as %s, not as %s. Grade it again, so that book and ticket agree."
              .formatted(
                  barrel.lot().code(),
                  barrel.lot().grade() == null ? "not graded" : barrel.lot().grade().code(),
                  said.ours().grade().code()));
    }
    return cautions;
  }

  /**
   * @throws UnknownBulkSale if there is none of that id
   */
  @Transactional
  public SoldBulk at(UUID id) {
    return book.find(id).orElseThrow(() -> new UnknownBulkSale(id));
  }

  /** Bulk sales in the order they were recorded, after one of them (or null), at most so many. */
  @Transactional
  public List<SoldBulk> list(UUID after, int limit) {
    return book.list(after, limit);
  }
}
