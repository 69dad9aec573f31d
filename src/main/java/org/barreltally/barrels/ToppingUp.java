package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.barrels.internal.ReadingLog;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.lots.Lot;
import org.barreltally.lots.LotNumbers;
import org.barreltally.lots.Lots;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Grams;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Taste;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;

/**
 * Tops a barrel up with fresh syrup. The old lot ends; what was in it and what was added become a
 * blend lot. The record asks whether the whole was heated again.
 */
@ApplicationScoped
public class ToppingUp {

  // Syrup boils at about 219 °F; nothing in a barrel was hotter.
  private static final double MOST_CELSIUS = 105;
  private static final int LONGEST_NAME = 80;

  /**
   * What is said of a top-up.
   *
   * @param season crop year of the added syrup; null for that of the day
   * @param weighing of the topped-up barrel; its tare may be null
   * @param density of the mixed whole
   * @param transmittance and {@code taste} of the whole; null until known, and it is held until
   *     then
   */
  public record TopUp(
      LocalDate on,
      Integer season,
      Weighing weighing,
      Density density,
      Double transmittance,
      Taste taste,
      Reheat reheat) {}

  /** That the whole was heated again: to what temperature, read by whom. */
  public record Reheat(Quantity temperature, String by) {}

  private final Vessels vessels;
  private final Readings readings;
  private final ReadingLog log;
  private final Lots lots;
  private final LotNumbers numbers;
  private final FirstGrading grading;
  private final Items items;
  private final Ledger ledger;
  private final Pouring pouring;
  private final Days days;
  private final Ids ids;
  private final Barrels barrels;

  public ToppingUp(
      Vessels vessels,
      Readings readings,
      ReadingLog log,
      Lots lots,
      LotNumbers numbers,
      FirstGrading grading,
      Items items,
      Ledger ledger,
      Pouring pouring,
      Days days,
      Ids ids,
      Barrels barrels) {
    this.vessels = vessels;
    this.readings = readings;
    this.log = log;
    this.lots = lots;
    this.numbers = numbers;
    this.grading = grading;
    this.items = items;
    this.ledger = ledger;
    this.pouring = pouring;
    this.days = days;
    this.ids = ids;
    this.barrels = barrels;
  }

  /**
   * @throws ReheatRecordMissing if nobody says that it was heated again
   * @throws AddedSyrupImplausible if weights and density do not come to syrup
   */
  @Transactional
  public Barrel topUp(String tag, TopUp said) {
    LocalDate on = days.happened(said.on(), "on");
    Uncertain reheated = reheated(said.reheat());
    if (said.density() == null) {
      throw new InvalidField("density", "Read the density of the mixed barrel.");
    }
    Barrel into = vessels.filled(tag, on);
    Uncertain brix = Readings.under("density", () -> readings.trueBrix(said.density()));
    Weighing weighing = Reweighing.withTare(into, said.weighing());
    Uncertain whole = Readings.under("weighing", () -> readings.weighed(weighing, brix));
    Brim.check(tag, vessels.capacityML(tag), whole, brix.value(), "weighing.gross");
    int season = Season.checked(said.season() == null ? on.getYear() : said.season(), on);

    Pouring.Portion added = addition(into, whole, brix, season, on);
    Lot blend = pouring.pour(into, added, on, brix, whole.u());
    ReadingLog.Of of = new ReadingLog.Of(into.filling(), blend.code(), on);
    log.reheat(of, said.reheat().temperature(), said.reheat().by(), reheated);
    log.density(of, said.density(), brix);
    log.weighing(of, weighing, whole);
    grading.grade(blend.code(), on, said.transmittance(), said.taste());
    return barrels.at(tag);
  }

  /** The fresh syrup as a lot of its own; its Brix follows from the sugar of the whole. */
  private Pouring.Portion addition(
      Barrel into, Uncertain whole, Uncertain brix, int season, LocalDate on) {
    long added = Grams.rounded(whole.value()) - Math.round(into.grams().value());
    if (added <= 0) {
      throw AddedSyrupImplausible.nothingAdded();
    }
    Uncertain addedBrix = AddedBrix.of(into.grams(), into.lot().brix(), whole, brix);
    String code = numbers.nextBulk(season);
    Lot lot = lots.open(code, Lot.Kind.BULK, on, List.of(season), addedBrix);
    Item syrup = Item.syrup(ids.next(), code);
    items.add(List.of(syrup));
    ledger.post(
        Movement.of(MovementKind.FILLING, days.during(on))
            .move(PlaceCode.BOILED, into.place(), syrup.id(), added)
            .build());
    return new Pouring.Portion(lot, syrup, added);
  }

  private Uncertain reheated(Reheat reheat) {
    if (reheat == null || reheat.temperature() == null) {
      throw new ReheatRecordMissing();
    }
    Readings.under(
        "reheat",
        () -> Readings.required(reheat.temperature(), "temperature", Dimension.TEMPERATURE));
    double celsius = reheat.temperature().doubleIn(Unit.DEGC);
    if (celsius < 0 || celsius > MOST_CELSIUS) {
      throw new InvalidField(
          "reheat.temperature",
          "Syrup is heated to between 32 and 221 °F, not to " + reheat.temperature() + ".");
    }
    if (reheat.by() == null || reheat.by().isBlank() || reheat.by().length() > LONGEST_NAME) {
      throw new InvalidField(
          "reheat.by", "Say who read the temperature, in at most " + LONGEST_NAME + " characters.");
    }
    return Uncertain.exact(celsius);
  }
}
