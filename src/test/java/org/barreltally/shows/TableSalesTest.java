package org.barreltally.shows;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.shows.Fairs.accepted;
import static org.barreltally.shows.Fairs.line;
import static org.barreltally.shows.Fairs.newName;
import static org.barreltally.shows.Fairs.newSize;
import static org.barreltally.shows.Fairs.packOut;
import static org.barreltally.shows.Fairs.place;
import static org.barreltally.shows.Stalls.cash;
import static org.barreltally.shows.Stalls.priced;
import static org.barreltally.shows.Stalls.sale;
import static org.barreltally.shows.Stalls.tell;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.BookRows;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Sales told by devices at a table: once per id, never refused, undone by reversal. */
@QuarkusTest
class TableSalesTest {

  @Inject ShelfFixture shelf;
  @Inject BookRows rows;

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void a_sale_takes_its_price_from_the_list_of_the_show_and_says_the_change() {
    String size = newSize();
    String lot = shelf.lotWith(24, size);
    String show = priced(size, "");
    packOut(show, line(size, lot, 24)).statusCode(201);
    String id = UUID.randomUUID().toString();

    // Three at $15, two of them as the deal for $28: 28 + 15 = 43; 50 given, 7 back.
    tell(show, sale(id, size, null, 3, "'deal': true, " + cash(50)))
        .statusCode(201)
        .body("id", equalTo(id))
        .body("result", equalTo("kept"))
        .body("total.amount", equalTo(43.0f))
        .body("dealSaving.amount", equalTo(2.0f))
        .body("changeDue.amount", equalTo(7.0f))
        .body("lines[0].lot", nullValue())
        .body("lines[0].grade", equalTo("amber"))
        .body("notes", empty());

    assertEquals(24, shelf.standing(place(show), lot, size), "no lot was named, so none moved");
    reads("/api/stock?place=" + place(show))
        .body("items.onHand", containsInAnyOrder(24, -3))
        .body("items.find { it.onHand == -3 }.lot", nullValue());
    Fairs.show(show).body("state", equalTo("running"));
    reads("/api/sales/" + id).body("undone", is(false)).body("total.amount", equalTo(43.0f));
    // What can still be promised does not change by a sale at a table: those jars were out.
    reads("/api/availability?container=" + size)
        .body("items[0].onHand", equalTo(21))
        .body("items[0].out", equalTo(21))
        .body("items[0].available", equalTo(0));
  }

  @Test
  void a_price_said_with_the_sale_holds_and_no_list_is_needed() {
    String size = newSize();
    String lot = shelf.lotWith(5, size);
    String show = accepted(newName("Plough Day"), "2026-09-12");
    packOut(show, line(size, lot, 5)).statusCode(201);
    String lines =
        "[{'container': '%s', 'lot': '%s', 'count': 2, 'price': {'amount': 12.5, 'currency': 'USD'}}]"
            .formatted(size, lot);
    tell(show, sale(UUID.randomUUID().toString(), lines, cash(25)))
        .body("total.amount", equalTo(25.0f))
        .body("changeDue.amount", equalTo(0.0f))
        .body("notes", empty());
    assertEquals(3, shelf.standing(place(show), lot, size));
  }

  @Test
  void what_does_not_add_up_is_kept_and_listed() {
    String size = newSize();
    String other = newSize();
    String lot = shelf.lotWith(5, size);
    String show = priced(size, "");
    packOut(show, line(size, lot, 5)).statusCode(201);
    String ahead =
        Instant.now().plus(2, ChronoUnit.HOURS).truncatedTo(ChronoUnit.SECONDS).toString();

    tell(show, sale(UUID.randomUUID().toString(), size, null, 1, cash(12)))
        .statusCode(201)
        .body("notes.code", contains("paid-differs"))
        .body("notes[0].detail", containsString("3.00 USD less"));
    tell(show, sale(UUID.randomUUID().toString(), size, null, 1, "'deal': false"))
        .body("notes.code", contains("paid-unsaid"));
    tell(show, sale(UUID.randomUUID().toString(), other, null, 1, cash(9)))
        .body("notes.code", contains("no-price"))
        .body("total", nullValue());
    tell(show, sale(UUID.randomUUID().toString(), size, "NO-SUCH-LOT", 1, cash(15)))
        .body("notes.code", contains("unknown-lot"))
        .body("lines[0].saidLot", equalTo("NO-SUCH-LOT"));
    tell(show, sale(UUID.randomUUID().toString(), other, lot, 1, cash(15)))
        .body("notes.code", containsInAnyOrder("not-packed-in-size", "no-price"));
    String elsewhere = shelf.lotWith(5, size);
    tell(show, sale(UUID.randomUUID().toString(), size, elsewhere, 1, cash(15)))
        .body("notes.code", contains("lot-not-here"));
    tell(
            show,
            sale(UUID.randomUUID().toString(), size, null, 1, cash(15))
                .replace("2026-09-12T14:00:00Z", ahead))
        .statusCode(201)
        .body("notes.code", contains("clock-ahead"))
        .body("at", equalTo(ahead));

    reads("/api/shows/" + show + "/sales?toLookAt=true").body("items", hasSize(7));
    reads("/api/sales/count-needed?place=" + place(show))
        .body("items.find { it.lot == '" + elsewhere + "' }.onTable", equalTo(-1))
        .body("items.find { it.container == '" + other + "' }.onTable", equalTo(-2));
  }

  @Test
  void more_sold_than_packed_out_is_taken_and_needs_a_count() {
    String size = newSize();
    String lot = shelf.lotWith(4, size);
    String show = priced(size, "");
    packOut(show, line(size, lot, 4)).statusCode(201);
    tell(show, sale(UUID.randomUUID().toString(), size, lot, 6, cash(90))).statusCode(201);
    assertEquals(-2, shelf.standing(place(show), lot, size));
    reads("/api/sales/count-needed?place=" + place(show))
        .body("items", hasSize(2))
        .body("items.onTable", everyItem(equalTo(-2)))
        .body("items.lot", hasItem(lot));
  }

  @Test
  void a_sale_told_again_is_the_same_sale_and_with_other_content_a_conflict() {
    String size = newSize();
    String lot = shelf.lotWith(9, size);
    String show = priced(size, "");
    packOut(show, line(size, lot, 9)).statusCode(201);
    String id = UUID.randomUUID().toString();
    String once = sale(id, size, lot, 1, cash(15));
    String twice = sale(id, size, lot, 2, cash(30));
    tell(show, once).statusCode(201).body("result", equalTo("kept"));
    tell(show, once).statusCode(200).body("result", equalTo("repeated"));
    tell(show, twice)
        .statusCode(200)
        .body("result", equalTo("conflict"))
        .body("lines[0].count", equalTo(1));
    tell(show, twice).statusCode(200).body("result", equalTo("conflict"));

    assertEquals(8, shelf.standing(place(show), lot, size));
    reads("/api/sales/conflicts?place=" + place(show))
        .body("items", hasSize(1))
        .body("items[0].sale", equalTo(id))
        .body("items[0].said", containsString("\"count\":2"));
  }

  @Test
  void an_undone_sale_goes_back_on_the_table_and_stays_undone_when_it_is_sent_again() {
    String size = newSize();
    String lot = shelf.lotWith(9, size);
    String show = priced(size, "");
    packOut(show, line(size, lot, 9)).statusCode(201);
    String id = UUID.randomUUID().toString();
    tell(show, sale(id, size, lot, 2, cash(30))).statusCode(201);
    posts("/api/sales/" + id + "/reversal", "{'reason': 'Wrong size tapped'}")
        .statusCode(200)
        .body("undone", is(true));
    assertEquals(9, shelf.standing(place(show), lot, size));
    tell(show, sale(id, size, lot, 2, cash(30)))
        .statusCode(200)
        .body("result", equalTo("repeated"))
        .body("undone", is(true));
    posts("/api/sales/" + id + "/reversal", "{'reason': 'Again'}")
        .statusCode(200)
        .body("undone", is(true));
    assertEquals(9, shelf.standing(place(show), lot, size));
    reads("/api/shows/" + show + "/settlement")
        .body("takings.amount", equalTo(0.0f))
        .body("cashDue.amount", equalTo(0.0f));
  }

  @Test
  void taking_the_movement_back_undoes_the_sale_too() {
    String size = newSize();
    String lot = shelf.lotWith(9, size);
    String show = priced(size, "");
    packOut(show, line(size, lot, 9)).statusCode(201);
    String id = UUID.randomUUID().toString();
    String movement =
        tell(show, sale(id, size, lot, 2, cash(30))).statusCode(201).extract().path("movement");
    posts("/api/movements/" + movement + "/reversal", "{'reason': 'Never happened'}")
        .statusCode(201);
    reads("/api/sales/" + id).body("undone", is(true));
    reads("/api/shows/" + show + "/settlement").body("takings.amount", equalTo(0.0f));
  }

  @Test
  void malformed_sales_are_refused_by_their_field_and_leave_nothing() {
    String size = newSize();
    String show = accepted(newName("Plough Day"), "2026-09-12");
    String right = sale(UUID.randomUUID().toString(), size, null, 1, cash(15));
    String other = sale(UUID.randomUUID().toString(), size, null, 1, cash(15));
    String[][] wrongs = {
      {"'count': 1", "'count': -1", "[1].lines[0].count", "invalid-field"},
      {"'count': 1", "'count': 0", "[1].lines[0].count", "invalid-field"},
      {"'count': 1", "'count': 1.5", "[1].lines[0].count", "wrong-type"},
      {size, "NOSUCH", "[1].lines[0].container", "unknown-container"},
      {"'amount': 15", "'amount': -15", "[1].paid.cash.amount", "invalid-field"},
      {"USD", "EUR", "[1].paid.cash.currency", "currency-mismatch"},
      {"2026-09-12T14:00:00Z", "2199-09-12T14:00:00Z", "[1].at", "in-the-future"},
      {"'at'", "'when'", "[1].when", "unknown-field"},
    };
    List<String> answers = new ArrayList<>();
    var before = rows.fingerprint();
    for (String[] wrong : wrongs) {
      var answer =
          tell(show, "[" + right + "," + other.replace(wrong[0], wrong[1]) + "]").extract();
      answers.add(
          answer.statusCode() + " " + answer.path("code") + " " + answer.path("errors[0].field"));
    }
    assertEquals(
        List.of(wrongs).stream().map(w -> "400 " + w[3] + " " + w[2]).collect(Collectors.toList()),
        answers);
    tell(show, "[]").statusCode(400);
    tell(show, right.replace("'count': 1", "'count': -1"))
        .statusCode(400)
        .body("errors[0].field", equalTo("lines[0].count"));
    assertEquals(before, rows.fingerprint());
    tell(UUID.randomUUID().toString(), right).statusCode(404).body("code", equalTo("unknown-show"));
    assertTrue(rows.fingerprint().equals(before));
  }
}
