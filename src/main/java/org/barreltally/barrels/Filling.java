package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.barrels.internal.FillingRow;
import org.barreltally.barrels.internal.ReadingLog;
import org.barreltally.barrels.internal.VesselRow;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.lots.Lot;
import org.barreltally.lots.LotNumbers;
import org.barreltally.lots.Lots;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Grams;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;

/** Fills a barrel: its syrup becomes a lot, weighed or dipped, with its density read. */
@ApplicationScoped
public class Filling {

  private final Vessels vessels;
  private final Readings readings;
  private final ReadingLog log;
  private final Lots lots;
  private final LotNumbers numbers;
  private final FirstGrading grading;
  private final Items items;
  private final Ledger ledger;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;
  private final Barrels barrels;

  public Filling(
      Vessels vessels,
      Readings readings,
      ReadingLog log,
      Lots lots,
      LotNumbers numbers,
      FirstGrading grading,
      Items items,
      Ledger ledger,
      Days days,
      Ids ids,
      RecordedBy recordedBy,
      Barrels barrels) {
    this.vessels = vessels;
    this.readings = readings;
    this.log = log;
    this.lots = lots;
    this.numbers = numbers;
    this.grading = grading;
    this.items = items;
    this.ledger = ledger;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
    this.barrels = barrels;
  }

  /** What the readings of a filling came to: by the scale, by the stick, and which counts. */
  private record Contents(Uncertain brix, Uncertain weighed, Uncertain dipped) {
    /** With both, the weight counts: a stick is only an estimate. */
    Uncertain grams() {
      return weighed != null ? weighed : dipped;
    }
  }

  /**
   * Records a filled barrel and opens its lot under the next code.
   *
   * @throws BarrelNotEmpty if the tag still has syrup in it
   * @throws OverCapacity if more is said to be in it than it takes
   */
  @Transactional
  public Barrel fill(FillBarrel said, Origin origin) {
    return fill(said, origin, null);
  }

  /**
   * Refuses what {@link #fill} would refuse by what is said alone, storing nothing: all but what is
   * in the vessel already.
   */
  public void check(FillBarrel said) {
    judged(said);
    checkBrim(capacity(said), said, read(said));
    grading.check(said.transmittance());
  }

  /** The season, after everything that needs no reading was judged. */
  private int judged(FillBarrel said) {
    LocalDate on = days.happened(said.filledOn(), "filledOn");
    int season = Season.checked(said.season(), on);
    if (said.material() == null) {
      throw new InvalidField(
          "material",
          "Say what the barrel is made of: stainless, plastic, coated-steel, galvanized or other.");
    }
    return season;
  }

  /**
   * As {@link #fill(FillBarrel, Origin)}, for syrup that may have a lot code from before the book
   * began.
   *
   * @param known its code, of no other lot; null to give it the next
   */
  @Transactional
  public Barrel fill(FillBarrel said, Origin origin, String known) {
    int season = judged(said);
    LocalDate on = said.filledOn();
    Contents contents = read(said);
    VesselRow vessel = vessels.emptied(said.tag(), false, said.material(), "tag");
    vessel.describe(said.material(), capacity(said));
    checkBrim(vessel.capacityML(), said, contents);

    String lot = known == null ? numbers.nextBulk(season) : known;
    lots.open(lot, Lot.Kind.BULK, on, List.of(season), contents.brix());
    Item syrup = Item.syrup(ids.next(), lot);
    items.add(List.of(syrup));
    FillingRow filling =
        new FillingRow(
            ids.next(),
            said.tag(),
            PlaceCode.BARREL_ROOM,
            on,
            season,
            lot,
            contents.grams().u(),
            days.now(),
            recordedBy.user());
    describe(filling, said, contents);
    vessels.put(vessel, filling);
    keepReadings(said, contents, new ReadingLog.Of(filling.id(), lot, on));
    ledger.post(
        Movement.of(origin.movement(), days.during(on))
            .move(
                origin.place(),
                PlaceCode.BARREL_ROOM,
                syrup.id(),
                Grams.rounded(contents.grams().value()))
            .build());
    grading.grade(lot, on, said.transmittance(), said.taste());
    return barrels.at(said.tag());
  }

  private Contents read(FillBarrel said) {
    if (said.density() == null) {
      throw new InvalidField("density", "Read the density: weight becomes volume only with it.");
    }
    if (said.weighing() == null && said.dipstick() == null) {
      throw new InvalidField(
          "weighing", "Weigh the barrel (gross and tare), or dip it (volume and temperature).");
    }
    Uncertain brix = Readings.under("density", () -> readings.trueBrix(said.density()));
    Uncertain weighed =
        said.weighing() == null
            ? null
            : Readings.under("weighing", () -> readings.weighed(said.weighing(), brix));
    Uncertain dipped =
        said.dipstick() == null
            ? null
            : Readings.under("dipstick", () -> readings.dipped(said.dipstick(), brix));
    return new Contents(brix, weighed, dipped);
  }

  private static void describe(FillingRow filling, FillBarrel said, Contents contents) {
    if (contents.weighed() != null) {
      filling.tare(Math.round(said.weighing().tare().doubleIn(Unit.G)));
    }
    if (contents.weighed() != null && contents.dipped() != null) {
      Syrup syrup = new Syrup(contents.brix().value());
      filling.gap(
          syrup.mLAt20(contents.dipped().value()) - syrup.mLAt20(contents.weighed().value()),
          contents.dipped().differsFrom(contents.weighed()));
    }
  }

  private void keepReadings(FillBarrel said, Contents contents, ReadingLog.Of of) {
    log.density(of, said.density(), contents.brix());
    if (contents.weighed() != null) {
      log.weighing(of, said.weighing(), contents.weighed());
    }
    if (contents.dipped() != null) {
      log.dipstick(of, said.dipstick(), contents.dipped());
    }
  }

  private static BigDecimal capacity(FillBarrel said) {
    if (said.capacity() == null) {
      return null;
    }
    Readings.required(said.capacity(), "capacity", Dimension.VOLUME);
    if (said.capacity().signum() <= 0) {
      throw new InvalidField("capacity", "A barrel takes more than nothing.");
    }
    return said.capacity().in(Unit.ML);
  }

  private static void checkBrim(BigDecimal capacityML, FillBarrel said, Contents contents) {
    Brim.check(
        said.tag(),
        capacityML,
        contents.grams(),
        contents.brix().value(),
        said.weighing() != null ? "weighing.gross" : "dipstick.volume");
  }
}
