package org.barreltally.shows;

import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every refusal about shows: status, code and field, and no trace left behind. */
@QuarkusTest
class ShowRefusalsTest {

  @Inject ShelfFixture shelf;
  @Inject BookRows rows;

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03'} | 400 | invalid-field | name
          {'name': ' ', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03'} | 400 | invalid-field | name
          {'name': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03'} | 400 | invalid-field | town
          {'name': 'A', 'town': 'A', 'ends': '2026-10-03'} | 400 | invalid-field | starts
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03'} | 400 | invalid-field | ends
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-02'} | 400 | ends-before-start | ends
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2027-10-03'} | 400 | invalid-field | ends
          {'name': 'A', 'town': 'A', 'starts': '03.10.2026', 'ends': '2026-10-03'} | 400 | invalid-field | starts
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'setUp': 'dawn'} | 400 | invalid-field | setUp
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'setUp': '2026-10-04'} | 400 | invalid-field | setUp
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'state': 'open'} | 400 | invalid-field | state
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'state': 'closed'} | 400 | invalid-field | state
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'colour': 'red'} | 400 | unknown-field | colour
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'helper': 7} | 400 | wrong-type | helper
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'priceList': '017f22e2-79b0-7cc3-98c4-dc0c0c07398f'} | 400 | unknown-price-list | priceList
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'booth': {'percentOfSales': 101}} | 400 | invalid-field | booth.percentOfSales
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'booth': {'fee': {'amount': -1, 'currency': 'USD'}}} | 400 | invalid-field | booth.fee
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'booth': {'fee': {'amount': 1, 'currency': 'CAD'}}} | 400 | invalid-field | booth.fee
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'booth': {'tables': [{'lengthInches': 0, 'depthInches': 30}]}} | 400 | invalid-field | booth.tables[0].lengthInches
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'vehicleLoad': {'value': 9, 'unit': 'gal'}} | 400 | invalid-field | vehicleLoad
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'deadlines': {'pay': '2016-09-01'}} | 400 | invalid-field | deadlines.pay
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'visitorsExpected': -1} | 400 | invalid-field | visitorsExpected
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'deadlines': {'pay': {}}} | 400 | invalid-field | deadlines.pay
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'setUp': {'day': '2026-10-03'}} | 400 | invalid-field | setUp
          {'name': 'A', 'town': 'A', 'starts': '2026-10-03', 'ends': '2026-10-03', 'setUp': 7} | 400 | invalid-field | setUp
          """)
  void a_booking_is_refused(String body, int status, String code, String field) {
    var before = rows.fingerprint();
    posts("/api/shows", body)
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
    assertEquals(before, rows.fingerprint());
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          pack-out | {'lines': []} | 400 | invalid-field | lines
          pack-out | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 0}]} | 400 | invalid-field | lines[0].count
          pack-out | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': -3}]} | 400 | invalid-field | lines[0].count
          pack-out | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 2.5}]} | 400 | wrong-type | lines[0].count
          pack-out | {'lines': [{'container': 'SIZE', 'count': 1}]} | 400 | invalid-field | lines[0].lot
          pack-out | {'lines': [{'container': 'NOPE', 'lot': 'LOT', 'count': 1}]} | 400 | unknown-container | lines[0].container
          pack-out | {'lines': [{'container': 'SIZE', 'lot': 'P000101-9', 'count': 1}]} | 400 | unknown-lot | lines[0].lot
          pack-out | {'lines': [{'container': 'GAL', 'lot': 'LOT', 'count': 1}]} | 422 | no-such-jars | lines[0].container
          pack-out | {'lines': [{'container': 'SIZE', 'lot': 'HELD', 'count': 1}]} | 409 | lot-held | lines[0].lot
          pack-out | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 11}]} | 409 | short-of-stock |
          pack-out | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 1}], 'from': 'attic'} | 400 | unknown-place | from
          pack-out | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 1}], 'from': 'PLACE'} | 400 | not-at-home | from
          pack-out | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 1}], 'at': '2050-01-01T00:00:00Z'} | 400 | in-the-future | at
          pack-out | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 1}], 'float': {'amount': -5, 'currency': 'USD'}} | 400 | invalid-field | float
          pack-out | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 1}], 'float': {'amount': 5, 'currency': 'CAD'}} | 400 | currency-mismatch | float
          back | {} | 400 | invalid-field | lines
          back | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': -1}]} | 400 | invalid-field | lines[0].count
          back | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 1, 'broken': -1}]} | 400 | invalid-field | lines[0].broken
          back | {'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 1, 'wetLabels': 2}]} | 400 | invalid-field | lines[0].wetLabels
          back | {'lines': [{'container': 'SIZE', 'lot': 'P000101-9', 'count': 1}]} | 400 | unknown-lot | lines[0].lot
          back | {'lines': [], 'drawer': {'denominations': [{'value': 5, 'count': -1}]}} | 400 | invalid-field | drawer.denominations[0].count
          back | {'lines': [], 'drawer': {'denominations': [{'value': 0, 'count': 1}]}} | 400 | invalid-field | drawer.denominations[0].value
          back | {'lines': [], 'drawer': {'denominations': [{'value': 'five', 'count': 1}]}} | 400 | invalid-field | drawer.denominations[0].value
          back | {'lines': [], 'drawer': {}} | 400 | invalid-field | drawer.denominations
          back | {'lines': [], 'drawer': {'amount': 60.50, 'currency': 'CAD'}} | 400 | currency-mismatch | drawer.total
          transfers | {'to': 'SELF', 'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 1}]} | 400 | invalid-field | to
          transfers | {'to': '017f22e2-79b0-7cc3-98c4-dc0c0c07398f', 'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 1}]} | 400 | unknown-show | to
          transfers | {'to': 'APART', 'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 1}]} | 409 | days-apart | to
          transfers | {'to': 'APPLIED', 'lines': [{'container': 'SIZE', 'lot': 'LOT', 'count': 1}]} | 409 | show-state |
          payments | {'amount': {'amount': 0, 'currency': 'USD'}} | 400 | invalid-field | amount
          payments | {'amount': {'amount': 5, 'currency': 'CAD'}} | 400 | currency-mismatch | amount
          payments | {'amount': {'amount': 5, 'currency': 'USD'}, 'on': '2050-01-01'} | 400 | in-the-future | on
          reservations | {'lines': [{'container': 'SIZE', 'grade': 'amber', 'count': 11}]} | 409 | short-of-stock |
          reservations | {'lines': [{'container': 'SIZE', 'count': 1}]} | 400 | invalid-field | lines[0]
          call-off | {} | 400 | invalid-field | reason
          call-off | {'reason': 'Rain', 'refund': {'amount': 1, 'currency': 'USD'}} | 400 | invalid-field | refund
          state | {'state': 'settled'} | 400 | invalid-field | state
          state | {'state': 'closed'} | 409 | state-out-of-order | state
          awards | {'lot': 'LOT'} | 400 | invalid-field | class
          awards | {'class': 'Amber', 'lot': 'P000101-9'} | 400 | unknown-lot | lot
          awards | {'class': 'Amber', 'lot': 'LOT', 'container': 'GAL'} | 422 | no-such-jars | container
          awards | {'class': 'Amber', 'lot': 'LOT', 'score': 1001} | 400 | invalid-field | score
          """)
  void something_about_a_show_is_refused(
      String what, String body, int status, String code, String field) {
    String size = Fairs.newSize();
    String lot = shelf.lotWith(10, size);
    String held = shelf.lotWith(10, size);
    posts("/api/lots/" + held + "/hold", "{'reason': 'Tastes of smoke'}").statusCode(200);
    // the held lot's jars are in the same pool, but cannot be promised
    String id = Fairs.accepted(Fairs.newName("Tried"), "2026-10-03");
    String apart = Fairs.accepted(Fairs.newName("Tried"), "2026-10-04");
    String applied = Fairs.booked(Fairs.newName("Tried"), "2026-10-03", "2026-10-03", "");
    String sent =
        body.replace("SIZE", size)
            .replace("LOT", lot)
            .replace("HELD", held)
            .replace("PLACE", Fairs.place(apart))
            .replace("SELF", id)
            .replace("APART", apart)
            .replace("APPLIED", applied);
    var before = rows.fingerprint();
    var refused =
        posts("/api/shows/" + id + "/" + what, sent)
            .statusCode(status)
            .body("code", equalTo(code))
            .body("detail", notNullValue());
    if (field != null) {
      refused.body("errors.field", hasItem(field));
    }
    assertEquals(before, rows.fingerprint());
  }

  @ParameterizedTest(name = "from {0}: pack-out {1}, back {2}")
  @CsvSource({"applied, 409, 409", "declined, 409, 409", "accepted, 201, 201", "paid, 201, 201"})
  void out_and_back_wait_for_a_place_at_the_show(String state, int out, int back) {
    String size = Fairs.newSize();
    String lot = shelf.lotWith(10, size);
    String day = "2026-10-03";
    String one = Fairs.booked(Fairs.newName("Tried"), day, day, ", 'state': '" + state + "'");
    String two = Fairs.booked(Fairs.newName("Tried"), day, day, ", 'state': '" + state + "'");
    Fairs.packOut(one, Fairs.line(size, lot, 1)).statusCode(out);
    Fairs.back(two, Fairs.line(size, lot, 1)).statusCode(back);
  }

  @Test
  void what_moves_stock_or_money_needs_an_id_of_its_own() {
    String id = Fairs.accepted(Fairs.newName("Tried"), "2026-10-03");
    for (String what : new String[] {"pack-out", "back", "transfers", "payments"}) {
      Owner.asks()
          .contentType("application/json")
          .body("{}")
          .post("/api/shows/" + id + "/" + what)
          .then()
          .statusCode(400)
          .body("code", equalTo("id-missing"));
    }
  }

  @Test
  void a_show_nobody_booked_is_not_found() {
    String nobody = "/api/shows/" + UUID.randomUUID();
    Owner.asks().get(nobody).then().statusCode(404).body("code", equalTo("unknown-show"));
    Fairs.packOut(UUID.randomUUID().toString(), Fairs.line("PT", "P000101-9", 1)).statusCode(404);
    posts(nobody + "/awards", "{'class': 'Amber', 'lot': 'P000101-9'}").statusCode(404);
    String id = Fairs.accepted(Fairs.newName("Tried"), "2026-10-03");
    posts("/api/shows/" + id + "/to-dos/" + UUID.randomUUID() + "/done", "{}")
        .statusCode(404)
        .body("code", equalTo("unknown-to-do"));
    posts("/api/shows/" + id + "/reservations/" + UUID.randomUUID() + "/release", "{}")
        .statusCode(404)
        .body("code", equalTo("unknown-reservation"));
    Owner.asks().get("/api/shows/season?year=soon").then().statusCode(400);
    Owner.asks().get("/api/shows?state=open").then().statusCode(400);
  }
}
