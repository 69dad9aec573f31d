package org.barreltally.shows;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.shows.Fairs.accepted;
import static org.barreltally.shows.Fairs.back;
import static org.barreltally.shows.Fairs.line;
import static org.barreltally.shows.Fairs.newName;
import static org.barreltally.shows.Fairs.newSize;
import static org.barreltally.shows.Fairs.packOut;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a settlement says where counts and sales do not agree, and when it may be made. */
@QuarkusTest
class SettlementTest {

  @Inject ShelfFixture shelf;

  private String size;
  private String lot;
  private String show;

  @BeforeEach
  void ten_jars_go_out() {
    size = newSize();
    lot = shelf.lotWith(20, size);
    show = accepted(newName("Orchard Day"), "2026-09-19");
    packOut(show, line(size, lot, 10)).statusCode(201);
  }

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void jars_gone_without_a_record_count_as_sold_and_are_listed() {
    // 10 out, 3 back: 7 gone; 5 recorded at $15 in cash, so 2 went without a record.
    sell(null, 5, 75);
    back(show, line(size, lot, 3)).statusCode(201);
    settle()
        .body("sold[0].count", equalTo(7))
        .body("sold[0].recorded", equalTo(5))
        .body("sold[0].unrecorded", equalTo(2))
        .body("soldByLot[0].least", equalTo(7))
        .body("soldByLot[0].most", equalTo(7))
        .body("takings.amount", equalTo(75.0f))
        .body("cashDue.amount", equalTo(75.0f))
        .body("cashOverShort", nullValue())
        .body("toLookAt", hasItem(containsString("2 × " + size + " are gone by the count")));
    assertEquals(7, shelf.standing("customer", lot, size));
    assertEquals(0, shelf.standing(Fairs.place(show), lot, size));
  }

  @Test
  void jars_sold_beyond_what_came_stay_open_until_somebody_looked() {
    // 10 out, all gone, 12 sold without lot: 10 of the lot, 2 of nobody knows which.
    sell(null, 12, 180);
    back(show, line(size, lot, 0)).statusCode(201);
    settle()
        .body("sold[0].count", equalTo(12))
        .body("sold[0].beyond", equalTo(2))
        .body("soldByLot", hasSize(2))
        .body("soldByLot.find { it.lot == '" + lot + "' }.least", equalTo(10))
        .body("soldByLot.find { it.lot == null }.most", equalTo(2))
        .body("countNeeded[0].onTable", equalTo(-2));
    assertEquals(10, shelf.standing("customer", lot, size));
    reads("/api/sales/count-needed?place=" + Fairs.place(show)).body("items", hasSize(1));
  }

  @Test
  void a_lot_that_never_came_is_believed_and_doubted_and_nothing_is_posted_on_it() {
    // 10 of one lot out, 6 back: 4 sold, 2 of them told to be of a lot that never came.
    String stranger = shelf.lotWith(5, size);
    sell(stranger, 2, 30);
    sell(null, 2, 30);
    back(show, line(size, lot, 6)).statusCode(201);
    settle()
        .body("sold[0].count", equalTo(4))
        .body("soldByLot.find { it.lot == '" + lot + "' }.least", equalTo(2))
        .body("soldByLot.find { it.lot == '" + lot + "' }.most", equalTo(4))
        .body("soldByLot.find { it.lot == '" + stranger + "' }.least", equalTo(0))
        .body("soldByLot.find { it.lot == '" + stranger + "' }.most", equalTo(2))
        .body("toLookAt", hasItem(containsString("of lot " + stranger)))
        .body("movement", nullValue());
  }

  @Test
  void a_show_is_settled_after_it_was_counted_not_before() {
    sell(null, 1, 15);
    posts("/api/shows/" + show + "/settlement", "{}")
        .statusCode(409)
        .body("code", equalTo("not-counted-yet"));
    reads("/api/shows/" + show + "/settlement")
        .body("sold[0].count", equalTo(1))
        .body("takings.amount", equalTo(15.0f));
    Fairs.show(show).body("state", equalTo("running"));
  }

  @Test
  void jars_still_out_at_a_show_called_off_are_not_sold() {
    posts("/api/shows/" + show + "/call-off", "{'reason': 'Storm'}").statusCode(200);
    settle()
        .body("sold[0].count", equalTo(0))
        .body("soldByLot", empty())
        .body("toLookAt", hasItem(containsString("not counted home yet")))
        .body("movement", nullValue());
    assertEquals(10, shelf.standing(Fairs.place(show), lot, size));
    back(show, line(size, lot, 10)).statusCode(201);
    settle().body("sold[0].count", equalTo(0)).body("toLookAt", empty());
  }

  @Test
  void a_late_undo_is_followed_when_it_is_settled_again() {
    String id = UUID.randomUUID().toString();
    tell(id, lot, 4, 60).statusCode(201);
    back(show, line(size, lot, 6)).statusCode(201);
    settle().body("sold[0].unrecorded", equalTo(0)).body("movement", nullValue());
    posts("/api/sales/" + id + "/reversal", "{'reason': 'Told for another table'}").statusCode(200);
    // The jars are gone all the same: 4 by the count, none recorded.
    settle()
        .body("sold[0].count", equalTo(4))
        .body("sold[0].unrecorded", equalTo(4))
        .body("takings.amount", equalTo(0.0f));
    assertEquals(4, shelf.standing("customer", lot, size));
    assertEquals(0, shelf.standing(Fairs.place(show), lot, size));
  }

  @Test
  void amounts_and_hours_below_zero_are_refused_by_their_field() {
    back(show, line(size, lot, 10)).statusCode(201);
    posts("/api/shows/" + show + "/settlement", "{'payouts': {'amount': -1, 'currency': 'USD'}}")
        .statusCode(400)
        .body("errors[0].field", equalTo("payouts.amount"));
    posts("/api/shows/" + show + "/settlement", "{'hours': 0}")
        .statusCode(400)
        .body("errors[0].field", equalTo("hours"));
    posts("/api/shows/" + show + "/settlement", "{'travel': {'amount': 1, 'currency': 'EUR'}}")
        .statusCode(400)
        .body("code", equalTo("currency-mismatch"));
    posts("/api/shows/" + UUID.randomUUID() + "/settlement", "{}").statusCode(404);
  }

  private ValidatableResponse settle() {
    return posts("/api/shows/" + show + "/settlement", "{}").statusCode(200);
  }

  private void sell(String ofLot, int count, int dollars) {
    tell(UUID.randomUUID().toString(), ofLot, count, dollars).statusCode(201);
  }

  private ValidatableResponse tell(String id, String ofLot, int count, int dollars) {
    String named = ofLot == null ? "" : ", 'lot': '" + ofLot + "'";
    return posts(
        "/api/shows/" + show + "/sales",
        "{'id': '%s', 'at': '2026-09-19T14:00:00Z', 'lines': [{'container': '%s'%s, 'count': %d, 'price': {'amount': 15, 'currency': 'USD'}}], 'paid': {'cash': {'amount': %d, 'currency': 'USD'}}}"
            .formatted(id, size, named, count, dollars));
  }
}
