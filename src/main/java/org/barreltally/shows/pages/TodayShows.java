package org.barreltally.shows.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.barreltally.ledger.Days;
import org.barreltally.shows.Due;
import org.barreltally.shows.Season;
import org.barreltally.web.pages.TodayPart;

/** What is due for shows within the next weeks. */
@ApplicationScoped
class TodayShows implements TodayPart {

  private static final int WEEKS_AHEAD = 6;

  private final Season season;
  private final Days days;

  TodayShows(Season season, Days days) {
    this.season = season;
    this.days = days;
  }

  @Override
  public String words() {
    return "today.shows";
  }

  @Override
  public int order() {
    return 10;
  }

  @Override
  public List<Line> lines() {
    LocalDate today = days.today();
    LocalDate last = today.plusWeeks(WEEKS_AHEAD);
    Stream<Due> due =
        Stream.of(today.getYear(), last.getYear())
            .distinct()
            .flatMap(year -> season.of(year).due().stream());
    return due.filter(one -> !one.on().isAfter(last)).map(one -> line(one, today)).toList();
  }

  private static Line line(Due due, LocalDate today) {
    return new Line(due.words(), "/shows/" + due.show(), due.on(), due.on().isBefore(today));
  }
}
