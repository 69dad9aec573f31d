package org.barreltally.reconciliation;

import java.util.Locale;

/** How somebody came to know what flowed, in words for people. */
public enum How {
  WEIGHED("Weighed on the platform scale, full and empty."),
  DIPPED("Read off the dipstick with its temperature."),
  WEIGHED_AGAIN("Weighed again on the platform scale."),
  WEIGHED_OUT("Weighed out on the platform scale."),
  HEEL_WEIGHED("The heel, weighed on the platform scale."),
  BUYERS_SCALE("Weighed by the buyer."),
  FILTER("What the filter held, as it was told; taken to be as good as the platform scale."),
  WATER("Water weighed in, as it was told; taken to be as good as the platform scale."),
  CONTENTS(
      "What jars hold over or under their contents, as it was told; known as well as the bench scale"
          + " weighs."),
  BROKEN_FILLED("Jars broken while filling, counted; right to a jar or so."),
  COUNTED_MOVED(
      "Jars counted when they were moved; one posting in fifty and one jar in a thousand is taken to be"
          + " miscounted by one (common practice)."),
  TALLIED(
      "Sales written down at the table; up to one jar in fifty is taken to be missed (common practice)."),
  TOLD_BY_SHOP("What the shop says it sold."),
  COUNTED_ONCE(
      "Counted by one person; one lot in fifty and one jar in a thousand is taken to be miscounted by one"
          + " (common practice)."),
  COUNTED_TWICE(
      "Counted by two people, who are both wrong ten times seldomer than one is (common practice)."),
  CARRIED("Carried over from the year before, by the book."),
  SUGAR_FED("Reckoned from the sugar of what was fed to the pan, by tank gauge and refractometer."),
  PRODUCTION("From the boiling."),
  NOT_MEASURED("Nobody measured it: what the book has follows from the rest.");

  private final String words;

  How(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
