package org.barreltally.pricing;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.pricing.EnteredLists.entered;
import static org.barreltally.pricing.EnteredLists.list;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Price lists as an owner enters, replaces and withdraws them. */
@QuarkusTest
class PriceListsOverRestTest {

  @Inject PriceLists lists;

  @Test
  void a_list_is_answered_as_it_was_entered() {
    ValidatableResponse answer =
        asks()
            .contentType("application/json")
            .body(list("show", "2026-07-01", "9.00", "").replace('\'', '"'))
            .post("/api/price-lists")
            .then()
            .statusCode(201);
    String id = answer.extract().path("id");
    answer.header("Location", endsWith("/api/price-lists/" + id));
    ValidatableResponse read =
        reads("/api/price-lists/" + id)
            .body("audience", equalTo("show"))
            .body("validFrom", equalTo("2026-07-01"))
            .body("validTo", nullValue())
            .body("version", equalTo(1))
            .body("currency", equalTo("USD"))
            .body("taxIncluded", equalTo(false))
            .body("lines.container", contains("HP", "PT", "QT", "PT"))
            .body("lines[3].grade", equalTo("golden"))
            .body("lines[1].price.amount.toDouble()", equalTo(15.0))
            .body("lines.productClass", contains("food", "food", "food", "food"))
            .body("deals", hasSize(1))
            .body("deals[0].count", equalTo(2))
            .body("warnings", hasSize(0));
    assertEquals("\"newest\"", read.extract().header("ETag"));
    assertTrue(lists.at(UUID.fromString(id)).price("HP", null).isPresent());
  }

  @Test
  void a_list_said_twice_under_one_id_is_entered_once() {
    UUID key = UUID.randomUUID();
    String said = list("retail", "2026-07-01", "9.00", "");
    String id = posts("/api/price-lists", said, key).statusCode(201).extract().path("id");
    posts("/api/price-lists", said, key).statusCode(201).body("id", equalTo(id));
    posts("/api/price-lists", said.replace("9.00", "8.00"), key)
        .statusCode(409)
        .body("code", equalTo("id-reused"));
  }

  @Test
  void a_new_version_holds_from_its_first_day_and_the_old_one_stays_as_it_was() {
    String first = entered(list("wholesale", "2091-01-01", "6.00", ""));
    String second =
        entered(list("wholesale", "2091-06-01", "6.50", "'replaces': '%s', ".formatted(first)));
    reads("/api/price-lists/" + second)
        .body("version", equalTo(2))
        .body("replaces", equalTo(first));
    reads("/api/price-lists/" + first)
        .body("replacedBy", equalTo(second))
        .body("lines[0].price.amount.toDouble()", equalTo(6.0))
        .header("ETag", "\"replaced\"");
    assertEquals(first, current("wholesale", "2091-05-31"));
    assertEquals(second, current("wholesale", "2091-06-01"));
    assertEquals(
        second,
        lists
            .holding(UUID.fromString(first), LocalDate.of(2091, 7, 1))
            .orElseThrow()
            .id()
            .toString());
    posts(
            "/api/price-lists",
            list("wholesale", "2091-07-01", "7.00", "'replaces': '%s', ".formatted(first)))
        .statusCode(409)
        .body("code", equalTo("already-replaced"))
        .body("errors.field", hasItem("replaces"))
        .body("detail", containsString(second));
    posts(
            "/api/price-lists",
            list("wholesale", "2091-05-31", "7.00", "'replaces': '%s', ".formatted(second)))
        .statusCode(422)
        .body("code", equalTo("before-replaced"));
    posts(
            "/api/price-lists",
            list("retail", "2091-07-01", "7.00", "'replaces': '%s', ".formatted(second)))
        .statusCode(422)
        .body("code", equalTo("another-audience"));
  }

  @Test
  void of_two_lists_for_an_audience_the_later_holds_until_its_last_day() {
    String all = entered(list("bulk", "2092-01-01", "6.00", ""));
    String fair = entered(list("bulk", "2092-08-01", "5.00", "'validTo': '2092-08-31', "));
    assertEquals(all, current("bulk", "2092-07-31"));
    assertEquals(fair, current("bulk", "2092-08-31"));
    assertEquals(all, current("bulk", "2092-09-01"));
  }

  @Test
  void of_many_who_replace_one_list_at_once_one_succeeds() throws Exception {
    String first = entered(list("show", "2093-01-01", "6.00", ""));
    ExecutorService writers = Executors.newFixedThreadPool(6);
    try {
      Callable<Integer> replace =
          () ->
              posts(
                      "/api/price-lists",
                      list("show", "2093-02-01", "7.00", "'replaces': '%s', ".formatted(first)))
                  .extract()
                  .statusCode();
      List<Integer> answers =
          writers.invokeAll(IntStream.range(0, 6).mapToObj(i -> replace).toList()).stream()
              .map(PriceListsOverRestTest::done)
              .sorted()
              .toList();
      assertEquals(List.of(201, 409, 409, 409, 409, 409), answers);
    } finally {
      writers.shutdownNow();
    }
  }

  @Test
  void a_list_is_withdrawn_once_by_somebody_who_has_read_it() {
    String id = entered(list("show", "2026-01-01", "9.00", ""));
    String path = "/api/price-lists/" + id + "/withdrawal";
    posts(path, "{'reason': ' '}").statusCode(400).body("errors.field", hasItem("reason"));
    asks()
        .contentType("application/json")
        .header("If-Match", "\"replaced\"")
        .body("{\"reason\": \"Mistyped\"}")
        .post(path)
        .then()
        .statusCode(412)
        .body("code", equalTo("price-list-changed"));
    asks()
        .contentType("application/json")
        .header("If-Match", "\"newest\"")
        .body("{\"reason\": \"Mistyped\"}")
        .post(path)
        .then()
        .statusCode(200)
        .header("ETag", "\"newest-withdrawn\"")
        .body("withdrawn.reason", equalTo("Mistyped"));
    posts(path, "{'reason': 'Again'}").statusCode(409).body("code", equalTo("already-withdrawn"));
    assertTrue(
        lists.holding(UUID.fromString(id), LocalDate.of(2999, 1, 1)).isEmpty(), "still holds");
    reads("/api/price-lists/" + id).body("lines", hasSize(4));
  }

  @Test
  void a_replacement_by_somebody_who_has_not_read_the_withdrawal_is_stale() {
    String id = entered(list("show", "2026-01-01", "9.00", ""));
    posts("/api/price-lists/" + id + "/withdrawal", "{'reason': 'Mistyped'}").statusCode(200);
    asks()
        .contentType("application/json")
        .header("If-Match", "\"newest\"")
        .body(
            list("show", "2026-01-01", "9.50", "'replaces': '%s', ".formatted(id))
                .replace('\'', '"'))
        .post("/api/price-lists")
        .then()
        .statusCode(412);
  }

  @Test
  void a_deal_dearer_than_its_jars_is_entered_with_a_warning() {
    posts("/api/price-lists", list("show", "2026-01-01", "7.50", ""))
        .statusCode(201)
        .body("warnings", hasSize(1))
        .body("warnings[0]", containsString("dearer than 2 singly"));
  }

  @Test
  void lists_are_given_in_parts_and_by_audience() {
    String one = entered(list("bulk", "2094-01-01", "6.00", ""));
    String two = entered(list("bulk", "2094-01-02", "6.00", ""));
    List<String> bulk =
        reads("/api/price-lists?audience=bulk&limit=500").extract().path("items.id");
    assertTrue(bulk.indexOf(one) >= 0 && bulk.indexOf(one) < bulk.indexOf(two), bulk.toString());
    reads("/api/price-lists?audience=bulk&limit=500")
        .body("items.findAll { it.id == '%s' }.lines".formatted(one), contains(4));
    String next = reads("/api/price-lists?limit=1").extract().path("next");
    reads("/api/price-lists?limit=1&after=" + next).body("items", hasSize(1));
  }

  private static String current(String audience, String on) {
    return reads("/api/price-lists/current?audience=%s&on=%s".formatted(audience, on))
        .extract()
        .path("id");
  }

  private static int done(Future<Integer> answer) {
    try {
      return answer.get();
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }
}
