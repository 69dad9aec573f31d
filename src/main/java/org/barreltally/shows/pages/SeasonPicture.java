package org.barreltally.shows.pages;

import io.quarkus.qute.TemplateData;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.barreltally.shows.ShowState;

/**
 * The months of a season drawn below each other, a column for each day of the month. What stands on
 * the same days is stacked, so that nothing covers anything. In units of the drawing, 1000 wide.
 */
@TemplateData
public record SeasonPicture(int width, int height, List<Month> months) {

  private static final int LEFT = 64;
  private static final int DAY = 30;
  private static final int HEAD = 18;
  private static final int LANE = 22;
  private static final int LETTER = 7;

  /** A month with its days and what stands in it. */
  @TemplateData
  public record Month(
      YearMonth month, int y, int height, List<Day> days, Integer todayX, List<Bar> bars) {

    /** Where its name is written. */
    public int nameY() {
      return y + HEAD + 15;
    }

    /** Where the numbers of its days are written. */
    public int dayY() {
      return y + 12;
    }

    public int bottom() {
      return y + height;
    }

    public LocalDate first() {
      return month.atDay(1);
    }
  }

  /** A day of the month. */
  @TemplateData
  public record Day(int number, int x, int middle, boolean weekend) {}

  /** Something that stands on days: {@code look} is its class in the style sheet. */
  @TemplateData
  public record Bar(
      SeasonEntry entry, int x, int y, int width, String look, int textX, boolean before) {

    public int textY() {
      return y + 13;
    }

    public String anchor() {
      return before ? "end" : "start";
    }

    public int middleX() {
      return x + width / 2;
    }
  }

  static SeasonPicture of(List<SeasonEntry> entries, LocalDate today) {
    List<Month> months = new ArrayList<>();
    int y = 0;
    if (!entries.isEmpty()) {
      YearMonth first = YearMonth.from(entries.get(0).from());
      YearMonth last =
          entries.stream().map(e -> YearMonth.from(e.to())).max(YearMonth::compareTo).orElse(first);
      for (YearMonth month = first; !month.isAfter(last); month = month.plusMonths(1)) {
        Month drawn = month(month, y, entries, today);
        months.add(drawn);
        y += drawn.height() + 6;
      }
    }
    return new SeasonPicture(1000, y, months);
  }

  private static Month month(YearMonth month, int y, List<SeasonEntry> entries, LocalDate today) {
    List<Integer> ends = new ArrayList<>();
    List<Bar> bars = new ArrayList<>();
    for (SeasonEntry entry : entries) {
      if (!YearMonth.from(entry.from()).isAfter(month)
          && !YearMonth.from(entry.to()).isBefore(month)) {
        bars.add(bar(entry, month, y, ends));
      }
    }
    List<Day> days =
        IntStream.rangeClosed(1, month.lengthOfMonth())
            .mapToObj(number -> day(month, number))
            .toList();
    return new Month(
        month,
        y,
        HEAD + Math.max(1, ends.size()) * LANE + 2,
        days,
        YearMonth.from(today).equals(month) ? x(today.getDayOfMonth()) + DAY / 2 : null,
        bars);
  }

  /** The bar lies in the first lane in which it and its name cover nothing. */
  private static Bar bar(SeasonEntry entry, YearMonth month, int y, List<Integer> ends) {
    LocalDate from = entry.from().isBefore(month.atDay(1)) ? month.atDay(1) : entry.from();
    LocalDate to = entry.to().isAfter(month.atEndOfMonth()) ? month.atEndOfMonth() : entry.to();
    int x = x(from.getDayOfMonth());
    int width = x(to.getDayOfMonth()) + DAY - x;
    int text = (entry.show().booking().name().length() + 9) * LETTER;
    boolean before = x + width + text > 1000 && x - text > LEFT;
    int begins = before ? x - text : x;
    int lane = 0;
    while (lane < ends.size() && ends.get(lane) > begins) {
      lane++;
    }
    int until = before ? x + width + 4 : x + width + text;
    if (lane == ends.size()) {
      ends.add(until);
    } else {
      ends.set(lane, until);
    }
    return new Bar(
        entry,
        x + 1,
        y + HEAD + lane * LANE,
        width - 2,
        look(entry),
        before ? x - 5 : x + width + 5,
        before);
  }

  private static String look(SeasonEntry entry) {
    String look =
        switch (entry.kind()) {
          case APPLY, PAY -> entry.open() ? "mark" : "past";
          case SET_UP -> "setup";
          case SHOW ->
              entry.isOff() ? "off" : entry.show().state() == ShowState.APPLIED ? "asked" : "bar";
        };
    return entry.clashes().isEmpty() ? look : look + " clashing";
  }

  private static Day day(YearMonth month, int number) {
    DayOfWeek day = month.atDay(number).getDayOfWeek();
    return new Day(
        number,
        x(number),
        x(number) + DAY / 2,
        day == DayOfWeek.SATURDAY || day == DayOfWeek.SUNDAY);
  }

  private static int x(int dayOfMonth) {
    return LEFT + (dayOfMonth - 1) * DAY;
  }
}
