package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import org.barreltally.refusal.InvalidField;

/** The farm's calendar: what day it is, and which instant stands for a day in the book. */
@ApplicationScoped
public class Days {

  /** No record of a maker's syrup is older; an earlier date is a slip of the pen. */
  private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);

  private static final LocalDate LATEST = LocalDate.of(2999, 12, 31);

  private final Clock clock;
  private final FarmZone zones;

  public Days(Clock clock, FarmZone zones) {
    this.clock = clock;
    this.zones = zones;
  }

  /** Now, as exactly as PostgreSQL keeps it (microseconds). */
  public Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }

  /** The farm's date now. */
  public LocalDate today() {
    return dateOf(clock.instant());
  }

  /**
   * The farm's date at an instant, in the zone that held then; its year is the year a movement is
   * booked in.
   */
  public LocalDate dateOf(Instant instant) {
    return LocalDate.ofInstant(instant, zones.zoneAt(instant));
  }

  /** The instant at which a day of the farm begins. */
  public Instant beginning(LocalDate day) {
    return day.atStartOfDay(zoneOn(day)).toInstant();
  }

  /**
   * The instant that stands for a day on which something happened: noon, or now if that is not
   * past.
   */
  public Instant during(LocalDate day) {
    Instant noon = day.atTime(LocalTime.NOON).atZone(zoneOn(day)).toInstant();
    Instant now = now();
    return noon.isAfter(now) ? now : noon;
  }

  /**
   * Checks a day on which something is said to have happened. A phone may already be in tomorrow's
   * UTC date while the farm is not, so the later of the two counts as today.
   *
   * @throws InTheFuture if the day has not come
   * @throws InvalidField if it is missing or before 1900
   */
  public LocalDate happened(LocalDate day, String field) {
    known(day, field);
    LocalDate utc = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    LocalDate latest = utc.isAfter(today()) ? utc : today();
    if (day.isAfter(latest)) {
      throw new InTheFuture(field, day, latest);
    }
    return day;
  }

  /**
   * Checks a day that may be past or to come.
   *
   * @throws InvalidField if it is missing or out of the years 1900 to 2999
   */
  public LocalDate known(LocalDate day, String field) {
    if (day == null) {
      throw new InvalidField(field, "Give the day, for example 2026-03-14.");
    }
    if (day.isBefore(EARLIEST) || day.isAfter(LATEST)) {
      throw new InvalidField(
          field, "The day " + day + " is outside the years 1900 to 2999. Check the year.");
    }
    return day;
  }

  /**
   * Checks an instant at which something is said to have happened, as {@link #happened(LocalDate,
   * String)}.
   */
  public Instant happened(Instant at, String field) {
    if (at == null) {
      throw new InvalidField(field, "Give the time it happened, for example 2026-03-14T16:30:00Z.");
    }
    if (at.isAfter(now())) {
      throw new InTheFuture(field, at, now());
    }
    if (dateOf(at).isBefore(EARLIEST)) {
      throw new InvalidField(field, "The time " + at + " is before 1900. Check the year.");
    }
    return at.truncatedTo(ChronoUnit.MICROS);
  }

  /** The zone that held about noon UTC of a day. */
  private ZoneId zoneOn(LocalDate day) {
    return zones.zoneAt(day.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC));
  }
}
