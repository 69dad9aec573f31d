package org.barreltally.recall;

import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/** A lot that went every way with a name to it: by gift, to a landowner, to a shop's shelf. */
@QuarkusTest
class EveryHolderTest {

  @Inject ShelfFixture shelf;

  @Test
  void everyone_who_has_jars_is_named_and_the_rest_is_a_number() {
    String size = newSize(8);
    String lot = shelf.lotWith(50, size);
    String own = UUID.randomUUID().toString().substring(0, 8);
    give(size, own);
    hand(size, lot, own);
    consign(size, lot, own);
    posts(
            "/api/sales",
            "{'channel': 'farm', 'lines': [{'container': '%s', 'lot': '%s', 'count': 4, 'price': {'amount': 9, 'currency': 'USD'}}], 'paid': {}}"
                .formatted(size, lot))
        .statusCode(201);

    JsonPath found =
        posts("/api/recalls", "{'lot': '%s', 'reason': 'Tried', 'rehearsal': true}".formatted(lot))
            .statusCode(201)
            .extract()
            .jsonPath();
    assertEquals(
        List.of("Odile Fernsby " + own, "Ottilie Quillfeather " + own, "Quillback " + own),
        found.getList("holders.name"));
    assertEquals(
        List.of(3, 2, 6), found.getList("holders.collect { it.lines.count.sum() }", Integer.class));
    // Four at the gate without a name, and the one that the shop sold.
    assertEquals(5, found.getInt("publicRemainder.jars"));
    assertEquals(50, found.getInt("accounted"));
    shelf.assertBookIsWhole();
  }

  /** Two jars in two boxes, posted to one recipient. */
  private static void give(String size, String own) {
    posts(
            "/api/gift-boxes",
            "{'name': 'Box %s', 'price': {'amount': 20, 'currency': 'USD'}, 'contents': [{'container': '%s', 'grade': 'amber', 'count': 1}]}"
                .formatted(own, size))
        .statusCode(201);
    String order =
        posts(
                "/api/gift-orders",
                "{'buyer': {'name': 'Hesper Loomworks'}, 'recipients': [{'name': 'Ottilie Quillfeather %1$s', 'address': {'lines': ['4 Tarn Lane'], 'town': 'Fernby', 'region': 'VT', 'postcode': '05999', 'country': 'US'}, 'box': 'Box %1$s', 'count': 2, 'delivery': 'post', 'sendBy': '2026-12-14'}]}"
                    .formatted(own))
            .statusCode(201)
            .extract()
            .path("id");
    posts("/api/gift-orders/" + order + "/reserve", "{}").statusCode(200);
    for (String step : List.of("pick", "pack", "send")) {
      posts("/api/gift-orders/" + order + "/recipients/1/" + step, "{}").statusCode(200);
    }
  }

  private static void hand(String size, String lot, String own) {
    String lease =
        posts(
                "/api/leases",
                "{'landowner': 'Odile Fernsby %s', 'bush': 'Upper Wend', 'season': 2026, 'basis': 'volume', 'governs': 'set', 'ratePerTap': {'amount': 1, 'currency': 'USD'}, 'price': {'amount': 50, 'currency': 'USD'}, 'taps': []}"
                    .formatted(own))
            .statusCode(201)
            .extract()
            .path("id");
    posts(
            "/api/leases/" + lease + "/deliveries",
            "{'lines': [{'container': '%s', 'lot': '%s', 'count': 3}]}".formatted(size, lot))
        .statusCode(201);
  }

  /** Seven brought, six left. */
  private static void consign(String size, String lot, String own) {
    String list =
        posts(
                "/api/price-lists",
                "{'name': 'Held %1$s', 'audience': 'wholesale', 'validFrom': '2020-01-01', 'lines': [{'container': '%1$s', 'price': {'amount': 9, 'currency': 'USD'}}]}"
                    .formatted(size))
            .statusCode(201)
            .extract()
            .path("id");
    String shop =
        posts(
                "/api/shops",
                "{'name': 'Quillback %s', 'commissionPercent': 40, 'priceList': '%s'}"
                    .formatted(own, list))
            .statusCode(201)
            .extract()
            .path("code");
    String line = "{'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]}";
    posts("/api/shops/" + shop + "/deliveries", line.formatted(size, lot, 7)).statusCode(201);
    posts("/api/shops/" + shop + "/counts", line.formatted(size, lot, 6)).statusCode(201);
  }
}
