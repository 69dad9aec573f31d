package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import org.barreltally.ledger.Days;
import org.barreltally.settings.FarmSettings;

/** The shows as a calendar to subscribe to (RFC 5545). */
@ApplicationScoped
public class ShowCalendar {

  /** How long ago a show may have ended to stay in the calendar. */
  private static final int DAYS_BACK = 400;

  private static final int SHOWS_MAX = 2000;

  private final Shows shows;
  private final FarmSettings settings;
  private final Days days;

  ShowCalendar(Shows shows, FarmSettings settings, Days days) {
    this.shows = shows;
    this.settings = settings;
    this.days = days;
  }

  /** All shows to come and those that ended within 400 days, in the farm's zone. */
  @Transactional
  public String text() {
    return CalendarText.of(
        shows.endingFrom(days.today().minusDays(DAYS_BACK), SHOWS_MAX), settings.now().zone());
  }
}
