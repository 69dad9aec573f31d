package org.barreltally.shares;

import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.posts;
import static org.barreltally.shares.SharesOverRestTest.line;
import static org.barreltally.shares.SharesOverRestTest.newName;
import static org.barreltally.shares.SharesOverRestTest.tap;
import static org.barreltally.shares.SharesOverRestTest.terms;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each rule that says no to a lease or a hand-over, naming the field. */
@QuarkusTest
class LeaseRefusalsTest {

  @Inject ShelfFixture shelf;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'landowner': 'Odile'| 'landowner': ' '| invalid-field| landowner",
        "'bush': 'Upper Wend'| 'bush': null| invalid-field| bush",
        "'season': 2026| 'season': 26| invalid-field| season",
        "'season': 2026| 'season': null| invalid-field| season",
        "'basis': 'volume'| 'basis': null| invalid-field| basis",
        "'basis': 'volume'| 'basis': 'taste'| invalid-field| basis",
        "'governs': 'set'| 'governs': null| invalid-field| governs",
        "'amount': 1.10| 'amount': -1| invalid-field| ratePerTap",
        "'amount': 55.00| 'amount': 0| invalid-field| price",
        "'count': 420| 'count': -1| invalid-field| taps[0].count",
        "'count': 420| 'count': 1000001| invalid-field| taps[0].count",
        "'from': '2026-02-14'| 'from': '2026-02-30'| invalid-field| taps[0].from",
        "'from': '2026-02-14'| 'from': null| invalid-field| taps[0].from",
      })
  void a_lease_that_cannot_be_is_refused_by_name(
      String right, String wrong, String code, String field) {
    String body =
        "{'landowner': 'Odile', 'bush': 'Upper Wend', 'season': 2026, %s, 'taps': [%s]}"
            .formatted(terms("volume", "set", "1.10", "55.00"), tap("2026-02-14", 420));
    posts("/api/leases", body.replace(right, wrong))
        .statusCode(400)
        .body("code", equalTo(code))
        .body("errors[0].field", equalTo(field));
  }

  @Test
  void what_the_lease_or_the_shelf_does_not_allow_is_refused_and_leaves_nothing() {
    String size = newSize(8);
    String lot = shelf.lotWith(3, size);
    String owner = newName();
    String body =
        "{'landowner': '%s', 'bush': 'Upper Wend', 'season': 2026, %s, 'taps': []}"
            .formatted(owner, terms("list-value", "set", "1.10", "55.00"));
    String lease = posts("/api/leases", body).statusCode(201).extract().path("id");
    posts("/api/leases", body)
        .statusCode(409)
        .body("code", equalTo("lease-exists"))
        .body("errors[0].field", equalTo("season"));
    String deliveries = "/api/leases/" + lease + "/deliveries";
    posts(deliveries, "{'lines': [" + line(size, lot, 1) + "]}")
        .statusCode(422)
        .body("code", equalTo("no-list-price"))
        .body("errors[0].field", equalTo("lines[0].container"));
    posts(deliveries, "{'lines': [" + line(size, lot, 4) + "]}").statusCode(409);
    posts(deliveries, "{'lines': []}").statusCode(400).body("errors[0].field", equalTo("lines"));
    posts(deliveries, "{'lines': [" + line(size, lot, 0) + "]}")
        .statusCode(400)
        .body("errors[0].field", equalTo("lines[0].count"));
    posts(deliveries, "{'on': '2999-01-01', 'lines': [" + line(size, lot, 1) + "]}")
        .body("errors[0].field", equalTo("on"));
    posts("/api/lots/" + lot + "/hold", "{'reason': 'Tried'}").statusCode(200);
    posts(deliveries, "{'lines': [" + line(size, lot, 1) + "]}")
        .statusCode(409)
        .body("code", equalTo("lot-held"));
    Owner.asks()
        .contentType("application/json")
        .body("{\"lines\": []}")
        .post(deliveries)
        .then()
        .statusCode(400)
        .body("code", equalTo("id-missing"));
    posts(
            "/api/leases/" + UUID.randomUUID() + "/deliveries",
            "{'lines': [" + line(size, lot, 1) + "]}")
        .statusCode(404)
        .body("code", equalTo("unknown-lease"));
    Owner.asks()
        .get("/api/leases/" + lease + "/statement?season=2020")
        .then()
        .statusCode(404)
        .body("code", equalTo("no-lease-that-season"));
    assertEquals(3, shelf.standing("cool-room", lot, size));
  }
}
