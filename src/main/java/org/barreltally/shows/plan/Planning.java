package org.barreltally.shows.plan;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Audience;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.PriceLists;
import org.barreltally.settings.FarmSettings;
import org.barreltally.shows.Booth;
import org.barreltally.shows.Show;
import org.barreltally.shows.Shows;

/** Says what to take to a show and why. Stores nothing and promises nothing. */
@ApplicationScoped
public class Planning {

  /** Of every shelf's length for awards and pictures, where the owner has not said. */
  static final double USUAL_DISPLAY = 0.15;

  private final Shows shows;
  private final Takings takings;
  private final Takeable takeable;
  private final Containers containers;
  private final PriceLists priceLists;
  private final FarmSettings settings;

  Planning(
      Shows shows,
      Takings takings,
      Takeable takeable,
      Containers containers,
      PriceLists priceLists,
      FarmSettings settings) {
    this.shows = shows;
    this.takings = takings;
    this.takeable = takeable;
    this.containers = containers;
    this.priceLists = priceLists;
    this.settings = settings;
  }

  /**
   * What to take.
   *
   * @throws org.barreltally.shows.UnknownShow as not found
   * @throws NoTables if the show has none
   * @throws NegativeCost if a cost is below zero
   * @throws org.barreltally.refusal.InvalidField naming every field that needs mending
   */
  @Transactional
  public ShowPlan plan(UUID id, PlanQuestion asked) {
    Show show = shows.at(id);
    Optional<PriceList> prices = prices(show);
    String currency =
        prices.map(PriceList::currency).orElseGet(() -> settings.now().said().currency());
    PlanRules.check(asked, currency);
    TableSpace tables = tables(show, asked);
    List<PastTaking> past = takings.before(show);
    Map<JarKind, Long> promised = takeable.by(show);
    Map<JarKind, Container> kinds = kinds(asked, past, promised);
    Worth worth = new Worth(prices, kinds, asked.costs());
    Map<JarKind, Forecast> forecasts =
        Forecasting.of(coming(show, asked), past, kinds.keySet(), guess(asked));
    PlanWriter writer = new PlanWriter(asked, kinds, promised, worth, tables);
    return writer.write(show, forecasts, load(show, asked), currency);
  }

  private Optional<PriceList> prices(Show show) {
    UUID named = show.booking().priceList();
    if (named != null) {
      return Optional.of(
          priceLists.holding(named, show.starts()).orElseGet(() -> priceLists.at(named)));
    }
    return priceLists
        .current(Audience.SHOW, show.starts())
        .or(() -> priceLists.current(Audience.RETAIL, show.starts()));
  }

  private static TableSpace tables(Show show, PlanQuestion asked) {
    Booth booth = show.booking().booth();
    if (booth == null || booth.tables().isEmpty()) {
      throw new NoTables(show.words());
    }
    double display =
        asked.displayPercent() == null ? USUAL_DISPLAY : asked.displayPercent().doubleValue() / 100;
    return TableSpace.of(
        booth.tables().stream()
            .map(
                table ->
                    new TableSpace.Table(
                        table.lengthInches().doubleValue(),
                        table.depthInches().doubleValue(),
                        table.tiers() == null ? 1 : table.tiers()))
            .toList(),
        display);
  }

  private Map<JarKind, Container> kinds(
      PlanQuestion asked, List<PastTaking> past, Map<JarKind, Long> promised) {
    Set<JarKind> named = new TreeSet<>();
    promised.forEach(
        (jar, pieces) -> {
          if (pieces > 0) {
            named.add(jar);
          }
        });
    past.forEach(taking -> named.add(taking.jar()));
    asked.firstGuess().forEach(guess -> named.add(new JarKind(guess.container(), guess.grade())));
    Map<JarKind, Container> kinds = new TreeMap<>();
    for (JarKind jar : named) {
      boolean wanted =
          jar.grade() != ColorClass.PROCESSING
              && (asked.only().isEmpty()
                  || asked.only().stream().anyMatch(kind -> kind.takesIn(jar)));
      if (wanted) {
        kinds.put(jar, containers.named(jar.container(), "firstGuess.container"));
      }
    }
    return kinds;
  }

  private static ComingShow coming(Show show, PlanQuestion asked) {
    Integer booked = show.booking().visitorsExpected();
    Integer visitors = asked.visitors() != null ? asked.visitors() : booked;
    return new ComingShow(
        ShowName.of(show.name(), show.town()),
        show.starts(),
        1 + (int) ChronoUnit.DAYS.between(show.starts(), show.ends()),
        visitors == null || visitors < 1 ? null : visitors);
  }

  private static FirstGuess guess(PlanQuestion asked) {
    Map<JarKind, Double> own = new HashMap<>();
    asked
        .firstGuess()
        .forEach(
            guess ->
                own.put(
                    new JarKind(guess.container(), guess.grade()),
                    guess.per100Visitors().doubleValue()));
    BigDecimal all = asked.jarsPer100Visitors();
    return new FirstGuess(own, all == null ? FirstGuess.USUAL : all.doubleValue());
  }

  /** The most the jars may weigh, and what the vehicle should carry with all else; or neither. */
  record Load(Quantity carries, double otherKg) {
    double jarsKg() {
      return carries == null
          ? Double.POSITIVE_INFINITY
          : Math.max(0, carries.doubleIn(Unit.KG) - otherKg);
    }
  }

  private static Load load(Show show, PlanQuestion asked) {
    Quantity carries =
        asked.vehicleLoad() != null ? asked.vehicleLoad() : show.booking().vehicleLoad();
    return new Load(carries, asked.otherLoad() == null ? 0 : asked.otherLoad().doubleIn(Unit.KG));
  }
}
