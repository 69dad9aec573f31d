package org.barreltally.documents;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Locale;
import java.util.UUID;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a show gave to a lot stands on its labels and on the price card of such jars. */
@QuarkusTest
class RibbonsOnPapersTest {

  @Inject ShelfFixture shelf;

  private String size;
  private String lot;
  private String show;

  @BeforeEach
  void a_lot_goes_to_a_show() {
    size = "R" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
    posts(
            "/api/containers",
            "{'code': '%s', 'name': 'Judged jar', 'netContents': {'value': 16, 'unit': 'floz'}, 'material': 'glass'}"
                .formatted(size))
        .statusCode(201);
    lot = shelf.lotWith(12, size);
    show =
        posts(
                "/api/shows",
                "{'name': 'Elmshire Fair', 'town': 'Fernby', 'starts': '2025-09-06', 'ends': '2025-09-06', 'state': 'accepted'}")
            .statusCode(201)
            .extract()
            .path("id");
  }

  @Test
  void a_ribbon_stands_on_labels_that_ask_for_it_and_on_prints_kept() throws Exception {
    judged(", 'ribbon': 'First ribbon'");

    assertFalse(Page.text(labels("")).contains("ribbon"));
    assertTrue(Page.text(labels("&award=true")).contains("First ribbon"));
    String print =
        posts(
                "/api/lots/" + lot + "/label-prints",
                "{'container': '%s', 'count': 2, 'award': true}".formatted(size))
            .statusCode(201)
            .extract()
            .path("id");
    assertTrue(
        Page.text(PackedLot.pdf("/api/lots/" + lot + "/label-prints/" + print + "/labels.pdf"))
            .contains("First ribbon"));
  }

  @Test
  void a_lot_that_was_only_entered_has_no_ribbon_to_print() {
    judged("");

    refused("true", 422, "no-ribbon-yet");
    refused("perhaps", 400, "invalid-field");
  }

  @Test
  void a_price_card_of_the_grade_shows_it_and_a_card_of_every_grade_does_not() throws Exception {
    judged(", 'ribbon': 'First ribbon'");

    assertTrue(Page.text(cards(", 'grade': 'amber'")).contains("First ribbon, Elmshire Fair 2025"));
    assertFalse(Page.text(cards("")).contains("First ribbon"));
  }

  private void judged(String how) {
    posts(
            "/api/shows/" + show + "/awards",
            "{'class': 'Amber, glass', 'lot': '%s', 'container': '%s'%s}".formatted(lot, size, how))
        .statusCode(201);
  }

  private byte[] labels(String more) {
    return PackedLot.pdf("/api/lots/" + lot + "/labels.pdf?container=" + size + "&count=2" + more);
  }

  private byte[] cards(String grade) {
    String list =
        posts(
                "/api/price-lists",
                "{'name': 'Judged jars', 'audience': 'show', 'validFrom': '2025-07-01', 'lines': [{'container': '%s'%s, 'price': {'amount': 15.00, 'currency': 'USD'}}]}"
                    .formatted(size, grade))
            .statusCode(201)
            .extract()
            .path("id");
    return PackedLot.pdf("/api/price-lists/" + list + "/cards.pdf");
  }

  private void refused(String award, int status, String code) {
    asks()
        .get("/api/lots/" + lot + "/labels.pdf?container=" + size + "&award=" + award)
        .then()
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors[0].field", equalTo("award"));
  }
}
