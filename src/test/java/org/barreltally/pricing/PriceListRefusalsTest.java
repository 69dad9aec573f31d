package org.barreltally.pricing;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every way in which a price list is refused: what is said, which field, and that nothing stays.
 */
@QuarkusTest
class PriceListRefusalsTest {

  private static final String RIGHT =
      """
      {'name': 'Fair prices', 'audience': 'show', 'validFrom': '2026-07-01',
       'lines': [{'container': 'HP', 'price': {'amount': 9.00, 'currency': 'USD'}},
                 {'container': 'PT', 'grade': 'amber', 'price': {'amount': 15, 'currency': 'USD'}}],
       'deals': [{'container': 'HP', 'count': 2, 'price': {'amount': 16.00, 'currency': 'USD'}}]}
      """;

  private static final String PINT = "{'container': 'PT', 'grade': 'amber'";
  private static final String HALF_PINT_DEAL = "[{'container': 'HP', 'count': 2";

  @Inject EntityManager entities;

  static Stream<Arguments> wrong() {
    return Stream.of(
        wrong("'Fair prices'", "'  '", 400, "invalid-field", "name"),
        wrong("'Fair prices'", "'" + "x".repeat(101) + "'", 400, "invalid-field", "name"),
        wrong("'name': 'Fair prices',", "", 400, "invalid-field", "name"),
        wrong("'show'", "'friends'", 400, "invalid-field", "audience"),
        wrong("'audience': 'show',", "", 400, "invalid-field", "audience"),
        wrong("'validFrom': '2026-07-01',", "", 400, "invalid-field", "validFrom"),
        wrong("'2026-07-01'", "'1026-07-01'", 400, "invalid-field", "validFrom"),
        wrong("'2026-07-01'", "'July'", 400, "invalid-field", "validFrom"),
        wrong("'lines'", "'validTo': '2026-06-30', 'lines'", 422, "validity-reversed", "validTo"),
        wrong("'lines'", "'validTo': '9026-06-30', 'lines'", 400, "invalid-field", "validTo"),
        wrong("'lines'", "'rows'", 400, "unknown-field", "rows"),
        wrong("'PT'", "'BUCKET'", 400, "unknown-container", "lines[1].container"),
        wrong("'container': 'PT', ", "", 400, "invalid-field", "lines[1].container"),
        wrong("'amount': 15", "'amount': -15", 400, "invalid-field", "lines[1].price.amount"),
        wrong("'amount': 15", "'amount': 1000001", 400, "invalid-field", "lines[1].price.amount"),
        wrong("'amount': 15", "'amount': 15.001", 400, "invalid-field", "lines[1].price.amount"),
        wrong("'amount': 15", "'amount': '15'", 400, "wrong-type", "lines[1].price.amount"),
        wrong(
            "15, 'currency': 'USD'",
            "15, 'currency': 'CAD'",
            400,
            "currency-mismatch",
            "lines[1].price.currency"),
        wrong(
            "15, 'currency': 'USD'",
            "15, 'currency': 'XYZ'",
            400,
            "invalid-field",
            "lines[1].price.currency"),
        wrong(
            "16.00, 'currency': 'USD'",
            "16.00, 'currency': 'EUR'",
            400,
            "currency-mismatch",
            "deals[0].price.currency"),
        wrong(
            ", 'price': {'amount': 15, 'currency': 'USD'}",
            "",
            400,
            "invalid-field",
            "lines[1].price"),
        wrong(PINT, "{'container': 'HP'", 422, "priced-twice", "lines[1]"),
        wrong("'amber'", "'pale'", 400, "invalid-field", "lines[1].grade"),
        wrong("'amber'", "'processing'", 422, "processing-grade-offered", "lines[1].grade"),
        wrong(
            HALF_PINT_DEAL,
            "[{'container': 'HP', 'count': 1",
            400,
            "invalid-field",
            "deals[0].count"),
        wrong(
            HALF_PINT_DEAL,
            "[{'container': 'HP', 'count': 1001",
            400,
            "invalid-field",
            "deals[0].count"),
        wrong(HALF_PINT_DEAL, "[{'container': 'HP'", 400, "invalid-field", "deals[0].count"),
        wrong("16.00", "-16.00", 400, "invalid-field", "deals[0].price.amount"),
        wrong(
            HALF_PINT_DEAL,
            "[{'container': 'QT', 'count': 2",
            422,
            "deal-without-price",
            "deals[0]"),
        wrong(
            HALF_PINT_DEAL,
            "[{'container': 'PT', 'grade': 'dark', 'count': 2",
            422,
            "deal-without-price",
            "deals[0]"),
        wrong(
            HALF_PINT_DEAL,
            "[{'container': 'HP', 'count': 2, 'price': {'amount': 15, 'currency': 'USD'}}, {'container': 'HP', 'count': 2",
            422,
            "priced-twice",
            "deals[1]"),
        wrong(
            "'lines'",
            "'replaces': '00000000-0000-7000-8000-000000000001', 'lines'",
            400,
            "unknown-price-list",
            "replaces"),
        wrong("'lines'", "'replaces': 'the old one', 'lines'", 400, "invalid-field", "replaces"));
  }

  private static Arguments wrong(String from, String to, int status, String code, String field) {
    return Arguments.of(from, to, status, code, field);
  }

  @ParameterizedTest(name = "{3} at {4}: {1}")
  @MethodSource("wrong")
  void a_list_is_refused_by_field(String from, String to, int status, String code, String field) {
    long before = lists();
    assertTrue(RIGHT.contains(from), from);
    posts("/api/price-lists", RIGHT.replace(from, to))
        .statusCode(status)
        .contentType("application/problem+json")
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
    assertEquals(before, lists());
  }

  @Test
  void every_field_at_fault_is_named_at_once() {
    posts(
            "/api/price-lists",
            "{'lines': [{'price': {'amount': -1, 'currency': 'USD'}}, null], 'deals': [{}]}")
        .statusCode(400)
        .body(
            "errors.field",
            hasItems(
                "name",
                "audience",
                "validFrom",
                "lines[0].container",
                "lines[0].price.amount",
                "lines[1]",
                "deals[0].container",
                "deals[0].price",
                "deals[0].count"));
  }

  @Test
  void a_list_without_lines_or_with_ten_thousand_is_refused() {
    posts("/api/price-lists", RIGHT.replaceAll("(?s)'lines': \\[.*?\\],", "'lines': [],"))
        .statusCode(400)
        .body("errors.field", hasItem("lines"));
    String many =
        IntStream.range(0, 10_000)
            .mapToObj(i -> "{'container':'PT','price':{'amount':1,'currency':'USD'}}")
            .collect(Collectors.joining(","));
    posts(
            "/api/price-lists",
            RIGHT.replaceAll("(?s)'lines': \\[.*?\\],", "'lines': [" + many + "],"))
        .statusCode(400)
        .body("errors.field", hasItem("lines"))
        .body("errors.message", hasItem("Give 1 to 1000 lines."));
    String deals =
        IntStream.range(0, 201)
            .mapToObj(
                i ->
                    "{'container': 'HP', 'count': %d, 'price': {'amount': 1, 'currency': 'USD'}}"
                        .formatted(i + 2))
            .collect(Collectors.joining(","));
    posts("/api/price-lists", RIGHT.replaceAll("(?s)'deals': \\[.*\\]", "'deals': [" + deals + "]"))
        .statusCode(400)
        .body("errors.field", hasItem("deals"));
  }

  @Test
  void nothing_but_json_and_nobody_unknown_is_listened_to() {
    posts("/api/price-lists", "null").statusCode(400);
    posts("/api/price-lists", "{").statusCode(400);
    asks()
        .get("/api/price-lists/" + UUID.randomUUID())
        .then()
        .statusCode(404)
        .body("code", equalTo("unknown-price-list"));
    asks()
        .get("/api/price-lists?audience=friends")
        .then()
        .statusCode(400)
        .body("errors.field", hasItem("audience"));
    asks()
        .get("/api/price-lists/current")
        .then()
        .statusCode(400)
        .body("errors.field", hasItem("audience"));
    asks()
        .get("/api/price-lists/current?audience=bulk&on=1930-01-01")
        .then()
        .statusCode(404)
        .body("code", equalTo("no-price-list-holds"));
    asks()
        .get("/api/price-lists/current?audience=bulk&on=soon")
        .then()
        .statusCode(400)
        .body("errors.field", hasItem("on"));
  }

  @ParameterizedTest
  @MethodSource("wrongBaskets")
  void a_quote_is_refused_by_field(String basket, int status, String code, String field) {
    String id = posts("/api/price-lists", RIGHT).statusCode(201).extract().path("id");
    posts("/api/price-lists/" + id + "/quote", basket)
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
  }

  static Stream<Arguments> wrongBaskets() {
    return Stream.of(
        Arguments.of("{'lines': []}", 400, "invalid-field", "lines"),
        Arguments.of(
            "{'lines': [{'container': 'HP', 'count': 0}]}", 400, "invalid-field", "lines[0].count"),
        Arguments.of("{'lines': [{'count': 1}]}", 400, "invalid-field", "lines[0].container"),
        Arguments.of(
            "{'lines': [{'container': 'QT', 'count': 1}]}",
            422,
            "not-on-price-list",
            "lines[0].container"),
        Arguments.of(
            "{'lines': [{'container': 'PT', 'grade': 'dark', 'count': 1}]}",
            422,
            "not-on-price-list",
            "lines[0].container"),
        Arguments.of(
            "{'lines': [{'container': 'HP', 'count': 1, 'price': {'amount': 8, 'currency': 'CAD'}}]}",
            400,
            "currency-mismatch",
            "lines[0].price.currency"),
        Arguments.of(
            "{'lines': [{'container': 'HP', 'count': 6000}], 'deal': true}",
            400,
            "invalid-field",
            "lines"));
  }

  @ParameterizedTest(name = "{0} → {1}: {3}")
  @MethodSource("wrongRates")
  void a_tax_rate_is_refused_by_field(String from, String to, String code, String field) {
    String right =
        "{'productClass': 'gift', 'place': 'Elmshire/Nether Tapping', 'percent': 6.25, 'from': '2026-01-01'}";
    assertTrue(right.contains(from), from);
    posts("/api/tax-rates", right.replace(from, to))
        .statusCode(400)
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
  }

  static Stream<Arguments> wrongRates() {
    return Stream.of(
        Arguments.of("'gift'", "'syrup'", "invalid-field", "productClass"),
        Arguments.of("'productClass': 'gift', ", "", "invalid-field", "productClass"),
        Arguments.of("'Elmshire/Nether Tapping'", "' '", "invalid-field", "place"),
        Arguments.of("Elmshire/", "/", "invalid-field", "place"),
        Arguments.of("Elmshire/", "Elmshire//", "invalid-field", "place"),
        Arguments.of("Elmshire/", "Elm<b>/", "invalid-field", "place"),
        Arguments.of("Elmshire", "E".repeat(90), "invalid-field", "place"),
        Arguments.of("6.25", "-0.1", "invalid-field", "percent"),
        Arguments.of("6.25", "100.1", "invalid-field", "percent"),
        Arguments.of("6.25", "6.12345", "invalid-field", "percent"),
        Arguments.of("'2026-01-01'", "'0026-01-01'", "invalid-field", "from"),
        Arguments.of(", 'from': '2026-01-01'", "", "invalid-field", "from"),
        Arguments.of("'from'", "'source': '', 'from'", "invalid-field", "source"));
  }

  @Test
  void a_rate_nobody_entered_is_said_to_be_missing() {
    asks()
        .get("/api/tax-rates/holding?productClass=food&place=Nowhere&on=2026-08-15")
        .then()
        .statusCode(404)
        .body("code", equalTo("no-tax-rate-holds"))
        .body("detail", containsString("Nowhere"));
    asks()
        .get("/api/tax-rates/" + UUID.randomUUID())
        .then()
        .statusCode(404)
        .body("code", equalTo("unknown-tax-rate"));
  }

  @Transactional
  long lists() {
    return ((Number)
            entities
                .createNativeQuery(
                    "SELECT (SELECT count(*) FROM price_lists) + (SELECT count(*) FROM price_lines)")
                .getSingleResult())
        .longValue();
  }
}
