package org.barreltally.web;

import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.BookRows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is kept beside a request's id holds no name of a person: the first answer and its repeat
 * show the name, the book of answers does not.
 */
@QuarkusTest
class NoNamesKeptTest {

  private static final String TERMS =
      "'basis': 'volume', 'governs': 'set', 'ratePerTap': {'amount': 1.10, 'currency': 'USD'},"
          + " 'price': {'amount': 55.00, 'currency': 'USD'}";

  @Inject BookRows rows;

  private String someone() {
    return "Quillfeather " + UUID.randomUUID();
  }

  private void nothingKeptOf(String name) {
    assertEquals(
        0, rows.number("SELECT count(*) FROM requests WHERE body LIKE '%" + name + "%'"), name);
  }

  /** Sends the same twice under one id; both answers name the person, and are the same. */
  private String twice(String path, String json, String name) {
    UUID key = UUID.randomUUID();
    String first =
        posts(path, json, key).statusCode(201).body(containsString(name)).extract().asString();
    posts(path, json, key).statusCode(201).body(equalTo(first));
    nothingKeptOf(name);
    return JsonPath.from(first).getString("id");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          taps  | {'from': '2026-02-14', 'count': 420}
          terms | {%s}
          """)
  void leases(String step, String json) {
    String owner = someone();
    String lease =
        twice(
            "/api/leases",
            "{'landowner': '%s', 'bush': 'Upper Wend', 'season': 2026, %s}".formatted(owner, TERMS),
            owner);
    twice("/api/leases/" + lease + "/" + step, json.replace("%s", TERMS), owner);
    twice("/api/leases/" + lease + "/close", "{}", owner);
  }

  @Test
  void shops() {
    String asked = someone();
    String shop = "Shop " + UUID.randomUUID();
    UUID key = UUID.randomUUID();
    String open =
        "{'name': '%s', 'details': 'Ask for %s', 'commissionPercent': 40, 'missing': 'shop'}"
            .formatted(shop, asked);
    String code =
        posts("/api/shops", open, key)
            .statusCode(201)
            .body("details", containsString(asked))
            .extract()
            .path("code");
    posts("/api/shops", open, key).statusCode(201).body("details", containsString(asked));
    posts(
            "/api/shops/" + code + "/terms",
            "{'validFrom': '2026-10-01', 'commissionPercent': 35, 'missing': 'maker'}")
        .statusCode(201)
        .body("details", containsString(asked));
    nothingKeptOf(asked);
  }

  @Test
  void shows() {
    String helper = someone();
    twice(
        "/api/shows",
        "{'name': 'Fernby Fair', 'town': 'Fernby', 'starts': '2027-08-20', 'ends': '2027-08-21', 'helper': '%s'}"
            .formatted(helper),
        helper);
  }
}
