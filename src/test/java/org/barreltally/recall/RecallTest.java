package org.barreltally.recall;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.documents.Page;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * An invented sugarhouse calls back the syrup of one barrel. Its jars were sold to two people by
 * name and to some without; a heel of 20 lb went into the next lot, beside 208 lb of another
 * barrel, so 20 / 228 of that lot is of the barrel (worked out by hand from the weights).
 */
@QuarkusTest
class RecallTest {

  private static final double HEEL_SHARE = 20.0 / 228.0;

  @Inject ShelfFixture shelf;
  @Inject EntityManager entities;

  private String tag;
  private String bulk;
  private String first;
  private String second;
  private String buyer;

  @BeforeEach
  void jars_of_a_barrel_and_of_its_heel() {
    tag = newTag("R");
    String fresh = newTag("F");
    String heel = newTag("H");
    buyer = "Hesper Loomworks " + tag;
    posts("/api/barrels", barrel(tag, 2024, "2024-03-14", 250, 42, 66.9, 62)).statusCode(201);
    posts("/api/barrels", barrel(fresh, 2024, "2024-03-16", 250, 42, 66.9, 60)).statusCode(201);
    bulk = reads("/api/barrels/" + tag).extract().path("lot");
    first =
        cans(
            "{'barrel': '" + tag + "', 'all': true}",
            120,
            ", 'heel': {'weight': {'value': 20, 'unit': 'lb'}, 'keptIn': '" + heel + "'}");
    second =
        cans(
            "{'barrel': '%s', 'all': true}, {'vessel': '%s', 'all': true}".formatted(fresh, heel),
            150,
            "");
    sells(buyer, first, 12);
    sells(null, first, 5);
    sells("Piet Ashdown " + tag, second, 30);
  }

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void a_rehearsal_finds_everything_and_changes_nothing() {
    Map<String, String> before = dump();
    JsonPath found =
        posts("/api/recalls", asked("'lot': '" + bulk + "', 'rehearsal': true"))
            .statusCode(201)
            .body("state", equalTo("rehearsal"))
            .body("holders", hasSize(2))
            .extract()
            .jsonPath();
    assertEquals(before, dump());
    assertEquals(List.of(bulk, first, second), found.getList("touched.lot"));
    assertEquals(List.of(false, false, false), found.getList("touched.held"));
    assertEquals(1.0, found.getDouble("touched[1].share"), 1e-6);
    assertEquals(HEEL_SHARE, found.getDouble("touched[2].share"), 1e-4);
    assertEquals(List.of(103L, 120L), pieces(found, "onHand"));
    assertEquals(5, found.getInt("publicRemainder.jars"));
    assertEquals(270, found.getInt("total"));
    assertEquals(270, found.getInt("accounted"));
    // Nothing is held: a jar can still be sold.
    sells(null, first, 1);
    posts("/api/recalls/" + found.getString("id") + "/end", "{'reason': 'Only tried'}")
        .statusCode(409)
        .body("code", equalTo("nothing-to-end"));
  }

  @Test
  void a_recall_holds_what_it_touched_until_it_ends_and_somebody_releases_it() {
    UUID key = UUID.randomUUID();
    String said = asked("'barrel': '" + tag + "'");
    JsonPath found = posts("/api/recalls", said, key).statusCode(201).extract().jsonPath();
    String id = found.getString("id");
    assertEquals(bulk, found.getString("lot"));
    assertEquals(List.of(true, true, true), found.getList("touched.held"));
    assertEquals(id, posts("/api/recalls", said, key).statusCode(201).extract().path("id"));
    String kept =
        (String)
            entities
                .createNativeQuery(
                    "SELECT location || coalesce(body, '') FROM requests WHERE key = :key")
                .setParameter("key", key)
                .getSingleResult();
    assertTrue(kept.contains(id) && !kept.contains("Hesper"), "no names with the key: " + kept);

    // Neither sold, nor printed, nor promised, nor released.
    posts("/api/sales", sale(null, first, 1)).statusCode(409).body("code", equalTo("lot-held"));
    posts("/api/lots/" + second + "/label-prints", "{'container': 'PT', 'count': 3}")
        .statusCode(409)
        .body("code", equalTo("lot-held"));
    for (String lot : List.of(bulk, first, second)) {
      posts("/api/lots/" + lot + "/release", "{'reason': 'Tastes fine to me'}")
          .statusCode(409)
          .body("code", equalTo("recall-open"));
    }

    // A jar that comes back is on hand again, and its buyer holds one less.
    String sold = (String) lastSaleTo(buyer);
    posts(
            "/api/sales/" + sold + "/returns",
            "{'lines': [{'container': 'PT', 'lot': '%s', 'count': 4}], 'reason': 'Recall'}"
                .formatted(first))
        .statusCode(201);
    reads("/api/recalls/" + id)
        .body("holders.find { it.name == '" + buyer + "' }.lines[0].count", equalTo(8))
        .body("holders.find { it.name == '" + buyer + "' }.certainty", equalTo("exact"))
        .body("onHand.find { it.place == 'to-inspect' }.count", equalTo(4));

    reads("/api/recalls?limit=500").body("items.id", hasItem(id));
    posts("/api/recalls/" + id + "/end", "{'reason': 'All found'}")
        .statusCode(200)
        .body("state", equalTo("ended"))
        .body("touched.held", contains(true, true, true));
    posts("/api/lots/" + second + "/release", "{'reason': 'Opened, tasted, sound'}")
        .statusCode(200)
        .body("held", equalTo(false));
    posts("/api/recalls/" + id + "/end", "{'reason': 'Again'}")
        .statusCode(409)
        .body("code", equalTo("nothing-to-end"));
  }

  @Test
  void every_holder_known_by_name_gets_a_letter_with_address_and_lots() throws Exception {
    String id =
        posts("/api/recalls", asked("'lot': '" + bulk + "', 'rehearsal': true"))
            .statusCode(201)
            .extract()
            .path("id");
    byte[] pdf = reads("/api/recalls/" + id + "/letters.pdf").extract().asByteArray();
    assertEquals(2, Page.pages(pdf));
    String text = Page.text(pdf);
    for (String word :
        List.of(buyer, "4 Weir Lane", first, "12 jars", second, "30 jars", "REHEARSAL", "glass")) {
      assertTrue(text.contains(word), word + " in " + text);
    }
    String one =
        Page.text(reads("/api/recalls/" + id + "/letters.pdf?holder=1").extract().asByteArray());
    assertTrue(one.contains(buyer) && !one.contains("Piet Ashdown"), one);
    asks()
        .get("/api/recalls/" + id + "/letters.pdf?holder=3")
        .then()
        .statusCode(409)
        .body("code", equalTo("nobody-to-write"));

    // Whose name was removed is told no more; the jars count among those without a name.
    asks().delete("/api/sales/" + lastSaleTo(buyer) + "/buyer").then().statusCode(204);
    reads("/api/recalls/" + id)
        .body("holders.name", contains(startsWith("Piet Ashdown")))
        .body("publicRemainder.jars", equalTo(17));
  }

  @Test
  void what_is_said_wrongly_is_refused_and_leaves_nothing() {
    Map<String, String> before = dump();
    refused("{'lot': 'NO-LOT', 'reason': 'Mould'}", 400, "unknown-lot", "lot");
    refused("{'barrel': 'NO-TAG', 'reason': 'Mould'}", 400, "unknown-barrel", "barrel");
    refused("{'reason': 'Mould'}", 400, "invalid-field", "lot");
    refused(
        "{'lot': '%s', 'barrel': '%s', 'reason': 'Mould'}".formatted(bulk, tag),
        400,
        "invalid-field",
        "lot");
    refused("{'lot': '%s', 'reason': ' '}".formatted(bulk), 400, null, "reason");
    posts("/api/recalls/" + UUID.randomUUID() + "/end", "{'reason': 'Gone'}")
        .statusCode(404)
        .body("code", equalTo("unknown-recall"));
    assertEquals(before, dump());
    long recalls = shelfNumber("SELECT count(*) FROM recalls WHERE lot = '" + bulk + "'");
    assertEquals(0, recalls);
  }

  private static void refused(String json, int status, String code, String field) {
    var answer =
        posts("/api/recalls", json).statusCode(status).body("errors.field", hasItem(field));
    if (code != null) {
      answer.body("code", equalTo(code));
    }
  }

  private static String asked(String which) {
    return "{" + which + ", 'reason': 'Scorched taste in two jars'}";
  }

  private static List<Long> pieces(JsonPath found, String list) {
    return found.getList(list + ".count", Long.class);
  }

  private static String cans(String draws, int pints, String rest) {
    return posts(
            "/api/canning/runs",
            """
            {'on': '2024-06-20', 'draws': [%s], 'fillTemperature': {'value': 186, 'unit': 'degF'},
             'fills': [{'container': 'PT', 'count': %d}]%s, 'transmittance': 59, 'taste': 'clean'}
            """
                .formatted(draws, pints, rest))
        .statusCode(201)
        .extract()
        .path("lot");
  }

  private static void sells(String buyer, String lot, int count) {
    posts("/api/sales", sale(buyer, lot, count)).statusCode(201);
  }

  private static String sale(String buyer, String lot, int count) {
    String who =
        buyer == null
            ? ""
            : "'buyer': {'name': '%s', 'address': ['4 Weir Lane', 'Fernby']}, ".formatted(buyer);
    return ("{'channel': 'post', %s'lines': [{'container': 'PT', 'lot': '%s', 'count': %d,"
            + " 'price': {'amount': 15, 'currency': 'USD'}}], 'paid': {}}")
        .formatted(who, lot, count);
  }

  private Object lastSaleTo(String name) {
    return entities
        .createNativeQuery(
            "SELECT CAST(s.id AS text) FROM sales s JOIN sale_buyers b ON b.id = s.buyer"
                + " WHERE b.name = :name ORDER BY s.id DESC LIMIT 1")
        .setParameter("name", name)
        .getSingleResult();
  }

  private long shelfNumber(String sql) {
    return ((Number) entities.createNativeQuery(sql).getSingleResult()).longValue();
  }

  /** Every row of every table but what a rehearsal and its request leave behind, as a hash each. */
  @Transactional
  Map<String, String> dump() {
    Map<String, String> tables = new TreeMap<>();
    List<?> names =
        entities
            .createNativeQuery(
                "SELECT CAST(table_name AS text) FROM information_schema.tables"
                    + " WHERE table_schema = current_schema() AND table_type = 'BASE TABLE'"
                    + " AND table_name NOT IN"
                    + " ('requests', 'recalls', 'recall_lots', 'flyway_schema_history')")
            .getResultList();
    for (Object name : names) {
      tables.put(
          (String) name,
          (String)
              entities
                  .createNativeQuery(
                      "SELECT coalesce(md5(string_agg(CAST(t AS text), '|' ORDER BY CAST(t AS text))), '')"
                          + " FROM "
                          + name
                          + " t")
                  .getSingleResult());
    }
    assertFalse(tables.isEmpty());
    assertTrue(tables.containsKey("lot_holds") && tables.containsKey("availability"));
    return tables;
  }
}
