package org.barreltally.documents;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.barreltally.settings.UnitHabit;

/** A day in words, as papers for buyers say it. */
final class DayWords {

  private static final DateTimeFormatter US =
      DateTimeFormatter.ofPattern("MMMM d, uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter OTHERS =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private DayWords() {}

  /** {@code July 1, 2026} or {@code 1 July 2026}. */
  static String of(LocalDate day, UnitHabit habit) {
    return (habit == UnitHabit.US ? US : OTHERS).format(day);
  }
}
