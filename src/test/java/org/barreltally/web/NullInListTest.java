package org.barreltally.web;

import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A null within a list is refused by its place in it, wherever a list may be left out. */
@QuarkusTest
class NullInListTest {

  private static final String NONE = "00000000-0000-4000-8000-000000000000";

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "/api/sales | {'buyer': {'name': 'Ida Ferrol', 'address': ['4 Weir Lane', null]}} | buyer.address[1] | wrong-type",
        "/api/shows | {'booth': {'tables': [null]}} | booth.tables[0] | wrong-type",
        "/api/leases | {'taps': [null]} | taps[0] | wrong-type",
        "/api/leases | {'containerCharges': [null]} | containerCharges[0] | wrong-type",
        "/api/leases/{none}/terms | {'containerCharges': [null]} | containerCharges[0] | wrong-type",
        "/api/shows/{none}/plan | {'firstGuess': [null]} | firstGuess[0] | wrong-type",
        "/api/shows/{none}/plan | {'footprints': [null]} | footprints[0] | wrong-type",
        "/api/shows/{none}/plan | {'only': [null]} | only[0] | wrong-type",
        "/api/carriers | {'name': 'Slow Road', 'zones': [{'name': 'all', 'days': 3, 'countries': [null]}]} | zones[0].countries[0] | invalid-field"
      })
  void a_null_is_refused_by_its_place(String path, String body, String field, String code) {
    posts(path.replace("{none}", NONE), body)
        .statusCode(400)
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
  }
}
