package org.barreltally.documents;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import io.restassured.response.ValidatableResponse;

/**
 * A full barrel, and a lot of 300 pints canned from another like it.
 *
 * @param tag of the barrel
 */
record PackedLot(String tag, String lot) {

  static PackedLot ofPints() {
    String drawn = newTag("L");
    String full = newTag("L");
    posts("/api/barrels", barrel(drawn, 2024, "2024-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
    posts("/api/barrels", barrel(full, 2024, "2024-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
    String lot =
        posts(
                "/api/canning/runs",
                """
                {'on': '2024-06-20', 'draws': [{'barrel': '%s', 'all': true}],
                 'fillTemperature': {'value': 185, 'unit': 'degF'},
                 'fills': [{'container': 'PT', 'count': 300}], 'transmittance': 57, 'taste': 'clean'}
                """
                    .formatted(drawn))
            .statusCode(201)
            .extract()
            .path("lot");
    return new PackedLot(full, lot);
  }

  /** The PDF at an address. */
  static byte[] pdf(String path) {
    return reads(path).contentType("application/pdf").extract().asByteArray();
  }

  /** Asks for a paper that is refused; the field is null where none is named. */
  static void refused(String path, int status, String code, String field) {
    ValidatableResponse answer =
        asks()
            .get(path)
            .then()
            .statusCode(status)
            .contentType("application/problem+json")
            .body("code", equalTo(code));
    if (field != null) {
      answer.body("errors.field", hasItem(field));
    }
  }
}
