package org.barreltally.sugarbush;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.sugarbush.internal.BushRows;
import org.barreltally.sugarbush.internal.OwnBushRows;

/**
 * The pieces of wood that sap comes from: those of the leases of a season, and the maker's own. A
 * name is the same however its letters are written, large or small.
 */
@ApplicationScoped
public class Bushes {

  private final BushRows bushes;
  private final OwnBushRows own;
  private final LeaseRules rules;

  Bushes(BushRows bushes, OwnBushRows own, LeaseRules rules) {
    this.bushes = bushes;
    this.own = own;
    this.rules = rules;
  }

  /**
   * Makes a bush of one's own known.
   *
   * @throws BushExists if it is
   */
  @Transactional
  public String add(String said) {
    String name = LeaseRules.name(said, "name", "the name of the bush");
    if (!own.add(name)) {
      throw new BushExists(name);
    }
    return name;
  }

  /**
   * Records a count of taps in a bush of one's own, from a day on.
   *
   * @throws UnknownBush if it is none of one's own
   */
  @Transactional
  public Bush count(String name, Integer season, TapCount said) {
    UUID bush = own.find(name).orElseThrow(() -> new UnknownBush(name));
    int year = LeaseRules.season(season);
    own.count(bush, year, rules.tap(said, TapKind.SET, ""));
    return byName(year, null).get(key(name));
  }

  /** The bushes of a season by name. */
  @Transactional
  public Collection<Bush> of(int season) {
    return of(season, null);
  }

  /**
   * The bushes of a season by name, as they were known at a time.
   *
   * @param asOf what was said by then counts; null for all
   */
  @Transactional
  public Collection<Bush> of(int season, Instant asOf) {
    return byName(season, asOf).values();
  }

  /**
   * The name of a bush as it is written where it was made known.
   *
   * @throws UnknownBush naming the field, if it is neither leased that season nor one's own
   */
  @Transactional
  public String known(String said, int season, String field) {
    String name = LeaseRules.name(said, field, "the bush the sap is from");
    Bush bush = byName(season, null).get(key(name));
    if (bush == null) {
      throw new UnknownBush(name, season, field);
    }
    return bush.name();
  }

  private Map<String, Bush> byName(int season, Instant asOf) {
    Map<String, Bush> byName = new TreeMap<>();
    for (Bush bush : bushes.own(season, asOf)) {
      byName.put(key(bush.name()), bush);
    }
    for (Bush leased : bushes.leased(season, asOf)) {
      byName.merge(key(leased.name()), leased, Bush::and);
    }
    return byName;
  }

  private static String key(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
