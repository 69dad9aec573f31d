package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.BarrelState;
import org.barreltally.barrels.Barrels;
import org.barreltally.barrels.Drained;
import org.barreltally.documents.internal.HoldSteps;
import org.barreltally.ledger.Days;
import org.barreltally.lots.Lot;
import org.barreltally.lots.LotHeld;
import org.barreltally.lots.Lots;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.settings.FarmSettings;
import org.barreltally.settings.UnitHabit;

/** What stands on the tags of barrels and of what is held. */
@ApplicationScoped
public class Tags {

  /** So much of each reason stands on a hold tag, in characters; a tag must never be refused. */
  private static final int REASON_MAX = 160;

  private final Barrels barrels;
  private final Lots lots;
  private final HoldSteps holds;
  private final FarmSettings settings;
  private final Days days;

  Tags(Barrels barrels, Lots lots, HoldSteps holds, FarmSettings settings, Days days) {
    this.barrels = barrels;
    this.lots = lots;
    this.holds = holds;
    this.settings = settings;
    this.days = days;
  }

  /**
   * The tag of a vessel's newest filling, by the book of today.
   *
   * @throws org.barreltally.barrels.UnknownVessel if no vessel of that tag was ever filled
   * @throws Drained if nothing is in it
   * @throws LotHeld if its lot is held: it takes a hold tag
   */
  @Transactional
  public TagText ofBarrel(String tag) {
    Barrel barrel = barrels.at(tag);
    Lot lot = barrel.lot();
    if (barrel.state() == BarrelState.DRAINED) {
      throw new Drained(tag, "tag");
    }
    if (lot.held()) {
      throw new LotHeld(lot.code(), "tag");
    }
    Maker maker = Maker.at(days.now(), settings);
    List<TagText.Line> lines = new ArrayList<>();
    lines.add(line("grade", lot.grade() == null ? "Not graded yet" : lot.grade().words()));
    lines.add(line("lot", "Lot " + lot.code() + " · filled " + barrel.filledOn()));
    lines.add(line("season", crop(barrel)));
    lines.add(line("weight", "Net " + netWeight(barrel, maker.habit()) + " on " + days.today()));
    lines.add(line("density", readings(lot)));
    lines.add(line("maker", maker.name()));
    lines.add(line("address", String.join(", ", maker.address())));
    return new TagText(false, tag, lines, tag, maker.lotAddress(lot.code()));
  }

  /**
   * The tag of a held lot: since when and why, the first reason and the newest.
   *
   * @throws NothingHeld if it is not held
   */
  @Transactional
  public TagText ofHold(String code) {
    Lot lot = lots.at(code);
    if (!lot.held()) {
      throw new NothingHeld(code);
    }
    List<HoldSteps.Step> steps = holds.sinceRelease(code);
    List<TagText.Line> lines = new ArrayList<>();
    lines.add(line("lot", "Lot " + code));
    if (!steps.isEmpty()) {
      lines.add(line("reason", because(steps.get(0), "Held since ")));
    }
    if (steps.size() > 1) {
      lines.add(line("reason", because(steps.get(steps.size() - 1), "Again on ")));
    }
    lines.add(line("lot", "Do not draw, sell, give away or send it until it is released."));
    lines.add(line("lot", "Tag written " + days.today()));
    return new TagText(true, "HOLD", lines, code, Maker.at(days.now(), settings).lotAddress(code));
  }

  private String because(HoldSteps.Step step, String begin) {
    LocalDate day = days.dateOf(step.at());
    String reason = step.reason();
    return begin
        + day
        + ": "
        + (reason.length() <= REASON_MAX
            ? reason
            : reason.substring(0, REASON_MAX) + "… (the rest is in the book)");
  }

  private static String crop(Barrel barrel) {
    String years = barrel.seasons().stream().map(String::valueOf).collect(Collectors.joining(", "));
    return "Crop of " + years + " · " + barrel.material().code();
  }

  /** As a scale reads in air, in both unit systems. */
  private static String netWeight(Barrel barrel, UnitHabit habit) {
    Quantity weight =
        Quantity.rounded(barrel.syrup().weightInAir(barrel.grams().value()), Unit.G, 3);
    Quantity pounds = weight.to(Unit.LB, 1);
    Quantity kilograms = weight.to(Unit.KG, 1);
    return habit == UnitHabit.US
        ? pounds + " (" + kilograms + ")"
        : kilograms + " (" + pounds + ")";
  }

  private static String readings(Lot lot) {
    String density = String.format(Locale.ROOT, "%.1f °Bx", lot.brix().value());
    return lot.transmittance() == null
        ? density
        : density + String.format(Locale.ROOT, " · %.0f %%Tc", lot.transmittance());
  }

  private static TagText.Line line(String field, String text) {
    return new TagText.Line(field, text);
  }
}
