package org.barreltally.gifts;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.barreltally.BookRows;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Shortages, holds, breakage, returns and taking steps back. */
@QuarkusTest
class GiftTroubleTest {

  @Inject GiftShelf shelf;
  @Inject BookRows rows;

  private String size;
  private String box;

  @BeforeEach
  void aBox() {
    size = GiftShelf.newSize("8", "floz");
    box = GiftShelf.box("Trouble " + size, "22.00", size + " golden 2/amber");
  }

  @AfterEach
  void theBookIsSound() {
    SoundBook.check();
  }

  private String order(int recipients) {
    String[] all = new String[recipients];
    for (int n = 1; n <= recipients; n++) {
      all[n - 1] = GiftShelf.posted(n, box, "12.50");
    }
    return "/api/gift-orders/" + GiftShelf.order(all);
  }

  private static void does(String one, String... steps) {
    for (String step : steps) {
      posts(one + "/" + step, "{}").statusCode(200);
    }
  }

  @Test
  void what_is_short_is_named_and_nothing_is_reserved() {
    shelf.lot(size, "golden", 3, "2024-06-20");
    shelf.lot(size, "amber", 2, "2024-06-20");
    String order = order(3);
    Map<String, String> before = rows.fingerprint();
    posts(order + "/reserve", "{}")
        .statusCode(409)
        .body("code", equalTo("short-of-stock"))
        .body("detail", containsString("1 × " + size + " golden short"))
        .body("errors[0].field", equalTo("recipients[2].box"));
    assertEquals(before, rows.fingerprint());
    reads(order + "/availability")
        .body("canBePromised", equalTo(false))
        .body("lacks", hasSize(1))
        .body("lacks[0].n", equalTo(3));
    // Canning that is planned is shown where somebody asks for it, and still not promised.
    posts(
            "/api/planned-canning",
            "{'on': '2026-12-02', 'container': '%s', 'grade': 'golden', 'count': 12}"
                .formatted(size))
        .statusCode(201);
    reads(order + "/availability?planned=true").body("lacks", hasSize(0));
    posts(order + "/reserve", "{}").statusCode(409);
  }

  @Test
  void a_lot_that_is_held_is_neither_picked_nor_sent() {
    String older = shelf.lot(size, "golden", 2, "2024-06-20");
    String newer = shelf.lot(size, "golden", 4, "2024-07-20");
    String order = order(2);
    posts(order + "/reserve", "{}").statusCode(200);
    posts("/api/lots/" + older + "/hold", "{'reason': 'Off flavour'}").statusCode(200);
    posts(order + "/recipients/1/pick", "{}")
        .statusCode(200)
        .body("lots[0].lot", equalTo(newer))
        .body("lots[0].at", equalTo("shelf"));
    posts("/api/lots/" + newer + "/hold", "{'reason': 'Recalled'}").statusCode(200);
    posts(order + "/recipients/1/pack", "{}").statusCode(409).body("code", equalTo("lot-held"));
    posts(order + "/recipients/2/pick", "{}")
        .statusCode(409)
        .body("code", equalTo("short-of-stock"));
    posts(order + "/recipients/1/undo", "{'reason': 'Held'}")
        .statusCode(200)
        .body("state", equalTo("confirmed"))
        .body("lots", hasSize(0));
    assertEquals(4, shelf.standing("cool-room", newer));
  }

  @Test
  void every_step_can_be_taken_back_to_the_beginning() {
    String lot = shelf.lot(size, "golden", 2, "2024-06-20");
    String order = order(1);
    posts(order + "/reserve", "{}").statusCode(200);
    String one = order + "/recipients/1";
    does(one, "pick", "pack", "send", "deliver", "return");
    assertEquals(0, shelf.available(size, "golden"));
    for (String state : List.of("delivered", "sent", "packed", "picked", "confirmed")) {
      posts(one + "/undo", "{'reason': 'All wrong'}").statusCode(200).body("state", equalTo(state));
    }
    posts(one + "/undo", "{'reason': 'x'}").statusCode(409);
    assertEquals(2, shelf.standing("cool-room", lot));
    assertEquals(2, shelf.reserved(size, "golden"));
    reads(order).body("bill.mailings", equalTo(0)).body("total.amount.toDouble()", equalTo(34.50));
    does(one, "pick", "pack", "send", "deliver");
  }

  @Test
  void a_movement_of_an_order_is_not_reversed_behind_its_back() {
    shelf.lot(size, "golden", 2, "2024-06-20");
    String order = order(1);
    posts(order + "/reserve", "{}").statusCode(200);
    String movement =
        posts(order + "/recipients/1/pick", "{}")
            .statusCode(200)
            .extract()
            .path("steps[-1].movement");
    posts("/api/movements/" + movement + "/reversal", "{'reason': 'x'}")
        .statusCode(409)
        .body("code", equalTo("cannot-be-taken-back"));
  }

  @Test
  void a_return_with_a_broken_jar_is_made_whole_before_it_is_sent_again() {
    String lot = shelf.lot(size, "golden", 2, "2024-06-20");
    String amber = shelf.lot(size, "amber", 1, "2024-06-20");
    String order = order(1);
    posts(order + "/reserve", "{}").statusCode(200);
    String one = order + "/recipients/1";
    does(one, "pick", "pack", "send", "return");
    posts(
            one + "/inspect",
            "{'lines': [{'container': '%s', 'lot': '%s', 'good': 2, 'broken': 1}]}"
                .formatted(size, lot))
        .statusCode(400)
        .body("errors.field", hasItem("lines"));
    posts(one + "/cancel", "{}").statusCode(409);
    posts(
            one + "/inspect",
            "{'lines': [{'container': '%s', 'lot': '%s', 'good': 1, 'broken': 1}]}"
                .formatted(size, lot))
        .statusCode(200);
    assertEquals(0, shelf.available(size, "golden"));
    assertEquals(1, shelf.standing("broken", lot));
    posts(one + "/send", "{}").statusCode(409).body("code", equalTo("wrong-step"));
    posts(one + "/pick", "{}")
        .statusCode(200)
        .body("contents.find { it.grade == 'amber' }.insteadOf.grade", equalTo("golden"));
    does(one, "pack", "send", "deliver");
    assertEquals(0, shelf.standing("cool-room", amber));
    reads(order).body("total.amount.toDouble()", equalTo(47.00));
  }

  @Test
  void a_return_that_is_not_sent_again_is_stock_once_it_was_looked_at() {
    String lot = shelf.lot(size, "golden", 2, "2024-06-20");
    String order = order(1);
    posts(order + "/reserve", "{}").statusCode(200);
    String one = order + "/recipients/1";
    does(one, "pick", "pack", "send");
    posts(
            one + "/return",
            "{'reason': 'Moved away', 'inspected': {'keep': false, 'lines': [{'container': '%s', 'lot': '%s', 'good': 2}]}}"
                .formatted(size, lot))
        .statusCode(200)
        .body("lots", hasSize(0));
    assertEquals(2, shelf.available(size, "golden"));
    does(one, "cancel");
    reads(order).body("resolved", equalTo(true)).body("total.amount.toDouble()", equalTo(12.50));
  }

  @Test
  void a_jar_broken_at_packing_is_replaced_from_the_shelf() {
    String lot = shelf.lot(size, "golden", 3, "2024-06-20");
    String order = order(1);
    posts(order + "/reserve", "{}").statusCode(200);
    String one = order + "/recipients/1";
    does(one, "pick");
    posts(
            one + "/replace",
            "{'lines': [{'container': '%s', 'lot': '%s', 'count': 1}]}".formatted(size, lot))
        .statusCode(200)
        .body("lots[0].count", equalTo(2));
    assertEquals(0, shelf.standing("cool-room", lot));
    assertEquals(2, shelf.standing("gift-shelf", lot));
    does(one, "pack", "send", "deliver");
    reads(order).body("bill.ownCost.amount.toDouble()", equalTo(0.00));
  }

  @Test
  void two_at_one_address_stay_two_and_one_can_be_taken_out() {
    shelf.lot(size, "golden", 4, "2024-06-20");
    String order =
        "/api/gift-orders/"
            + GiftShelf.order(GiftShelf.posted(1, box, "12.50"), GiftShelf.posted(1, box, "12.50"));
    posts(order + "/reserve", "{}").statusCode(200).body("recipients", hasSize(2));
    posts(order + "/recipients/2/cancel", "{'reason': 'Once is enough'}").statusCode(200);
    assertEquals(2, shelf.reserved(size, "golden"));
    assertEquals(2, shelf.available(size, "golden"));
    reads(order).body("total.amount.toDouble()", equalTo(34.50));
  }

  @Test
  void recipients_can_be_added_and_are_reserved_with_the_next_reserve() {
    shelf.lot(size, "golden", 4, "2024-06-20");
    String order = order(1);
    posts(order + "/reserve", "{}").statusCode(200);
    posts(
            order + "/recipients",
            "{'recipients': [%s]}".formatted(GiftShelf.posted(2, box, "12.50")))
        .statusCode(200)
        .body("reserved", equalTo(false))
        .body("recipients[1].n", equalTo(2));
    posts(order + "/reserve", "{}").statusCode(200).body("reserved", equalTo(true));
    assertEquals(4, shelf.reserved(size, "golden"));
  }
}
