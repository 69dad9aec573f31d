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
  BROKEN_FILLED("Jars broken while filling, counted; right to one jar."),
  COUNTED_MOVED("Jars counted when they were moved; each posting right to one jar."),
  TALLIED(
      "Sales written down at the table; each right to one jar, and one in fifty may be missed (common"
          + " practice)."),
  TOLD_BY_SHOP("What the shop says it sold; each lot right to one jar."),
  COUNTED_ONCE("Counted by one person; each lot right to one jar."),
  COUNTED_TWICE("Counted by two people; each lot right to half a jar."),
  CARRIED("Carried over from the year before, by the book; each lot right to one jar."),
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
