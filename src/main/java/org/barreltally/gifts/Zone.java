package org.barreltally.gifts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Where a carrier takes so many days.
 *
 * @param days carrying days on the way, the day of sending not counted; 0 to 90
 * @param countries two letters of ISO 3166-1; every country if empty or null
 * @param regions states or provinces; every one if empty or null
 * @param postcodes how they begin; every one if empty or null
 */
public record Zone(
    String name,
    Integer days,
    List<String> countries,
    List<String> regions,
    List<String> postcodes) {

  public Zone {
    countries = kept(countries);
    regions = kept(regions);
    postcodes = kept(postcodes);
  }

  /** As it is, gaps included: the rules speak of them. */
  private static List<String> kept(List<String> said) {
    return said == null ? List.of() : Collections.unmodifiableList(new ArrayList<>(said));
  }

  private static final int COUNTRY_COUNTS = 1;
  private static final int REGION_COUNTS = 2;
  private static final int POSTCODE_COUNTS = 4;

  /** How closely an address is described by the zone; below zero if it is not in it. */
  int closeness(Address address) {
    int closeness = 0;
    if (!countries.isEmpty()) {
      if (!countries.contains(address.country())) {
        return -1;
      }
      closeness += COUNTRY_COUNTS;
    }
    if (!regions.isEmpty()) {
      if (address.region() == null
          || regions.stream().noneMatch(address.region()::equalsIgnoreCase)) {
        return -1;
      }
      closeness += REGION_COUNTS;
    }
    if (!postcodes.isEmpty()) {
      String code = address.postcode() == null ? "" : address.postcode().toUpperCase(Locale.ROOT);
      int longest =
          postcodes.stream()
              .filter(begin -> code.startsWith(begin.toUpperCase(Locale.ROOT)))
              .mapToInt(String::length)
              .max()
              .orElse(-1);
      if (longest < 0) {
        return -1;
      }
      closeness += POSTCODE_COUNTS + longest;
    }
    return closeness;
  }
}
