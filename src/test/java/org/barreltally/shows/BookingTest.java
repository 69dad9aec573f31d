package org.barreltally.shows;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.shows.Fairs.accepted;
import static org.barreltally.shows.Fairs.book;
import static org.barreltally.shows.Fairs.booked;
import static org.barreltally.shows.Fairs.newName;
import static org.barreltally.shows.Fairs.patch;
import static org.barreltally.shows.Fairs.show;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ExtractableResponse;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.ColorClass;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/** Shows booked, changed and brought from state to state. */
@QuarkusTest
class BookingTest {

  @Inject ShelfFixture shelf;
  @Inject Awards awards;

  @Test
  void name_town_and_days_are_enough() {
    String name = newName("Plum Fair");
    book(name, "2027-05-01", "2027-05-02", "")
        .statusCode(201)
        .header("Location", containsString("/api/shows/"))
        .header("ETag", equalTo("\"1\""))
        .body("state", equalTo("applied"))
        .body("code", matchesPattern("plum-fair-[a-z0-9]+-2027"))
        .body("helper", nullValue());
  }

  @Test
  void a_booking_told_twice_under_one_id_is_one_show() {
    UUID key = UUID.randomUUID();
    String said =
        "{'name': '%s', 'town': 'Fernby', 'starts': '2032-05-01', 'ends': '2032-05-01', 'helper': 'Piet'}"
            .formatted(newName("Twice"));
    String first = posts("/api/shows", said, key).statusCode(201).extract().asString();
    posts("/api/shows", said, key).statusCode(201).body(equalTo(first));
    reads("/api/shows?year=2032").body("items.size()", equalTo(1));
    posts("/api/shows", said.replace("Piet", "Marla"), key)
        .statusCode(409)
        .body("code", equalTo("id-reused"));
  }

  @Test
  void a_second_show_of_that_name_in_a_year_has_a_code_of_its_own() {
    String name = newName("Plum Fair");
    String code = book(name, "2027-05-01", "2027-05-01", "").extract().path("code");
    book(name, "2027-08-01", "2027-08-01", "").body("code", equalTo(code + "-2"));
    book(name, "2027-09-01", "2027-09-01", "").body("code", equalTo(code + "-3"));
    book("百", "2027-09-01", "2027-09-01", "").body("code", matchesPattern("show-2027(-\\d+)?"));
  }

  @Test
  void everything_that_is_booked_is_read_again_as_it_was_said() {
    String id =
        booked(
            newName("Fernby Harvest Fair"),
            "2026-10-03",
            "2026-10-04",
            """
            , 'state': 'accepted', 'setUp': '2026-10-03T11:00:00Z',
             'deadlines': {'apply': '2026-06-01', 'pay': '2026-09-01T16:00:00Z'},
             'booth': {'fee': {'amount': 120, 'currency': 'USD'}, 'percentOfSales': 5.5,
                       'deposit': {'amount': 40, 'currency': 'USD'},
                       'tables': [{'lengthInches': 96, 'depthInches': 30, 'tiers': 3}]},
             'kitItems': ['Canopy'], 'papers': ['Booth permit'], 'rainPlan': 'Sheep barn',
             'vehicleLoad': {'value': 900, 'unit': 'lb'}, 'visitorsExpected': 4000,
             'float': {'amount': 150, 'currency': 'USD'}, 'hoursOpen': 14.5
            """);
    show(id)
        .body("setUp", equalTo("2026-10-03T11:00:00Z"))
        .body("deadlines.apply", equalTo("2026-06-01"))
        .body("deadlines.pay", equalTo("2026-09-01T16:00:00Z"))
        .body("booth.percentOfSales", equalTo(5.5f))
        .body("booth.tables[0].tiers", equalTo(3))
        .body("float.amount", equalTo(150.0f))
        .body("vehicleLoad.value", equalTo(900))
        .body("hoursOpen", equalTo(14.5f))
        .body("next", hasItems("paid", "packed", "called-off"));
  }

  @Test
  void a_change_keeps_what_it_does_not_name_and_null_takes_away() {
    String id =
        booked(
            newName("Plum Fair"),
            "2027-05-08",
            "2027-05-08",
            ", 'rainPlan': 'Stay', 'booth': {'fee': {'amount': 50, 'currency': 'USD'}, 'percentOfSales': 4}");
    patch(id, "{'rainPlan': null, 'booth': {'fee': {'amount': 60}}}", null)
        .statusCode(200)
        .header("ETag", equalTo("\"2\""))
        .body("rainPlan", nullValue())
        .body("booth.fee.amount", equalTo(60.0f))
        .body("booth.fee.currency", equalTo("USD"))
        .body("booth.percentOfSales", equalTo(4));
    patch(id, "{'booth': {'fee': {'amount': 60}}}", null).header("ETag", equalTo("\"2\""));
  }

  @Test
  void of_two_helpers_who_read_the_same_version_the_second_is_told() {
    String id = booked(newName("Plum Fair"), "2027-05-09", "2027-05-09", "");
    patch(id, "{'notes': 'By the gate'}", "\"1\"").statusCode(200);
    patch(id, "{'notes': 'By the barn'}", "\"1\"")
        .statusCode(412)
        .body("code", equalTo("changed-since"));
    posts("/api/shows/" + id + "/state", "{'state': 'accepted'}").statusCode(200);
    show(id).body("notes", equalTo("By the gate")).body("version", equalTo(3));
  }

  @Test
  void helper_vehicle_and_kit_are_at_one_show_at_a_time_and_set_up_counts() {
    String helper = newName("Marla");
    String van = newName("Van");
    String first =
        booked(
            newName("First"),
            "2027-06-05",
            "2027-06-06",
            ", 'state': 'accepted', 'helper': '%s', 'vehicle': '%s'".formatted(helper, van));
    String code = show(first).extract().path("code");
    String after = ", 'helper': '  %s ', 'vehicle': '%s'".formatted(helper.toUpperCase(), van);
    book(newName("Second"), "2027-06-06", "2027-06-07", after)
        .statusCode(409)
        .body("code", equalTo("show-clash"))
        .body("detail", containsString(code))
        .body("errors.field", equalTo(List.of("helper", "vehicle")));
    book(newName("Second"), "2027-06-08", "2027-06-08", after + ", 'setUp': '2027-06-06T20:00:00Z'")
        .statusCode(409)
        .body("code", equalTo("show-clash"));
    book(newName("Second"), "2027-06-06", "2027-06-07", after + ", 'allowOverlap': true")
        .statusCode(201);
    String later = booked(newName("Later"), "2027-06-08", "2027-06-08", after);
    patch(later, "{'starts': '2027-06-06'}", null).statusCode(409);
    patch(later, "{'notes': 'Fine'}", null).statusCode(200);
  }

  @Test
  void a_declined_or_called_off_show_binds_nobody_until_it_is_taken_up_again() {
    String kit = newName("Kit");
    String with = ", 'tableKit': '%s'".formatted(kit);
    String first = booked(newName("First"), "2027-06-12", "2027-06-12", with);
    posts("/api/shows/" + first + "/state", "{'state': 'declined'}").statusCode(200);
    String second = booked(newName("Second"), "2027-06-12", "2027-06-12", with);
    posts("/api/shows/" + first + "/state", "{'state': 'accepted'}")
        .statusCode(409)
        .body("code", equalTo("show-clash"));
    posts("/api/shows/" + second + "/call-off", "{'reason': 'Moved'}").statusCode(200);
    posts("/api/shows/" + first + "/state", "{'state': 'accepted'}").statusCode(200);
  }

  @Test
  void a_show_marked_as_paid_notes_the_rest_of_its_fee() {
    String id =
        booked(
            newName("Paid"),
            "2027-06-13",
            "2027-06-13",
            ", 'state': 'accepted', 'booth': {'fee': {'amount': 100, 'currency': 'USD'}}");
    posts(
            "/api/shows/" + id + "/payments",
            "{'amount': {'amount': 40, 'currency': 'USD'}, 'note': 'Deposit'}")
        .statusCode(201);
    show(id).body("state", equalTo("accepted")).body("paid.amount", equalTo(40.0f));
    posts("/api/shows/" + id + "/state", "{'state': 'paid'}").statusCode(200);
    show(id).body("paid.amount", equalTo(100.0f)).body("payments.size()", equalTo(2));
  }

  @Test
  void the_season_tells_what_is_due_next_until_it_is_done() {
    String due = "due.findAll { it.show == '%s' }.what";
    String id =
        booked(
            newName("Season"),
            "2027-07-10",
            "2027-07-11",
            """
            , 'setUp': '2027-07-09', 'deadlines': {'apply': '2027-02-01', 'pay': '2027-05-01'},
             'booth': {'fee': {'amount': 75, 'currency': 'USD'}}
            """);
    reads("/api/shows/season?year=2027").body(due.formatted(id), equalTo(List.of("apply", "pay")));
    patch(id, "{'appliedOn': '2026-11-02'}", null).statusCode(200);
    reads("/api/shows/season?year=2027").body(due.formatted(id), equalTo(List.of("pay", "answer")));
    posts("/api/shows/" + id + "/state", "{'state': 'paid'}").statusCode(200);
    reads("/api/shows/season?year=2027")
        .body(due.formatted(id), equalTo(List.of("pack", "set-up", "run")))
        .body("due.find { it.show == '%s' }.on".formatted(id), equalTo("2027-07-08"));
    String past = accepted(newName("Past"), "2026-10-03");
    posts("/api/shows/" + past + "/state", "{'state': 'packed'}").statusCode(200);
    reads("/api/shows/season?year=2026")
        .body("due.find { it.show == '%s' }.what".formatted(past), equalTo("count-back"))
        .body("due.find { it.show == '%s' }.overdue".formatted(past), equalTo(true));
  }

  @Test
  void shows_are_listed_by_day_year_and_state() {
    String early = booked(newName("Listed"), "2031-01-05", "2031-01-05", "");
    String late = accepted(newName("Listed"), "2031-12-05");
    List<String> own = List.of(early, late);
    List<String> all = listed("/api/shows?year=2031&limit=500");
    assertEquals(own, all.stream().filter(own::contains).toList());
    List<String> accepted = listed("/api/shows?year=2031&state=accepted&limit=500");
    assertEquals(List.of(late), accepted.stream().filter(own::contains).toList());
    List<String> parts = new ArrayList<>();
    String next = "";
    while (next != null) {
      ExtractableResponse<Response> part = reads("/api/shows?year=2031&limit=1" + next).extract();
      parts.addAll(part.path("items.id"));
      next = part.path("next") == null ? null : "&after=" + part.path("next");
    }
    assertEquals(all, parts);
    reads("/api/shows?state=declined&limit=500").body("items.id", not(hasItem(early)));
  }

  private static List<String> listed(String path) {
    return reads(path).extract().path("items.id");
  }

  @Test
  void an_award_shows_on_the_lot_and_the_newest_judgement_holds() {
    String size = Fairs.newSize();
    String lot = shelf.lotWith(5, size);
    String id = accepted("Fernby Gala", "2026-09-05");
    String award = "{'class': 'Amber, single jug', 'lot': '%s', 'container': '%s'%s}";
    posts("/api/shows/" + id + "/awards", award.formatted(lot, size, "")).statusCode(201);
    reads("/api/lots/" + lot)
        .body("awards[0].class", equalTo("Amber, single jug"))
        .body("awards[0].words", nullValue());
    posts(
            "/api/shows/" + id + "/awards",
            award.formatted(lot, size, ", 'score': 97.5, 'ribbon': 'Blue ribbon'"))
        .statusCode(201);
    reads("/api/lots/" + lot)
        .body("awards.size()", equalTo(1))
        .body("awards[0].score", equalTo(97.5f))
        .body("awards[0].words", equalTo("Blue ribbon, Amber, single jug, Fernby Gala 2026"));
    show(id).body("awards.size()", equalTo(1));
    reads("/api/shows/" + id + "/awards").body("items[0].ribbon", equalTo("Blue ribbon"));
    assertEquals(
        List.of("Blue ribbon"),
        awards.wonOnHand(size, ColorClass.AMBER).stream().map(Award::ribbon).toList());
    assertEquals(List.of(), awards.wonOnHand(size, ColorClass.DARK));
    posts("/api/lots/" + lot + "/hold", "{'reason': 'Tastes of smoke'}").statusCode(200);
    assertEquals(List.of(), awards.wonOnHand(size, ColorClass.AMBER));
  }
}
