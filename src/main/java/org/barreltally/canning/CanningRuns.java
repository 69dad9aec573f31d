package org.barreltally.canning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.barreltally.barrels.Draw;
import org.barreltally.barrels.Drawing;
import org.barreltally.barrels.Heels;
import org.barreltally.canning.internal.RunBook;
import org.barreltally.canning.internal.ShrinkSums;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Days;
import org.barreltally.lots.Grading;
import org.barreltally.lots.Lot;
import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;
import org.barreltally.settings.FarmSettings;

/** Canning runs: each is stored whole, with its lot, its jars and where every gram went. */
@ApplicationScoped
public class CanningRuns {

  private static final int LONGEST_REASON = 500;

  private final Drawing drawing;
  private final Reckoner reckoner;
  private final RunRules rules;
  private final Grading grading;
  private final RunPosting posting;
  private final Heels heels;
  private final Instance<UsesSupplies> supplies;
  private final RunBook book;
  private final ShrinkSums shrink;
  private final FarmSettings settings;
  private final Days days;
  private final EntityManager entities;

  public CanningRuns(
      Drawing drawing,
      Reckoner reckoner,
      RunRules rules,
      Grading grading,
      RunPosting posting,
      Heels heels,
      Instance<UsesSupplies> supplies,
      RunBook book,
      ShrinkSums shrink,
      FarmSettings settings,
      Days days,
      EntityManager entities) {
    this.drawing = drawing;
    this.reckoner = reckoner;
    this.rules = rules;
    this.grading = grading;
    this.posting = posting;
    this.heels = heels;
    this.supplies = supplies;
    this.book = book;
    this.shrink = shrink;
    this.settings = settings;
    this.days = days;
    this.entities = entities;
  }

  /**
   * Stores a run and makes its lot.
   *
   * @param also adds what else is to be written together with the run, once its sheet is known
   * @throws Refusal of the drawing, the reckoning or the rules; then nothing is stored
   */
  @Transactional
  public PackSheet store(CanningOrder order, BiConsumer<PackSheet, Bundle> also) {
    LocalDate on = days.happened(order.on(), "on");
    checkSaid(order);
    ColorClass grade = grading.gradeOf(order.transmittance(), order.taste());
    String heelTag = order.heel() == null ? null : order.heel().keptIn();
    if (heelTag != null) {
      heels.prepare(heelTag, "heel.keptIn");
    }
    List<Draw> draws = drawing.take(order.draws(), heelTag);
    checkNotBeforeFilling(on, draws);
    Reckoning reckoning = reckoner.reckon(order, draws);
    rules.check(order, reckoning, grade);

    Bundle ask = Bundle.byKeys();
    PendingRun run = posting.begin(order, reckoning, grade, ask);
    List<UsesSupplies.Use> uses =
        supplies.stream().map(s -> s.begin(on, reckoning.jars(), ask)).toList();
    ask.send(entities);

    Bundle write = Bundle.byKeys();
    Lot lot = run.write(write);
    List<String> cautions = new ArrayList<>(rules.cautions(reckoning, grade));
    uses.forEach(use -> cautions.addAll(use.use(run.movement(), write)));
    PackSheet sheet =
        new SheetWriter(order, reckoning)
            .write(lot.code(), grade, settings.jurisdiction(), cautions);
    book.keep(sheet, run.movement(), write);
    also.accept(sheet, write);
    write.send(entities);
    if (heelTag != null) {
      heels.keep(heelTag, lot, run.syrup(), reckoning.weighedHeel(), on);
    }
    return sheet;
  }

  /**
   * The sheet that storing a run would make, refused as storing would be as the book stands now.
   * Nothing is stored and nothing is kept from others.
   *
   * @throws Refusal of the drawing, the reckoning or the rules
   */
  @Transactional
  public PackSheet rehearse(CanningOrder order) {
    LocalDate on = days.happened(order.on(), "on");
    checkSaid(order);
    ColorClass grade = grading.gradeOf(order.transmittance(), order.taste());
    List<Draw> draws = drawing.lookAt(order.draws());
    checkNotBeforeFilling(on, draws);
    Reckoning reckoning = reckoner.reckon(order, draws);
    rules.check(order, reckoning, grade);
    List<String> cautions = new ArrayList<>(rules.cautions(reckoning, grade));
    supplies.forEach(s -> cautions.addAll(s.lookAt(on, reckoning.jars())));
    return new SheetWriter(order, reckoning).write(null, grade, settings.jurisdiction(), cautions);
  }

  /**
   * The sheet of a stored run.
   *
   * @throws UnknownRun if no run made that lot
   */
  public PackSheet at(String lot) {
    return book.find(lot).orElseThrow(() -> new UnknownRun(lot));
  }

  /** Runs by lot code, after a code, at most so many. */
  public List<PackSheet> list(String after, int limit) {
    return book.list(after, limit);
  }

  /** What the runs lost that are booked in a year. */
  public RunsShrink shrinkOf(int year) {
    return shrink.ofYear(year);
  }

  /** What the run lost that made a lot; of no run if none did. */
  public RunsShrink shrinkOf(String lot) {
    return shrink.ofLot(lot);
  }

  private static void checkSaid(CanningOrder order) {
    RunRules.fillTemperature(order.fillTemperature());
    if (order.fills() != null
        && order.fills().stream().anyMatch(f -> f != null && f.takesTheRest())) {
      throw new InvalidField(
          "fills", "rest: true is for a what-if. Say how many jars were filled.");
    }
    if (order.heel() != null && (order.heel().weight() == null || order.heel().keptIn() == null)) {
      throw new InvalidField("heel", "Say what the heel weighs and in which vessel it is kept.");
    }
    if (order.heel() != null && order.heel().weight().signum() <= 0) {
      throw new InvalidField(
          "heel.weight", "A heel is more than nothing; leave it out if there is none.");
    }
    if (order.releaseReason() != null && order.releaseReason().length() > LONGEST_REASON) {
      throw new InvalidField(
          "releaseReason", "Keep the reason within " + LONGEST_REASON + " characters.");
    }
  }

  private static void checkNotBeforeFilling(LocalDate on, List<Draw> draws) {
    for (int i = 0; i < draws.size(); i++) {
      LocalDate filled = draws.get(i).from().filledOn();
      if (on.isBefore(filled)) {
        throw new InvalidField(
            "on",
            "%s was filled on %s; it cannot be canned on %s."
                .formatted(draws.get(i).from().tag(), filled, on));
      }
    }
  }
}
