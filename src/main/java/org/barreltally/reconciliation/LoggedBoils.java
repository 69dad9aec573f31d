package org.barreltally.reconciliation;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.Barrels;
import org.barreltally.measure.Uncertain;
import org.barreltally.sugarbush.boiling.Boil;
import org.barreltally.sugarbush.boiling.Boils;
import org.barreltally.sugarbush.boiling.DrawOff;

/**
 * What the sugarhouse's log says was drawn off into barrels, and what the sugar fed should have
 * given: two checks of the barrels' weighings. Only where the log names every barrel of the season;
 * a log with gaps would make whole barrels look like faults.
 */
@ApplicationScoped
class LoggedBoils implements ProductionSums {

  private static final int BARRELS_MAX = 10_000;

  private final Boils boils;
  private final Barrels barrels;

  LoggedBoils(Boils boils, Barrels barrels) {
    this.boils = boils;
    this.barrels = barrels;
  }

  @Override
  public List<Production> of(int season) {
    List<Boil> counting = boils.counting(season);
    List<Boil.Drawn> drawn =
        counting.stream()
            .flatMap(boil -> boil.drawOffs().stream())
            .filter(one -> one.reversed() == null)
            .toList();
    Set<String> named = new HashSet<>();
    drawn.stream().map(Boil.Drawn::said).map(DrawOff::barrel).forEach(named::add);
    List<String> filled =
        barrels.list(new Barrels.Filter(null, null, season), null, BARRELS_MAX).stream()
            .map(Barrel::tag)
            .toList();
    if (drawn.isEmpty() || filled.isEmpty() || !named.containsAll(filled)) {
      return List.of();
    }
    Uncertain into = sum(drawn.stream().filter(one -> one.said().barrel() != null).toList());
    Uncertain elsewhere = sum(drawn.stream().filter(one -> one.said().barrel() == null).toList());
    Uncertain expected =
        counting.stream()
            .map(boil -> boil.expected().grams())
            .reduce(Uncertain.exact(0), Uncertain::plus)
            .minus(elsewhere);
    return List.of(new Production("drawn off", into.value(), into.u(), expected));
  }

  private static Uncertain sum(List<Boil.Drawn> drawn) {
    return drawn.stream()
        .map(one -> one.amount().grams())
        .reduce(Uncertain.exact(0), Uncertain::plus);
  }
}
