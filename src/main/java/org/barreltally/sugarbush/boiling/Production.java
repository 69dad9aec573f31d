package org.barreltally.sugarbush.boiling;

import static org.barreltally.sugarbush.boiling.ExpectedSyrup.sum;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.barreltally.measure.Uncertain;
import org.barreltally.sugarbush.Bush;
import org.barreltally.sugarbush.Bushes;
import org.barreltally.sugarbush.boiling.ProductionSeason.OfBush;
import org.barreltally.sugarbush.boiling.ProductionSeason.OfMembrane;
import org.barreltally.sugarbush.boiling.internal.Entry;
import org.barreltally.sugarbush.boiling.internal.LogReading;

/** Sums the log of a season up, for whoever balances the year. */
@ApplicationScoped
public class Production {

  private final LogReading log;
  private final Boils boils;
  private final Concentrates concentrates;
  private final Bushes bushes;

  Production(LogReading log, Boils boils, Concentrates concentrates, Bushes bushes) {
    this.log = log;
    this.boils = boils;
    this.concentrates = concentrates;
    this.bushes = bushes;
  }

  /** The season's sums; all nothing where the log has nothing of it. */
  @Transactional
  public ProductionSeason of(int season) {
    return of(season, null);
  }

  /**
   * The season's sums as they were known at a time.
   *
   * @param asOf what was entered, counted and taken back by then counts; null for all
   */
  @Transactional
  public ProductionSeason of(int season, Instant asOf) {
    List<Boil> boiled = boils.counting(season, asOf);
    List<OfWood> gathered = gathered(season, boiled, asOf);
    List<ExpectedSyrup> expected = boiled.stream().map(Boil::expected).toList();
    List<ExpectedSyrup.Drawn> drawn =
        expected.stream().map(ExpectedSyrup::drawn).filter(Objects::nonNull).toList();
    List<Amount> fed =
        boiled.stream()
            .flatMap(boil -> boil.feeds().stream())
            .filter(feed -> feed.reversed() == null)
            .map(Boil.Fed::amount)
            .toList();
    List<Amount> sap = gathered.stream().map(OfWood::amount).toList();
    return new ProductionSeason(
        season,
        byBush(gathered, bushes.of(season, asOf)),
        sum(sap, Amount::mL),
        sum(sap, Amount::sugar),
        membranes(concentrates.counting(season, asOf)),
        boiled.size(),
        sum(fed, Amount::mL),
        sum(fed, Amount::sugar),
        sum(expected, ExpectedSyrup::grams),
        sum(drawn, ExpectedSyrup.Drawn::grams),
        sum(drawn, ExpectedSyrup.Drawn::mL),
        sum(drawn, ExpectedSyrup.Drawn::sugar));
  }

  /** Sap and whose it is. */
  private record OfWood(String bush, Amount amount) {}

  /** What went to tanks, and what was boiled straight from the trees. */
  private List<OfWood> gathered(int season, List<Boil> boiled, Instant asOf) {
    List<OfWood> all = new ArrayList<>();
    for (Entry sap : log.counting(EntryKind.SAP, season, asOf)) {
      all.add(new OfWood(sap.bush(), sap.amount(Role.GATHERED)));
    }
    for (Boil boil : boiled) {
      for (Boil.Fed fed : boil.feeds()) {
        if (fed.reversed() == null && fed.amount().tank() == null) {
          all.add(new OfWood(fed.bush(), fed.amount()));
        }
      }
    }
    return all;
  }

  private static List<OfBush> byBush(List<OfWood> gathered, Collection<Bush> known) {
    Map<String, List<Amount>> byName = new LinkedHashMap<>();
    Map<String, Bush> taps = new LinkedHashMap<>();
    for (Bush bush : known) {
      taps.put(bush.name(), bush);
      byName.put(bush.name(), new ArrayList<>());
    }
    for (OfWood sap : gathered) {
      byName.computeIfAbsent(sap.bush(), name -> new ArrayList<>()).add(sap.amount());
    }
    Uncertain all = sum(gathered, sap -> sap.amount().sugar());
    List<OfBush> parts = new ArrayList<>();
    byName.forEach(
        (name, amounts) -> {
          Bush bush = taps.get(name);
          Uncertain sugar = sum(amounts, Amount::sugar);
          if (!amounts.isEmpty() || bush.taps() != null) {
            parts.add(
                new OfBush(
                    name,
                    bush == null ? null : bush.taps(),
                    bush != null && bush.agreed(),
                    sum(amounts, Amount::mL),
                    amounts.isEmpty() ? null : ExpectedSyrup.mean(amounts),
                    sugar,
                    share(sugar, all)));
          }
        });
    return parts;
  }

  /** A part of a whole that it is in itself: what both have in common is not counted twice. */
  private static Uncertain share(Uncertain part, Uncertain whole) {
    if (whole.value() == 0) {
      return Uncertain.exact(0);
    }
    double share = part.value() / whole.value();
    double others = Math.sqrt(Math.max(0, whole.u() * whole.u() - part.u() * part.u()));
    return new Uncertain(share, Math.hypot((1 - share) * part.u(), share * others) / whole.value());
  }

  private static OfMembrane membranes(List<Concentrate> made) {
    return new OfMembrane(
        sum(made, c -> c.taken().mL()),
        sum(made, c -> c.taken().sugar()),
        sum(made, c -> c.made().mL()),
        sum(made, c -> c.made().sugar()));
  }
}
