package org.barreltally.web;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/** Where every field may be left out, so may the body; elsewhere it may not. */
@QuarkusTest
class EmptyBodyTest {

  @Inject ShelfFixture shelf;

  @Test
  void a_gift_goes_its_way_without_a_word() {
    String size = newSize(8);
    shelf.lotWith(2, size);
    String box = "Box " + size;
    posts(
            "/api/gift-boxes",
            "{'name': '%s', 'price': {'amount': 20, 'currency': 'USD'}, 'contents': [{'container': '%s', 'grade': 'amber', 'count': 1}]}"
                .formatted(box, size))
        .statusCode(201);
    String order =
        posts(
                "/api/gift-orders",
                "{'buyer': {'name': 'Hesper Loomworks'}, 'recipients': [{'name': 'Ottilie', 'address': {'lines': ['4 Tarn Lane'], 'town': 'Fernby', 'region': 'VT', 'postcode': '05999', 'country': 'US'}, 'box': '%s', 'count': 1, 'delivery': 'post', 'sendBy': '2026-12-14'}]}"
                    .formatted(box))
            .statusCode(201)
            .extract()
            .path("id");
    silent("/api/gift-orders/" + order + "/reserve").statusCode(200);
    for (String step : new String[] {"pick", "pack", "send", "deliver", "return"}) {
      silent("/api/gift-orders/" + order + "/recipients/1/" + step).statusCode(200);
    }
  }

  @Test
  void where_something_is_needed_a_missing_body_is_refused() {
    silent("/api/barrels").statusCode(400).body("code", equalTo("body-missing"));
  }

  private static ValidatableResponse silent(String path) {
    return asks()
        .contentType("application/json")
        .header("Idempotency-Key", UUID.randomUUID())
        .post(path)
        .then();
  }
}
