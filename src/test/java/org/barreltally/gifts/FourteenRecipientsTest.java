package org.barreltally.gifts;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.gifts.GiftShelf.posted;
import static org.barreltally.gifts.GiftShelf.without;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.Test;

/**
 * A gift order of 14 recipients, told from the shelf to the last parcel. Worked out by hand: 9
 * boxes at $22 and 5 at $28 are 198 + 140 = $338; 11 mailings at $12.50 are $137.50; together
 * $475.50, half of it $237.75. One parcel comes back and is sent again at the buyer's cost:
 * $488.00, so $250.25 are left. One dark jar breaks in the post and is replaced: a mailing of
 * $12.50 and a jar at the maker's cost, 14 + 1 = 15 dark jars, 11 + 1 + 1 = 13 mailings. Of 9
 * golden jars wanted 8 are there, so one box gets amber.
 */
@QuarkusTest
class FourteenRecipientsTest {

  @Inject GiftShelf shelf;

  @Test
  void fourteen_recipients_from_promise_to_balance() {
    String half = GiftShelf.newSize("8", "floz");
    String pint = GiftShelf.newSize("16", "floz");
    final String golden = shelf.lot(half, "golden", 8, "2024-06-20");
    final String oldDark = shelf.lot(half, "dark", 10, "2024-06-21");
    final String newDark = shelf.lot(half, "dark", 20, "2024-09-02");
    final String amber = shelf.lot(half, "amber", 6, "2024-06-20");
    final String pints = shelf.lot(pint, "amber", 5, "2024-06-20");
    String taster =
        GiftShelf.box("Taster " + half, "22.00", half + " golden 1/amber", half + " dark 1");
    String breakfast =
        GiftShelf.box("Breakfast " + half, "28.00", pint + " amber 1", half + " dark 1");

    // The buyer names 14 people; 3 and 4 live at one address, 12 and 13 fetch theirs, a friend
    // carries the last.
    List<String> recipients = new ArrayList<>();
    for (int n = 1; n <= 11; n++) {
      recipients.add(posted(n == 4 ? 3 : n, n <= 7 ? taster : breakfast, "12.50"));
    }
    recipients.add(without(12, breakfast, "collect"));
    recipients.add(without(13, taster, "collect"));
    recipients.add(without(14, taster, "by-hand"));
    String body =
        "{'buyer': {'name': 'Hesper Loomworks', 'phone': '555 0100'}, 'depositPercent': 50, %s"
            + " 'recipients': ["
            + String.join(",", recipients)
            + "]}";

    // Before anything is promised: one golden jar too few, and amber would take its place.
    posts("/api/gift-orders/what-if", body.formatted(""))
        .statusCode(200)
        .body("canBePromised", equalTo(true))
        .body("days[-1].items.find { it.grade == 'golden' }.wanted", equalTo(9))
        .body("days[-1].items.find { it.grade == 'golden' }.free", equalTo(8))
        .body("substitutes", hasSize(1));

    JsonPath taken =
        posts(
                "/api/gift-orders",
                body.formatted("'deposit': {'amount': 237.75, 'currency': 'USD'},"))
            .statusCode(201)
            .body("total.amount.toDouble()", equalTo(475.50))
            .body("bill.goods.amount.toDouble()", equalTo(338.00))
            .body("bill.postage.amount.toDouble()", equalTo(137.50))
            .body("bill.depositAsked.amount.toDouble()", equalTo(237.75))
            .body("balance.amount.toDouble()", equalTo(237.75))
            .body("recipients", hasSize(14))
            .body("recipients[0].name", equalTo(null))
            .body("buyer", equalTo(null))
            .body("cautions", hasItem(containsString("3, 4 share an address")))
            .extract()
            .jsonPath();
    String order = "/api/gift-orders/" + taken.getString("id");
    reads(order).body("recipients[13].name", equalTo("Recipient 14 Quillfeather"));

    // Everything is reserved at once, with one substitute.
    JsonPath reserved =
        posts(order + "/reserve", "{}")
            .statusCode(200)
            .body("reserved", equalTo(true))
            .extract()
            .jsonPath();
    List<Map<String, Object>> swaps =
        reserved.getList("recipients.contents.flatten().findAll { it.insteadOf != null }");
    assertEquals(1, swaps.size());
    assertEquals("amber", swaps.get(0).get("grade"));
    assertEquals(0, shelf.available(half, "golden"));
    assertEquals(30 - 14, shelf.available(half, "dark"));
    assertEquals(6 - 1, shelf.available(half, "amber"));
    assertEquals(0, shelf.available(pint, "amber"));

    // The last recipient is taken out before packing: exactly his jars are free; then taken in
    // again.
    long amberFree = shelf.available(half, "amber");
    posts(order + "/recipients/14/cancel", "{'reason': 'The buyer asked'}")
        .statusCode(200)
        .body("state", equalTo("cancelled"));
    assertEquals(17, shelf.available(half, "dark"));
    assertEquals(
        1,
        shelf.available(half, "golden") + shelf.available(half, "amber") - amberFree,
        "his one golden jar, or the amber in its stead");
    posts(order + "/recipients/14/undo", "{'reason': 'He is back'}")
        .statusCode(200)
        .body("state", equalTo("confirmed"))
        .body("reserved", equalTo(true));

    // Picking fixes the lots, the oldest packed first.
    posts(order + "/pick", "{'on': '2026-11-20'}").statusCode(200);
    assertEquals(0, shelf.standing("cool-room", oldDark));
    assertEquals(16, shelf.standing("cool-room", newDark));
    assertEquals(0, shelf.standing("cool-room", golden));
    assertEquals(5, shelf.standing("cool-room", amber));
    posts(order + "/pack", "{'on': '2026-11-20'}").statusCode(200);

    // Eleven go to the post; three are fetched or carried.
    posts(
            order + "/send",
            "{'on': '2026-11-21', 'recipients': [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]}")
        .statusCode(200)
        .body("bill.mailings", equalTo(11));
    for (int n : new int[] {12, 13, 14}) {
      posts(order + "/recipients/" + n + "/deliver", "{'on': '2026-11-21'}")
          .statusCode(200)
          .body("state", equalTo("delivered"));
    }
    assertEquals(0, shelf.reserved(half, "dark"));

    // The parcel of recipient 2 comes back: no stock until somebody looked at it.
    long darkBefore = shelf.available(half, "dark");
    JsonPath back =
        posts(order + "/recipients/2/return", "{'on': '2026-11-23', 'reason': 'No such street'}")
            .statusCode(200)
            .body("state", equalTo("returned"))
            .body("awaitingInspection", equalTo(true))
            .extract()
            .jsonPath();
    assertEquals(darkBefore, shelf.available(half, "dark"));
    posts(order + "/recipients/2/send", "{}").statusCode(409).body("code", equalTo("wrong-step"));
    posts(
            order + "/recipients/2/inspect",
            "{'on': '2026-11-23', 'lines': %s}".formatted(whole(back)))
        .statusCode(200)
        .body("awaitingInspection", equalTo(false));
    assertEquals(darkBefore, shelf.available(half, "dark"), "kept for the same recipient");
    posts(
            order + "/recipients/2/correction",
            """
            {'address': {'lines': ['2 Tarn Lane East'], 'town': 'Fernby', 'region': 'VT',
                         'postcode': '05999', 'country': 'US'}}
            """)
        .statusCode(200);
    posts(order + "/recipients/2/send", "{'on': '2026-11-24'}")
        .statusCode(200)
        .body("state", equalTo("sent"));

    // In the parcel of recipient 5 the dark jar is broken; the maker sends another.
    String broken =
        reads(order).extract().path("recipients[4].lots.find { it.grade == 'dark' }.lot");
    posts(
            order + "/recipients/5/replace",
            "{'on': '2026-11-24', 'reason': 'Broken in post', 'lines': [{'container': '%s', 'lot': '%s', 'count': 1}]}"
                .formatted(half, broken))
        .statusCode(200)
        .body("lots.find { it.grade == 'dark' }.lot", equalTo(newDark))
        .body("lots", hasSize(2));
    assertEquals(15, 30 - shelf.standing("cool-room", newDark));

    for (int n = 1; n <= 11; n++) {
      posts(order + "/recipients/" + n + "/deliver", "{'on': '2026-11-25'}").statusCode(200);
    }
    JsonPath done = reads(order).extract().jsonPath();
    assertEquals(488.00, done.getDouble("total.amount"));
    assertEquals(250.25, done.getDouble("balance.amount"));
    assertEquals(12.50, done.getDouble("bill.ownCost.amount"));
    assertEquals(13, done.getInt("bill.mailings"));
    assertEquals(1, done.getInt("bill.replacements"));
    assertTrue(done.getBoolean("resolved"));
    assertEquals(14, done.getList("recipients.findAll { it.lots.size() == 2 }").size());
    assertEquals(
        1, done.getList("recipients.lots.flatten().findAll { it.lot == '" + amber + "' }").size());
    assertEquals(
        5, done.getList("recipients.lots.flatten().findAll { it.lot == '" + pints + "' }").size());

    // Whoever recalls the amber lot finds the one recipient who holds a jar of it.
    reads("/api/lots/" + amber + "/gift-recipients")
        .body("items", hasSize(1))
        .body("items[0].at", equalTo("sent"))
        .body("items[0].buyer", equalTo("Hesper Loomworks"));

    posts(
            order + "/payments",
            "{'amount': {'amount': 250.25, 'currency': 'USD'}, 'on': '2026-11-25'}")
        .statusCode(200)
        .body("balance.amount.toDouble()", equalTo(0.00));
    SoundBook.check();
  }

  private static String whole(JsonPath recipient) {
    StringBuilder lines = new StringBuilder("[");
    List<Map<String, Object>> lots = recipient.getList("lots");
    for (Map<String, Object> lot : lots) {
      lines
          .append(lines.length() > 1 ? ", " : "")
          .append(
              "{'container': '%s', 'lot': '%s', 'good': %s, 'broken': 0}"
                  .formatted(lot.get("container"), lot.get("lot"), lot.get("count")));
    }
    return lines.append("]").toString();
  }
}
