package org.barreltally.canning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.barrels.Drawing;
import org.barreltally.ledger.Days;
import org.barreltally.lots.Grading;
import org.barreltally.measure.ColorClass;
import org.barreltally.settings.FarmSettings;

/** Thinks a canning run through: what would be filled, where the rest would go. Stores nothing. */
@ApplicationScoped
public class WhatIf {

  private final Drawing drawing;
  private final Reckoner reckoner;
  private final RunRules rules;
  private final Grading grading;
  private final Instance<UsesSupplies> supplies;
  private final FarmSettings settings;
  private final Days days;

  public WhatIf(
      Drawing drawing,
      Reckoner reckoner,
      RunRules rules,
      Grading grading,
      Instance<UsesSupplies> supplies,
      FarmSettings settings,
      Days days) {
    this.drawing = drawing;
    this.reckoner = reckoner;
    this.rules = rules;
    this.grading = grading;
    this.supplies = supplies;
    this.settings = settings;
    this.days = days;
  }

  /**
   * Works the sheet out as the book stands. What would keep a run from being stored is a caution.
   */
  @Transactional
  public PackSheet of(CanningOrder order) {
    days.known(order.on(), "on");
    RunRules.fillTemperature(order.fillTemperature());
    Reckoning reckoning = reckoner.reckon(order, drawing.lookAt(order.draws()));
    ColorClass grade =
        order.transmittance() == null || order.taste() == null
            ? null
            : grading.gradeOf(order.transmittance(), order.taste());
    List<String> cautions = new ArrayList<>(rules.cautions(reckoning, grade));
    supplies.forEach(s -> cautions.addAll(s.lookAt(order.on(), reckoning.jars())));
    return new SheetWriter(order, reckoning).write(null, grade, settings.jurisdiction(), cautions);
  }
}
