package org.barreltally.shows;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Period;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.Temporal;
import java.time.temporal.TemporalAmount;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.TimeZone;
import net.fortuna.ical4j.model.TimeZoneRegistryFactory;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.parameter.Related;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Status;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Transp;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableAction;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * Shows as text of RFC 5545: each over its days, its set-up, and its deadlines as events that alarm
 * a week and a day before.
 */
final class CalendarText {

  private static final String PRODUCT = "-//Barreltally//Shows//EN";
  private static final Duration TIMED_LASTS = Duration.ofHours(1);
  private static final List<TemporalAmount> BEFORE_DEADLINE =
      List.of(Period.ofDays(-7), Period.ofDays(-1));
  private static final List<TemporalAmount> BEFORE_SET_UP = List.of(Duration.ofHours(-12));

  private static final int UNFOLDED = 100_000;

  private CalendarText() {}

  /**
   * @param zone of the farm, in which hours are told
   */
  static String of(List<Show> shows, ZoneId zone) {
    Calendar calendar = new Calendar();
    calendar.add(new ProdId(PRODUCT));
    calendar.add(ImmutableVersion.VERSION_2_0);
    TimeZone known =
        TimeZoneRegistryFactory.getInstance().createRegistry().getTimeZone(zone.getId());
    if (known != null && !isUtc(zone)) {
      calendar.add(known.getVTimeZone());
    }
    List<VEvent> events = new ArrayList<>();
    shows.forEach(show -> add(show, zone, events));
    events.forEach(calendar::add);
    try (StringWriter text = new StringWriter()) {
      // The library would fold by characters; lines are folded by octets below.
      new CalendarOutputter(false, UNFOLDED).output(calendar, text);
      return FoldedLines.of(text.toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static boolean isUtc(ZoneId zone) {
    return zone.getRules().isFixedOffset();
  }

  private static void add(Show show, ZoneId zone, List<VEvent> events) {
    VEvent days = event(show, "show", title(show), ImmutableTransp.TRANSPARENT);
    days.add(new DtStart<>(show.starts()));
    days.add(new DtEnd<>(show.ends().plusDays(1)));
    days.add(new Location(show.town()));
    days.add(new Description(ShowWords.of(show)));
    events.add(days);
    Booking booking = show.booking();
    if (booking.setUp() != null) {
      events.add(dated(show, "set-up", "Set up: ", booking.setUp(), zone, BEFORE_SET_UP));
    }
    if (booking.deadlines() != null && booking.deadlines().apply() != null) {
      events.add(
          dated(
              show,
              "apply",
              "Apply by today: ",
              booking.deadlines().apply(),
              zone,
              BEFORE_DEADLINE));
    }
    if (booking.deadlines() != null && booking.deadlines().pay() != null) {
      events.add(
          dated(show, "pay", "Pay by today: ", booking.deadlines().pay(), zone, BEFORE_DEADLINE));
    }
  }

  private static VEvent dated(
      Show show,
      String part,
      String words,
      DayOrTime when,
      ZoneId zone,
      List<TemporalAmount> alarms) {
    VEvent event = event(show, part, words + title(show), ImmutableTransp.TRANSPARENT);
    if (when.day() != null) {
      during(event, when.day(), when.day().plusDays(1));
    } else {
      ZonedDateTime from = when.at().atZone(zone);
      if (isUtc(zone)) {
        during(event, when.at(), when.at().plus(TIMED_LASTS));
      } else {
        during(event, from, from.plus(TIMED_LASTS));
      }
    }
    if (show.state().binds()) {
      alarms.forEach(before -> event.add(alarm(before, words + title(show))));
    }
    return event;
  }

  private static <T extends Temporal> void during(VEvent event, T from, T to) {
    event.add(new DtStart<>(from));
    event.add(new DtEnd<>(to));
  }

  /**
   * Without METHOD, DTSTAMP says when the event was last revised (RFC 5545, 3.8.7.2), so the same
   * shows make the same text.
   */
  private static VEvent event(Show show, String part, String summary, Transp transp) {
    VEvent event = new VEvent(false);
    event.add(new Uid(show.id() + "-" + part));
    event.add(new DtStamp(show.changedAt()));
    event.add(new LastModified(show.changedAt()));
    event.add(new Sequence(show.sequence()));
    event.add(new Summary(summary));
    event.add(status(show.state()));
    event.add(transp);
    return event;
  }

  private static VAlarm alarm(TemporalAmount before, String words) {
    VAlarm alarm = new VAlarm();
    alarm.add(ImmutableAction.DISPLAY);
    Trigger trigger = new Trigger(before);
    trigger.add(Related.START);
    alarm.add(trigger);
    alarm.add(new Description(words));
    return alarm;
  }

  private static Status status(ShowState state) {
    return switch (state) {
      case APPLIED -> ImmutableStatus.VEVENT_TENTATIVE;
      case DECLINED, CALLED_OFF -> ImmutableStatus.VEVENT_CANCELLED;
      default -> ImmutableStatus.VEVENT_CONFIRMED;
    };
  }

  private static String title(Show show) {
    return switch (show.state()) {
      case DECLINED -> show.name() + " (declined)";
      case CALLED_OFF -> show.name() + " (called off)";
      default -> show.name();
    };
  }
}
