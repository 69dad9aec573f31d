package org.barreltally.shows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Times of a set-up in the farm's zone, before and after the clocks change, as a second parser
 * reads them with the zone's rules of the feed itself.
 */
class ZonesInCalendarTest {

  @ParameterizedTest(name = "{1} in {0} is told as {2}")
  @CsvSource({
    "America/New_York, 2027-10-30T11:00:00Z, 20271030T070000",
    "America/New_York, 2027-11-13T12:00:00Z, 20271113T070000",
    "America/Halifax, 2027-07-03T10:00:00Z, 20270703T070000",
    "Europe/Stockholm, 2027-03-27T06:00:00Z, 20270327T070000",
    "Europe/Stockholm, 2027-03-28T05:00:00Z, 20270328T070000"
  })
  void a_set_up_is_at_the_hour_on_the_farms_clock(String zone, Instant at, String told) {
    Show show = show(at, LocalDate.ofInstant(at, ZoneId.of(zone)));
    String text = CalendarText.of(List.of(show), ZoneId.of(zone));
    assertTrue(text.contains("DTSTART;TZID=" + zone + ":" + told), text);
    ICalendar read = Biweekly.parse(text).first();
    assertEquals(List.of(), read.validate(ICalVersion.V2_0).getWarnings());
    assertEquals(1, Stream.of(text.split("\r\n")).filter("BEGIN:VTIMEZONE"::equals).count());
    Instant understood =
        read.getEvents().stream()
            .filter(event -> event.getUid().getValue().endsWith("-set-up"))
            .findFirst()
            .orElseThrow()
            .getDateStart()
            .getValue()
            .toInstant();
    assertEquals(at, understood);
  }

  private static Show show(Instant setUp, LocalDate day) {
    Booking booking =
        new Booking(
            "Plum Fair",
            "Fernby",
            day,
            day,
            new DayOrTime(null, setUp),
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null);
    return new Show(
        UUID.fromString("01a0c0de-7000-7000-8000-000000000001"),
        "plum-fair-2027",
        ShowState.ACCEPTED,
        booking,
        setUp,
        setUp.plusSeconds(86_400),
        1,
        0,
        Instant.parse("2027-01-02T03:04:05Z"));
  }
}
