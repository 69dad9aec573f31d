package org.barreltally.shows.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barreltally.containers.Container;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Money;
import org.barreltally.shows.Show;

/** Chooses the numbers from the forecasts, cuts them to what is scarce, and writes them down. */
final class PlanWriter {

  private final PlanQuestion asked;
  private final Map<JarKind, Container> kinds;
  private final Map<JarKind, Long> promised;
  private final Worth worth;
  private final TableSpace tables;
  private final Map<JarKind, PackedJar> packed = new TreeMap<>();

  PlanWriter(
      PlanQuestion asked,
      Map<JarKind, Container> kinds,
      Map<JarKind, Long> promised,
      Worth worth,
      TableSpace tables) {
    this.asked = asked;
    this.kinds = kinds;
    this.promised = promised;
    this.worth = worth;
    this.tables = tables;
    kinds.forEach((jar, container) -> packed.put(jar, PackedJar.of(container)));
  }

  ShowPlan write(Show show, Map<JarKind, Forecast> forecasts, Planning.Load load, String currency) {
    List<JarKind> jars = List.copyOf(forecasts.keySet());
    List<Candidate> candidates =
        jars.stream().map(jar -> candidate(jar, forecasts.get(jar))).toList();
    Allotment cut = Sharing.of(candidates, load.jarsKg(), tables.lengthForJars());
    Totals totals = new Totals();
    Map<JarKind, ShowPlan.Line> lines = new TreeMap<>();
    for (int n = 0; n < jars.size(); n++) {
      totals.add(jars.get(n), candidates.get(n), cut.pieces().get(n));
    }
    for (int n = 0; n < jars.size(); n++) {
      JarKind jar = jars.get(n);
      Candidate candidate = candidates.get(n);
      int take = cut.pieces().get(n);
      ShowPlan.Limit limit = limit(candidate, take, load.jarsKg() - totals.kg);
      lines.put(jar, line(jar, forecasts.get(jar), candidate, take, limit));
    }
    kinds.keySet().forEach(jar -> lines.computeIfAbsent(jar, this::unknown));
    return new ShowPlan(
        show.id(),
        List.copyOf(lines.values()),
        kg(totals.kg + load.otherKg()),
        load.carries(),
        tenths(tables.length()),
        tenths(tables.lengthForJars()),
        tenths(totals.inches),
        worth.anyPriced() ? Money.rounded(BigDecimal.valueOf(totals.takings), currency) : null,
        new Assumptions(asked, worth, packed, load, forecasts).said(),
        cautions());
  }

  private Candidate candidate(JarKind jar, Forecast forecast) {
    Container container = kinds.get(jar);
    Costs costs = worth.costs(jar, container);
    Footprint footprint = footprint(container);
    int refills = asked.refills() == null ? 0 : asked.refills();
    return new Candidate(
        forecast.demand(),
        costs,
        Newsvendor.quantity(forecast.demand(), costs),
        Math.max(0, promised.getOrDefault(jar, 0L)),
        packed.get(jar).kg(),
        footprint.width(),
        tables.deep(footprint) * (1 + refills));
  }

  private Footprint footprint(Container container) {
    return asked.footprints().stream()
        .filter(room -> room.container().equals(container.code()))
        .findFirst()
        .map(
            room ->
                new Footprint(room.widthInches().doubleValue(), room.depthInches().doubleValue()))
        .orElseGet(() -> Footprint.ofContents(container.netML()));
  }

  private static ShowPlan.Limit limit(Candidate candidate, int take, double kgLeft) {
    if (take >= candidate.wanted()) {
      return ShowPlan.Limit.DEMAND;
    }
    if (candidate.inFacing() > 0 && take >= candidate.promised()) {
      return ShowPlan.Limit.PROMISE;
    }
    return candidate.inFacing() > 0 && candidate.kg() > kgLeft
        ? ShowPlan.Limit.VEHICLE
        : ShowPlan.Limit.TABLE;
  }

  private ShowPlan.Line line(
      JarKind jar, Forecast forecast, Candidate candidate, int take, ShowPlan.Limit limit) {
    NegativeBinomial demand = forecast.demand();
    return new ShowPlan.Line(
        jar.container(),
        jar.grade(),
        take,
        candidate.wanted(),
        promised.getOrDefault(jar, 0L),
        tenths(demand.mean()),
        demand.quantile(0.1),
        demand.quantile(0.9),
        Math.round(demand.atMost(take) * 1000) / 1000.0,
        candidate.inFacing() == 0 ? 0 : candidate.facings(take),
        kg(take * candidate.kg()),
        limit,
        Why.of(forecast, candidate, take, limit));
  }

  private ShowPlan.Line unknown(JarKind jar) {
    return new ShowPlan.Line(
        jar.container(),
        jar.grade(),
        0,
        0,
        promised.getOrDefault(jar, 0L),
        0,
        0,
        0,
        0,
        0,
        kg(0),
        ShowPlan.Limit.DEMAND,
        Why.unknown());
  }

  private List<String> cautions() {
    List<String> cautions = new ArrayList<>();
    cautions.add(
        "Stay within what the vehicle's plate and tyres allow, people and kit included; heavy boxes"
            + " low and tied down. The plate decides, not this sheet.");
    boolean glass = kinds.values().stream().anyMatch(c -> c.material() == Container.Material.GLASS);
    if (glass) {
      cautions.add("Glass: dividers in every box, none above shoulder height on the tiers.");
    }
    return cautions;
  }

  private static Quantity kg(double kg) {
    return Quantity.rounded(kg, Unit.KG, 1);
  }

  private static double tenths(double number) {
    return Math.round(number * 10) / 10.0;
  }

  /** What all jars come to. */
  private final class Totals {
    private double kg;
    private double inches;
    private double takings;

    void add(JarKind jar, Candidate candidate, int take) {
      kg += take * candidate.kg();
      inches += take == 0 ? 0 : candidate.facings(take) * candidate.facing();
      double price = worth.price(jar).map(p -> p.amount().doubleValue()).orElse(0.0);
      for (int n = 1; n <= take; n++) {
        takings += price * candidate.demand().atLeast(n);
      }
    }
  }
}
