package org.barreltally.gifts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Latest days to send, worked out with a wall calendar of 2026: 24 December is a Thursday, 25
 * December a Friday, 26 November (closed) a Thursday.
 */
class LatestSendTest {

  private static final Zone NEAR =
      new Zone("near", 2, List.of("US"), List.of(), List.of("059", "03"));
  private static final Zone FAR = new Zone("far", 5, List.of("US"), List.of(), List.of());
  private static final Zone ISLANDS =
      new Zone("islands", 9, List.of("US"), List.of("HI"), List.of());
  private static final Zone WORLD = new Zone("world", 15, List.of(), List.of(), List.of());

  private static final CarrierTable POST =
      new CarrierTable(
          "Parcel post",
          LocalDate.parse("2026-11-01"),
          List.of(Weekday.MON, Weekday.TUE, Weekday.WED, Weekday.THU, Weekday.FRI, Weekday.SAT),
          List.of(LocalDate.parse("2026-11-26"), LocalDate.parse("2026-12-25")),
          List.of(WORLD, FAR, NEAR, ISLANDS));

  @ParameterizedTest(name = "{0} days before {1} is {2}")
  @CsvSource({
    "0, 2026-12-24, 2026-12-24", // handed over and there on the same Thursday
    "2, 2026-12-24, 2026-12-22", // Thursday, Wednesday, Tuesday
    "5, 2026-12-24, 2026-12-18", // past the Sunday: Wed Tue Mon Sat Fri
    "2, 2026-12-25, 2026-12-22", // closed on the 25th: it must be there on the 24th
    "2, 2026-12-27, 2026-12-23", // a Sunday: there on Saturday, past the closed Friday
    "1, 2026-11-27, 2026-11-25" // Friday, past Thanksgiving
  })
  void is_worked_back_over_days_on_which_nothing_is_carried(
      int days, LocalDate wantedBy, LocalDate latest) {
    Zone zone = new Zone("any", days, null, null, null);
    assertEquals(Optional.of(latest), POST.latestSend(wantedBy, zone));
  }

  @Test
  void nothing_is_carried_on_weekends_where_nobody_said() {
    CarrierTable usual = new CarrierTable("Van", null, null, null, List.of(FAR));
    // Thursday the 24th, five days back past a weekend: Wed Tue Mon Fri Thu.
    assertEquals(
        Optional.of(LocalDate.parse("2026-12-17")),
        usual.latestSend(LocalDate.parse("2026-12-24"), FAR));
  }

  @Test
  void a_carrier_who_never_carries_has_no_latest_day() {
    CarrierTable never = new CarrierTable("None", null, List.of(), null, List.of(FAR));
    assertEquals(Optional.empty(), never.latestSend(LocalDate.parse("2026-12-24"), FAR));
  }

  @ParameterizedTest(name = "{0} {1} {2} is {3}")
  @CsvSource({
    "US, VT, 05999, near",
    "US, VT, 05401, far",
    "US, HI, 96801, islands",
    "US, HI, 03999, near",
    "CA, ON, K1A 0B1, world"
  })
  void an_address_is_in_the_zone_that_describes_it_most_closely(
      String country, String region, String postcode, String zone) {
    Address address = new Address(List.of("1 Tarn Lane"), "Fernby", region, postcode, country);
    assertEquals(zone, POST.zone(address).orElseThrow().name());
  }
}
