package org.barreltally.shows;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.property.Status;
import io.quarkus.test.junit.QuarkusTest;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.barreltally.Owner;
import org.junit.jupiter.api.Test;

/**
 * The calendar as another program reads it: a second, independent parser (biweekly), and the rules
 * of RFC 5545 for lines. Sections named are those of RFC 5545.
 */
@QuarkusTest
class CalendarTest {

  private static final String NAME =
      "Fernby; Harvest, \\ Fair – the one with the very long name beside the river ärö";

  @Test
  void a_show_its_set_up_and_its_deadlines_are_read_by_a_second_parser() {
    String id =
        Fairs.booked(
            NAME.replace("\\", "\\\\"),
            "2027-10-03",
            "2027-10-04",
            """
            , 'state': 'accepted', 'setUp': '2027-10-02T20:30:00Z', 'helper': 'Marla, the elder',
             'rainPlan': 'Move into the barn;\\nask by six', 'papers': ['Permit', 'Insurance'],
             'deadlines': {'apply': '2027-03-01', 'pay': '2027-08-15T16:00:00Z'}
            """);
    ICalendar calendar = read();
    assertEquals(List.of(), calendar.validate(ICalVersion.V2_0).getWarnings());

    VEvent show = event(calendar, id + "-show");
    assertEquals(NAME, show.getSummary().getValue());
    assertEquals("Fernby", show.getLocation().getValue());
    assertFalse(show.getDateStart().getValue().hasTime());
    assertEquals("2027-10-03", day(show.getDateStart().getValue()));
    assertEquals("2027-10-05", day(show.getDateEnd().getValue())); // the day after, 3.6.1
    assertEquals(Status.confirmed(), show.getStatus());
    assertTrue(show.getDescription().getValue().contains("Helper: Marla, the elder"));
    assertTrue(
        show.getDescription().getValue().contains("In rain: Move into the barn;\nask by six"));
    assertTrue(show.getDescription().getValue().contains("Bring: Permit, Insurance"));

    VEvent setUp = event(calendar, id + "-set-up");
    assertTrue(setUp.getDateStart().getValue().hasTime());
    assertEquals(
        Instant.parse("2027-10-02T20:30:00Z"), setUp.getDateStart().getValue().toInstant());

    VEvent apply = event(calendar, id + "-apply");
    assertEquals("2027-03-01", day(apply.getDateStart().getValue()));
    assertEquals(
        List.of(Duration.ofDays(-7), Duration.ofDays(-1)),
        apply.getAlarms().stream().map(CalendarTest::before).toList());
    assertTrue(
        apply.getAlarms().stream()
            .allMatch(
                alarm ->
                    alarm.getAction().isDisplay() && !alarm.getDescription().getValue().isBlank()));
    assertEquals(
        Instant.parse("2027-08-15T16:00:00Z"),
        event(calendar, id + "-pay").getDateStart().getValue().toInstant());
  }

  @Test
  void the_uid_stays_the_sequence_grows_and_a_show_called_off_is_cancelled() {
    String id =
        Fairs.booked(
            Fairs.newName("Plum Fair"),
            "2027-05-01",
            "2027-05-01",
            ", 'deadlines': {'pay': '2027-04-01'}");
    VEvent before = event(read(), id + "-show");
    assertEquals(0, before.getSequence().getValue());
    assertEquals(Status.tentative(), before.getStatus());
    Fairs.patch(id, "{'starts': '2027-05-02', 'ends': '2027-05-02'}", null).statusCode(200);
    VEvent moved = event(read(), id + "-show");
    assertEquals(1, moved.getSequence().getValue());
    assertEquals("2027-05-02", day(moved.getDateStart().getValue()));
    assertFalse(moved.getDateTimeStamp().getValue().before(before.getDateTimeStamp().getValue()));
    posts("/api/shows/" + id + "/call-off", "{'reason': 'No ground'}").statusCode(200);
    ICalendar calendar = read();
    VEvent off = event(calendar, id + "-show");
    assertEquals(2, off.getSequence().getValue());
    assertEquals(Status.cancelled(), off.getStatus());
    assertTrue(off.getSummary().getValue().endsWith("(called off)"));
    assertEquals(List.of(), event(calendar, id + "-pay").getAlarms());
    Instant changed = Instant.parse(Fairs.show(id).extract().<String>path("changedAt"));
    assertEquals(
        changed.getEpochSecond(), off.getDateTimeStamp().getValue().toInstant().getEpochSecond());
  }

  @Test
  void lines_end_as_they_must_and_are_folded_at_75_octets() {
    Fairs.booked("Ä".repeat(100), "2027-05-03", "2027-05-03", "");
    String text = asks().get("/api/shows.ics").then().statusCode(200).extract().asString();
    assertTrue(text.endsWith("END:VCALENDAR\r\n"));
    assertEquals(
        text.replace("\r\n", "").length() + 2 * text.split("\r\n", -1).length - 2, text.length());
    for (String line : text.split("\r\n")) {
      assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line); // 3.1
    }
  }

  @Test
  void it_is_a_calendar_to_programs_and_only_for_those_who_sign_in() {
    asks().get("/api/shows.ics").then().statusCode(200).contentType("text/calendar;charset=UTF-8");
    io.restassured.RestAssured.given().get("/api/shows.ics").then().statusCode(401);
  }

  @Test
  void the_same_shows_make_the_same_text() {
    Fairs.booked(Fairs.newName("Same"), "2027-05-04", "2027-05-04", "");
    assertEquals(asks().get("/api/shows.ics").asString(), asks().get("/api/shows.ics").asString());
  }

  private ICalendar read() {
    return Biweekly.parse(
            Owner.asks().get("/api/shows.ics").then().statusCode(200).extract().asString())
        .first();
  }

  private static VEvent event(ICalendar calendar, String uid) {
    List<VEvent> found =
        calendar.getEvents().stream().filter(e -> e.getUid().getValue().equals(uid)).toList();
    assertEquals(1, found.size(), uid);
    return found.get(0);
  }

  private static Duration before(VAlarm alarm) {
    return Duration.ofMillis(alarm.getTrigger().getDuration().toMillis());
  }

  /** A day without time is read in the zone of the machine. */
  private static String day(biweekly.util.ICalDate date) {
    return LocalDate.ofInstant(date.toInstant(), ZoneId.systemDefault()).toString();
  }
}
