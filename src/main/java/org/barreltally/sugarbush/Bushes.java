package org.barreltally.sugarbush;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.sugarbush.internal.OwnBushRows;

/**
 * The pieces of wood that sap comes from: those of the leases of a season, and the maker's own. A
 * name is the same however its letters are written, large or small.
 */
@ApplicationScoped
public class Bushes {

  private static final int AT_ONCE = 200;

  private final Leases leases;
  private final OwnBushRows own;
  private final LeaseRules rules;

  Bushes(Leases leases, OwnBushRows own, LeaseRules rules) {
    this.leases = leases;
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
    return byName(year).get(key(name));
  }

  /** The bushes of a season by name. */
  @Transactional
  public Collection<Bush> of(int season) {
    return byName(season).values();
  }

  /**
   * The name of a bush as it is written where it was made known.
   *
   * @throws UnknownBush naming the field, if it is neither leased that season nor one's own
   */
  @Transactional
  public String known(String said, int season, String field) {
    String name = LeaseRules.name(said, field, "the bush the sap is from");
    Bush bush = byName(season).get(key(name));
    if (bush == null) {
      throw new UnknownBush(name, season, field);
    }
    return bush.name();
  }

  private Map<String, Bush> byName(int season) {
    Map<String, Bush> bushes = new TreeMap<>();
    for (Bush bush : own.of(season)) {
      bushes.put(key(bush.name()), bush);
    }
    for (Lease lease : ofSeason(season)) {
      TapCount set = lease.taps(TapKind.SET).orElse(null);
      TapCount count = set == null ? lease.taps(TapKind.AGREED).orElse(null) : set;
      Bush leased =
          new Bush(
              lease.bush(),
              false,
              true,
              count == null ? null : count.count(),
              set == null && count != null);
      bushes.merge(key(lease.bush()), leased, Bush::and);
    }
    return bushes;
  }

  private List<Lease> ofSeason(int season) {
    List<Lease> all = new ArrayList<>();
    List<Lease> part;
    UUID after = null;
    do {
      part = leases.list(new Leases.Filter(season, null, null), after, AT_ONCE);
      all.addAll(part);
      after = part.isEmpty() ? null : part.get(part.size() - 1).id();
    } while (part.size() == AT_ONCE);
    return all;
  }

  private static String key(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
