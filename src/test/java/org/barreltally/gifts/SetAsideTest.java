package org.barreltally.gifts;

import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.barreltally.BookRows;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was picked for a gift order, or came back from one, goes nowhere else by hand. */
@QuarkusTest
class SetAsideTest {

  @Inject GiftShelf shelf;
  @Inject BookRows rows;

  @AfterEach
  void theBookIsSound() {
    SoundBook.check();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          /api/stock/relocations | {'from': 'gift-shelf', 'to': 'cool-room', 'container': '$S', 'lot': '$L', 'count': 1, 'reason': 'Tidied'} | from
          /api/stock/relocations | {'from': 'cool-room', 'to': 'gift-shelf', 'container': '$S', 'lot': '$L', 'count': 1, 'reason': 'Tidied'} | to
          /api/stock/relocations | {'from': 'cool-room', 'to': 'gift-returns', 'container': '$S', 'lot': '$L', 'count': 1, 'reason': 'Tidied'} | to
          /api/stock/write-offs | {'place': 'gift-shelf', 'container': '$S', 'lot': '$L', 'count': 1, 'cause': 'broken'} | place
          /api/sales | {'channel': 'farm', 'place': 'gift-shelf', 'lines': [{'container': '$S', 'lot': '$L', 'count': 1, 'price': {'amount': 9.00, 'currency': 'USD'}}], 'paid': {'cash': {'amount': 9.00, 'currency': 'USD'}}} | place
          """)
  void is_refused_by_hand(String path, String json, String field) {
    String size = GiftShelf.newSize("8", "floz");
    String lot = shelf.lot(size, "amber", 3, "2024-06-20");
    String box = GiftShelf.box("Aside " + size, "22.00", size + " amber 2");
    String order = "/api/gift-orders/" + GiftShelf.order(GiftShelf.posted(1, box, "12.50"));
    posts(order + "/reserve", "{}").statusCode(200);
    posts(order + "/recipients/1/pick", "{}").statusCode(200);
    assertEquals(2, shelf.standing("gift-shelf", lot));
    Map<String, String> before = rows.fingerprint();
    posts(path, json.replace("$S", size).replace("$L", lot))
        .statusCode(409)
        .body("code", equalTo("set-aside"))
        .body("errors[0].field", equalTo(field));
    assertEquals(before, rows.fingerprint());
    assertEquals(2, shelf.standing("gift-shelf", lot));
  }

  @Test
  void a_shows_table_is_not_stocked_from_the_gift_shelf() {
    String size = GiftShelf.newSize("8", "floz");
    String lot = shelf.lot(size, "amber", 3, "2024-06-20");
    String show =
        posts(
                "/api/shows",
                "{'name': 'Fernby Fair', 'town': 'Fernby', 'starts': '2027-08-20', 'ends': '2027-08-21', 'state': 'accepted'}")
            .statusCode(201)
            .extract()
            .path("id");
    posts(
            "/api/shows/" + show + "/pack-out",
            "{'from': 'gift-shelf', 'lines': [{'container': '%s', 'lot': '%s', 'count': 1}]}"
                .formatted(size, lot))
        .statusCode(409)
        .body("code", equalTo("set-aside"))
        .body("errors[0].field", equalTo("from"));
  }
}
