package org.barreltally.gifts;

import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/** A fair that sold twelve last year wants jars again before the parcels leave. */
@QuarkusTest
class ShowsBetweenTest {

  private static final String TABLE =
      ", 'booth': {'tables': [{'lengthInches': 96, 'depthInches': 30, 'tiers': 3}]}";

  @Inject ShelfFixture shelf;

  @Test
  void what_a_show_in_between_would_take_is_told_before_anything_is_promised() {
    String size = newSize(8);
    String lot = shelf.lotWith(60, size);
    String name = "Advent Fair " + size;
    String last = show(name, "2025-12-06");
    posts(
            "/api/shows/" + last + "/pack-out",
            "{'lines': [{'container': '%s', 'lot': '%s', 'count': 20}]}".formatted(size, lot))
        .statusCode(201);
    posts(
            "/api/shows/" + last + "/sales",
            "{'id': '%s', 'at': '2025-12-06T15:00:00Z', 'lines': [{'container': '%s', 'lot': '%s', 'count': 12, 'price': {'amount': 9, 'currency': 'USD'}}], 'paid': {}}"
                .formatted(UUID.randomUUID(), size, lot))
        .statusCode(201);
    posts(
            "/api/shows/" + last + "/back",
            "{'lines': [{'container': '%s', 'lot': '%s', 'count': 8}]}".formatted(size, lot))
        .statusCode(201);
    show(name, "2029-12-05");
    posts(
            "/api/gift-boxes",
            "{'name': 'Box %s', 'price': {'amount': 20, 'currency': 'USD'}, 'contents': [{'container': '%s', 'grade': 'amber', 'count': 1}]}"
                .formatted(size, size))
        .statusCode(201);

    JsonPath before = outlook(size, "2029-12-01");
    assertEquals(48, before.getLong("available"));
    assertEquals(0, before.getLong("booked"));
    assertEquals(48, before.getLong("free"));
    JsonPath after = outlook(size, "2029-12-14");
    long booked = after.getLong("booked");
    assertTrue(booked > 0 && booked <= 48, "booked " + booked);
    assertEquals(48 - booked, after.getLong("free"));
  }

  private static String show(String name, String day) {
    return posts(
            "/api/shows",
            "{'name': '%s', 'town': 'Fernby', 'starts': '%s', 'ends': '%s', 'state': 'accepted'%s}"
                .formatted(name, day, day, TABLE))
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static JsonPath outlook(String size, String sendBy) {
    return posts(
            "/api/gift-orders/what-if",
            "{'buyer': {'name': 'Hesper Loomworks'}, 'recipients': [{'name': 'Ottilie', 'address': {'lines': ['4 Tarn Lane'], 'town': 'Fernby', 'region': 'VT', 'postcode': '05999', 'country': 'US'}, 'box': 'Box %s', 'count': 1, 'delivery': 'post', 'sendBy': '%s'}]}"
                .formatted(size, sendBy))
        .statusCode(200)
        .extract()
        .jsonPath()
        .setRootPath("days[0].items.find { it.container == '%s' }".formatted(size));
  }
}
