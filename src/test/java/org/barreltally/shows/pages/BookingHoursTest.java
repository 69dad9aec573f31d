package org.barreltally.shows.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.barreltally.web.pages.PageFarm;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A time of day typed beside a day is by the farm's clock. */
class BookingHoursTest {

  private static final PageFarm NEW_YORK =
      new PageFarm() {
        @Override
        public LocalDate today() {
          return LocalDate.of(2026, 6, 1);
        }

        @Override
        public ZoneId zone(Instant at) {
          return ZoneId.of("America/New_York");
        }

        @Override
        public String currency() {
          return "USD";
        }
      };

  /** America/New_York is at UTC−4 until 2026-11-01 and at UTC−5 then (IANA time zone database). */
  @ParameterizedTest
  @CsvSource({
    "2026-10-02,17:30,2026-10-02T21:30:00Z",
    "2026-12-02,17:30,2026-12-02T22:30:00Z",
    "2026-10-02,'',2026-10-02",
    "2026-10-02,late,2026-10-02Tlate",
  })
  void it_becomes_an_instant(String day, String hour, String told) {
    MultivaluedMap<String, String> said = new MultivaluedHashMap<>();
    said.putSingle("setUp.hour", hour);
    said.putSingle("deadlines.pay.hour", hour);
    ObjectNode json = JsonNodeFactory.instance.objectNode().put("setUp", day);
    json.putObject("deadlines").put("pay", day).put("apply", day);
    BookingShape.withHours(json, said, NEW_YORK);
    assertEquals(told, json.path("setUp").textValue());
    assertEquals(told, json.path("deadlines").path("pay").textValue());
    assertEquals(day, json.path("deadlines").path("apply").textValue());
  }
}
