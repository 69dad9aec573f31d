package org.barreltally.web;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.TreeSet;
import java.util.UUID;
import org.barreltally.BookRows;
import org.barreltally.PageReader;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/**
 * Somebody's data is removed: afterwards every column of every table is searched for a word that
 * was planted in all that was written of them.
 */
@QuarkusTest
class RemovedNamesTest {

  private static final String TABLES =
      """
      SELECT c.relname FROM pg_class c
      WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r'
        AND has_table_privilege(c.oid, 'SELECT')
      """;

  @Inject BookRows rows;
  @Inject ShelfFixture shelf;

  private final String word = "Quill" + UUID.randomUUID().toString().replace("-", "");

  /** The tables in which the word stands, in whatever column. */
  private TreeSet<String> found() {
    TreeSet<String> tables = new TreeSet<>();
    for (String table : rows.column(TABLES)) {
      if (rows.number(
              "SELECT count(*) FROM \"%s\" t WHERE t::text ILIKE '%%%s%%'".formatted(table, word))
          > 0) {
        tables.add(table);
      }
    }
    return tables;
  }

  private void planted() {
    assertFalse(found().isEmpty(), "the word was written nowhere");
  }

  private void gone() {
    assertEquals(new TreeSet<>(), found());
  }

  private static String id(String path, String json) {
    return posts(path, json).statusCode(201).extract().path("id");
  }

  @Test
  void of_a_gift_order() {
    String size = newSize(8);
    shelf.lotWith(4, size);
    String box = "Box " + UUID.randomUUID();
    posts(
            "/api/gift-boxes",
            "{'name': '%s', 'price': {'amount': 20, 'currency': 'USD'}, 'contents': [{'container': '%s', 'grade': 'amber', 'count': 1}]}"
                .formatted(box, size))
        .statusCode(201);
    String order =
        id(
            "/api/gift-orders",
            """
            {'buyer': {'name': 'A %1$s', 'phone': '555 0100', 'email': '%1$s@fernby.example', 'details': 'for %1$s'},
             'recipients': [{'name': 'B %1$s', 'address': {'lines': ['4 %1$s Lane'], 'town': '%1$s', 'region': 'VT', 'postcode': '05999', 'country': 'US'},
               'box': '%2$s', 'count': 1, 'card': 'Dear %1$s', 'delivery': 'post', 'sendBy': '2026-12-14'}]}
            """
                .formatted(word, box));
    posts("/api/gift-orders/" + order + "/reserve", "{}").statusCode(200);
    planted();
    posts("/api/gift-orders/" + order + "/recipients/1/cancel", "{}").statusCode(200);
    asks().delete("/api/gift-orders/" + order + "/people").then().statusCode(204);
    gone();
  }

  @Test
  void of_a_buyer_away_from_shows() {
    String size = newSize(8);
    String lot = shelf.lotWith(2, size);
    String sale =
        id(
            "/api/sales",
            """
            {'channel': 'post', 'buyer': {'name': 'C %1$s', 'address': ['4 %1$s Lane', 'Fernby'], 'contact': '%1$s'},
             'lines': [{'container': '%2$s', 'lot': '%3$s', 'count': 1, 'price': {'amount': 15, 'currency': 'USD'}}],
             'paid': {'card': {'amount': 15, 'currency': 'USD'}}}
            """
                .formatted(word, size, lot));
    planted();
    asks().delete("/api/sales/" + sale + "/buyer").then().statusCode(204);
    gone();
  }

  @Test
  void of_a_landowner() {
    String lease =
        id(
            "/api/leases",
            "{'landowner': 'D %s', 'bush': 'Removed Hill', 'season': 2012, 'basis': 'volume', 'governs': 'set', 'ratePerTap': {'amount': 1.10, 'currency': 'USD'}, 'price': {'amount': 55.00, 'currency': 'USD'}, 'taps': []}"
                .formatted(word));
    planted();
    List<String> ids =
        asks()
            .get("/api/landowners?limit=500")
            .jsonPath()
            .getList("items.findAll { it.name == 'D %s' }.id".formatted(word));
    asks()
        .contentType("application/json")
        .body("{\"name\": \"Former owner %s\"}".formatted(lease.substring(24)))
        .put("/api/landowners/" + ids.get(0))
        .then()
        .statusCode(200);
    gone();
  }

  @Test
  void of_somebody_who_waited_for_a_call() {
    String show =
        id(
            "/api/shows",
            "{'name': 'Removed Fair', 'town': 'Fernby', 'starts': '2027-08-20', 'ends': '2027-08-21', 'state': 'accepted'}");
    String lead = UUID.randomUUID().toString();
    posts(
            "/api/shows/" + show + "/leads",
            "{'id': '%s', 'at': '2026-11-01T12:00:00Z', 'name': 'E %s', 'phone': '555 0101', 'wish': 'For %s'}"
                .formatted(lead, word, word))
        .statusCode(201);
    planted();
    asks().delete("/api/leads/" + lead).then().statusCode(204);
    gone();
  }

  @Test
  void of_who_is_to_be_asked_for_at_a_shop() {
    String code =
        posts(
                "/api/shops",
                "{'name': 'Shop %s', 'details': 'Ask for %s', 'commissionPercent': 40, 'missing': 'shop'}"
                    .formatted(UUID.randomUUID(), word))
            .statusCode(201)
            .extract()
            .path("code");
    planted();
    posts(
            "/api/shops/" + code + "/terms",
            "{'validFrom': '2026-10-01', 'commissionPercent': 40, 'missing': 'shop'}")
        .statusCode(201);
    asks()
        .contentType("application/json")
        .body("{}")
        .put("/api/shops/" + code + "/details")
        .then()
        .statusCode(200);
    gone();
  }

  @Test
  void of_a_helper_who_left() {
    String name = word.toLowerCase(java.util.Locale.ROOT);
    String password =
        posts(
                "/api/people",
                "{'name': '%s', 'displayName': 'F %s', 'role': 'table'}".formatted(name, word))
            .statusCode(201)
            .extract()
            .path("password");
    PageReader.as(name, password);
    planted();
    asks().delete("/api/people/" + name + "/names").then().statusCode(409);
    asks().post("/api/people/" + name + "/leave").then().statusCode(200);
    asks().delete("/api/people/" + name + "/names").then().statusCode(200);
    gone();
  }
}
