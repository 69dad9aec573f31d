package org.barreltally.shows;

import java.text.Normalizer;
import java.util.Locale;
import java.util.function.Predicate;

/** Makes the code of a show, which is also the code of its table as a place of the ledger. */
final class ShowCodes {

  /** A place's code has at most 40 characters; the year and a number follow. */
  private static final int NAME_MAX = 28;

  private ShowCodes() {}

  /** Name and year in small letters, digits and hyphens, with a number where it is taken. */
  static String code(Booking said, Predicate<String> taken) {
    String letters =
        Normalizer.normalize(said.name(), Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}+", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    String cut = letters.substring(0, Math.min(NAME_MAX, letters.length())).replaceAll("-$", "");
    String code = (cut.isEmpty() ? "show" : cut) + "-" + said.starts().getYear();
    for (int n = 2; taken.test(code); n++) {
      code = code.replaceAll("(-\\d{4})(-\\d+)?$", "$1-" + n);
    }
    return code;
  }
}
