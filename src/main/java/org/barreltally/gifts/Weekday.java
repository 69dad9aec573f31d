package org.barreltally.gifts;

import java.time.DayOfWeek;
import java.util.Locale;

/** A day of the week: {@code mon, tue, …}. */
public enum Weekday {
  MON,
  TUE,
  WED,
  THU,
  FRI,
  SAT,
  SUN;

  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  DayOfWeek day() {
    return DayOfWeek.of(ordinal() + 1);
  }
}
