package org.barreltally.gifts;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Countries by their two or three letters of ISO 3166-1 or their English name. */
final class Countries {

  private static final Map<String, String> CODES = new HashMap<>();

  static {
    for (String code : Locale.getISOCountries()) {
      Locale country = new Locale.Builder().setRegion(code).build();
      CODES.put(code, code);
      CODES.put(country.getISO3Country(), code);
      CODES.put(country.getDisplayCountry(Locale.ENGLISH).toUpperCase(Locale.ROOT), code);
    }
    // What people write as well.
    CODES.put("UK", "GB");
    CODES.put("UNITED STATES OF AMERICA", "US");
  }

  private Countries() {}

  /** The two letters; empty if no country is written so. */
  static Optional<String> code(String said) {
    return said == null
        ? Optional.empty()
        : Optional.ofNullable(CODES.get(said.strip().toUpperCase(Locale.ROOT)));
  }

  /** The English name in capitals, as the last line of an address abroad. */
  static String capitals(String code) {
    return new Locale.Builder()
        .setRegion(code)
        .build()
        .getDisplayCountry(Locale.ENGLISH)
        .toUpperCase(Locale.ROOT);
  }
}
