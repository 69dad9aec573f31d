package org.barreltally.gifts;

import java.util.List;

/** What a carrier's table must be; every field at fault is named at once. */
final class CarrierRules {

  private static final int NAME_MAX = 60;
  private static final int ZONES_MAX = 200;
  private static final int MATCHES_MAX = 1000;
  private static final int DAYS_MAX = 90;
  private static final int CLOSED_MAX = 200;

  private final Faults faults = new Faults();

  private CarrierRules() {}

  /**
   * @throws org.barreltally.refusal.InvalidField naming every field that needs mending
   */
  static void check(CarrierTable said) {
    CarrierRules rules = new CarrierRules();
    rules.faults.text(said.name(), NAME_MAX, false, "name", "Name the carrier.");
    rules.faults.require(
        said.weekdays() == null || !said.weekdays().isEmpty() && !Faults.hasGap(said.weekdays()),
        "weekdays",
        "Give at least one of mon, tue, wed, thu, fri, sat, sun, or leave it out for mon to fri.");
    rules.faults.require(
        said.closed() == null
            || said.closed().size() <= CLOSED_MAX && !Faults.hasGap(said.closed()),
        "closed",
        "Give at most " + CLOSED_MAX + " days.");
    boolean some =
        said.zones() != null && !said.zones().isEmpty() && said.zones().size() <= ZONES_MAX;
    rules.faults.require(some, "zones", "Give 1 to " + ZONES_MAX + " zones with their days.");
    for (int i = 0; some && i < said.zones().size(); i++) {
      rules.zone(said.zones().get(i), "zones[" + i + "]");
    }
    rules.faults.refuse();
  }

  private void zone(Zone zone, String path) {
    if (zone == null) {
      faults.require(false, path, "Give name and days.");
      return;
    }
    faults.text(zone.name(), NAME_MAX, false, path + ".name", "Name the zone.");
    faults.require(
        zone.days() != null && zone.days() >= 0 && zone.days() <= DAYS_MAX,
        path + ".days",
        "Give the carrying days on the way, from 0 to " + DAYS_MAX + ".");
    for (int i = 0; i < zone.countries().size(); i++) {
      String code = zone.countries().get(i);
      faults.require(
          Countries.code(code).filter(found -> found.equals(code)).isPresent(),
          path + ".countries[" + i + "]",
          "Give the two letters of ISO 3166-1, for example US.");
    }
    matches(zone.countries(), path + ".countries");
    matches(zone.regions(), path + ".regions");
    matches(zone.postcodes(), path + ".postcodes");
  }

  private void matches(List<String> matches, String path) {
    faults.require(
        matches.size() <= MATCHES_MAX && matches.stream().allMatch(m -> m != null && !m.isBlank()),
        path,
        "Give at most " + MATCHES_MAX + ", none of them empty.");
  }
}
