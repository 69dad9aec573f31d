package org.barreltally.pricing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A town or region as tax is told apart by. Capitals and blanks do not matter.
 *
 * @param key in small letters with single blanks, a town after its region and a slash
 */
record TaxPlace(String key) {

  static TaxPlace of(String said) {
    return new TaxPlace(
        said.strip().replaceAll("\\s*/\\s*", "/").replaceAll("\\s+", " ").toLowerCase(Locale.ROOT));
  }

  /** Its key and those of the regions around it, the nearest first. */
  List<String> andAround() {
    List<String> keys = new ArrayList<>(List.of(key));
    for (int slash = key.lastIndexOf('/'); slash > 0; slash = key.lastIndexOf('/', slash - 1)) {
      keys.add(key.substring(0, slash));
    }
    return keys;
  }
}
