package org.barreltally.reconciliation;

import static org.barreltally.Owner.asks;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.Map;
import org.barreltally.BookRows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A network of the caller's own: reckoned, or refused by name, and never stored. */
@QuarkusTest
class NetworkOverRestTest {

  @Inject BookRows rows;

  /**
   * Narasimhan and Jordache, Data Reconciliation and Gross Error Detection (2000), a heat exchanger
   * with a bypass; from memory, recomputed.
   */
  @Test
  void the_published_bypass_comes_out_as_published_and_nothing_is_stored() {
    Map<String, String> before = rows.fingerprint();
    JsonPath found =
        send("""
                {'nodes': ['split', 'exchanger', 'valve', 'mix'], 'flows': [
                  {'name': 'f1', 'to': 'split', 'measured': 101.91, 'variance': 1},
                  {'name': 'f2', 'from': 'split', 'to': 'exchanger', 'measured': 64.45, 'variance': 1},
                  {'name': 'f3', 'from': 'split', 'to': 'valve', 'measured': 34.65, 'variance': 1},
                  {'name': 'f4', 'from': 'exchanger', 'to': 'mix', 'measured': 64.20, 'variance': 1},
                  {'name': 'f5', 'from': 'valve', 'to': 'mix', 'measured': 36.44, 'variance': 1},
                  {'name': 'f6', 'from': 'mix', 'measured': 98.88, 'variance': 1}]}
                """)
            .statusCode(200)
            .extract()
            .jsonPath();
    double[] published = {100.22, 64.50, 35.72, 64.50, 35.72, 100.22};
    for (int i = 0; i < published.length; i++) {
      assertEquals(published[i], found.getDouble("flows[" + i + "].reconciled"), 0.005);
    }
    assertTrue(found.getBoolean("globalTest.passed"));
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void what_nobody_measured_follows_where_it_can() {
    send("""
        {'nodes': ['room'], 'flows': [
          {'name': 'in', 'to': 'room', 'measured': 10, 'variance': 4},
          {'name': 'out', 'from': 'room'}]}
        """)
        .statusCode(200)
        .body("flows[1].reconciled", equalTo(10))
        .body("flows[1].standardUncertainty", equalTo(2))
        .body("flows[0].checked", equalTo(0))
        .body("globalTest.degreesOfFreedom", equalTo(0));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          {'nodes': [], 'flows': []} | invalid-field | nodes
          {'nodes': ['a']} | invalid-field | flows
          {'nodes': ['a', 'a'], 'flows': [{'name': 'f', 'to': 'a', 'measured': 1, 'variance': 1}]} | named-twice | nodes[1]
          {'nodes': ['a'], 'flows': [{'name': 'f', 'to': 'a', 'measured': 1, 'variance': 1}, {'name': 'f', 'from': 'a'}]} | named-twice | flows[1].name
          {'nodes': ['a'], 'flows': [{'name': 'f', 'to': 'b', 'measured': 1, 'variance': 1}]} | unknown-node | flows[0].to
          {'nodes': ['a'], 'flows': [{'name': 'f', 'from': 'a', 'to': 'a', 'measured': 1, 'variance': 1}]} | flow-to-itself | flows[0].to
          {'nodes': ['a'], 'flows': [{'name': 'f', 'to': 'a', 'measured': 1, 'variance': 0}]} | variance-unusable | flows[0].variance
          {'nodes': ['a'], 'flows': [{'name': 'f', 'to': 'a', 'measured': 1}]} | variance-unusable | flows[0].variance
          {'nodes': ['a'], 'flows': [{'name': 'f', 'to': 'a', 'measured': 1, 'variance': -2}]} | variance-unusable | flows[0].variance
          {'nodes': ['a'], 'flows': [{'name': 'f', 'to': 'a', 'variance': 1}]} | invalid-field | flows[0].measured
          {'nodes': ['a'], 'flows': [{'name': 'f', 'to': 'a'}]} | nothing-measured | flows
          {'nodes': ['a'], 'flows': [null]} | invalid-field | flows[0].name
          {'nodes': [null], 'flows': [{'name': 'f', 'to': 'a', 'measured': 1, 'variance': 1}]} | invalid-field | nodes[0]
          {'nodes': ['a', 'b'], 'flows': [{'name': 'f', 'to': 'a', 'measured': 1, 'variance': 1}, {'name': 'g', 'to': 'b'}]} | network-in-parts | nodes
          """)
  void what_is_no_network_is_refused(String json, String code, String field) {
    Map<String, String> before = rows.fingerprint();
    send(json).statusCode(400).body("code", equalTo(code)).body("errors[0].field", equalTo(field));
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void more_than_is_reckoned_at_once_is_refused() {
    StringBuilder flows = new StringBuilder();
    for (int i = 0; i < 1001; i++) {
      flows.append(i == 0 ? "" : ",").append("{'name': 'f").append(i).append("', 'to': 'a'}");
    }
    send("{'nodes': ['a'], 'flows': [" + flows + "]}")
        .statusCode(400)
        .body("code", equalTo("network-too-large"));
  }

  @Test
  void nothing_sent_is_refused() {
    asks().contentType("application/json").post("/api/reconciliation/flows").then().statusCode(400);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "?season=1", "?season=twenty", "?season=-2026"})
  void without_a_year_it_is_refused(String query) {
    asks()
        .get("/api/reconciliation/flows" + query)
        .then()
        .statusCode(400)
        .body("errors[0].field", equalTo("season"));
  }

  private static ValidatableResponse send(String json) {
    return asks()
        .contentType("application/json")
        .body(json.replace('\'', '"'))
        .post("/api/reconciliation/flows")
        .then();
  }
}
