package org.barreltally.shows.pages;

import io.quarkus.qute.TemplateData;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The season week by week, in words; weeks in which nothing stands are left out. */
public final class SeasonWeeks {

  /**
   * A week from Monday to Sunday.
   *
   * @param now whether today lies in it
   */
  @TemplateData
  public record Week(LocalDate from, LocalDate to, boolean now, List<SeasonEntry> entries) {}

  private SeasonWeeks() {}

  /** A show that lasts over a Sunday stands in each of its weeks. */
  static List<Week> of(List<SeasonEntry> entries, LocalDate today) {
    Map<LocalDate, List<SeasonEntry>> weeks = new TreeMap<>();
    for (SeasonEntry entry : entries) {
      for (LocalDate monday = monday(entry.from());
          !monday.isAfter(entry.to());
          monday = monday.plusWeeks(1)) {
        weeks.computeIfAbsent(monday, first -> new ArrayList<>()).add(entry);
      }
    }
    return weeks.entrySet().stream()
        .map(
            week ->
                new Week(
                    week.getKey(),
                    week.getKey().plusDays(6),
                    week.getKey().equals(monday(today)),
                    week.getValue()))
        .toList();
  }

  private static LocalDate monday(LocalDate day) {
    return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }
}
