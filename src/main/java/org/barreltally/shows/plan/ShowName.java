package org.barreltally.shows.plan;

import java.util.Locale;

/** What names a show over the years: its name without year, spacing and capitals, and its town. */
final class ShowName {

  private ShowName() {}

  static String of(String name, String town) {
    return bare(name.replaceAll("\\b(19|20)\\d\\d\\b", " ")) + "@" + bare(town);
  }

  private static String bare(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
  }
}
