package org.barreltally.bulk;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.ledger.Invariants;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A barrel of 444.5 lb is sold whole; the figures are those of {@link VarianceTest}. */
@QuarkusTest
class BulkSaleTest {

  private static final double GRAMS_PER_LB = 453.59237;

  private static final String RIGHT =
      """
      {'on': '2026-05-12', 'buyer': {'name': 'Thistledown $B', 'details': 'Gate 3'},
       'ours': {'weight': {'value': 444.5, 'unit': 'lb'}, 'grade': 'amber'},
       'theirs': {'weight': {'value': 442.0, 'unit': 'lb'}, 'grade': 'dark'},
       'agreed': {'weight': {'value': 443.0, 'unit': 'lb'}, 'grade': 'dark'},
       'prices': {'amber': {'amount': 2.35, 'currency': 'USD'},
                  'dark': {'amount': 2.20, 'currency': 'USD'}}}
      """;

  @Inject EntityManager entities;
  @Inject Invariants invariants;

  private String tag;

  @BeforeEach
  void a_full_barrel() {
    tag = newTag("K");
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
  }

  @AfterEach
  void the_book_is_whole() {
    invariants.check().forEach(f -> assertTrue(f.violations().isEmpty(), f.toString()));
  }

  @Test
  void it_is_paid_on_the_agreed_figures_and_leaves_the_book_whole() {
    JsonPath sold =
        posts(path(), right())
            .statusCode(201)
            .body("tag", equalTo(tag))
            .body("amount.amount.toDouble()", equalTo(974.60))
            .body("amount.currency", equalTo("USD"))
            .body("ours.amount.amount.toDouble()", equalTo(1044.58))
            .body("theirs.amount.amount.toDouble()", equalTo(972.40))
            .body("variance.total.amount.toDouble()", equalTo(-69.98))
            .body("variance.byWeight.amount.toDouble()", equalTo(-3.53))
            .body("variance.byGrade.amount.toDouble()", equalTo(-66.45))
            .body("bookDifference.weight.value.toDouble()", closeTo(0, 0.01))
            .body("bookDifference.beyondUncertainty", equalTo(false))
            .body("cautions", empty())
            .extract()
            .jsonPath();
    reads("/api/barrels/" + tag).body("state", equalTo("drained"));
    reads("/api/movements/" + sold.getString("movement"))
        .body("kind", equalTo("bulk-sale"))
        .body("entries.place", hasItem("bulk-buyer"));
    reads("/api/stock?lot=" + sold.getString("lot")).body("items", empty());
  }

  @Test
  void what_our_scale_says_beside_the_book_goes_to_the_unexplained_and_is_judged() {
    String light = right().replace("'value': 444.5", "'value': 436.5");
    JsonPath sold =
        posts(path(), light)
            .statusCode(201)
            .body("bookDifference.weight.value.toDouble()", closeTo(-8, 0.01))
            .body("bookDifference.beyondUncertainty", equalTo(true))
            .body("cautions", hasItem(containsString("slip of the pen")))
            .extract()
            .jsonPath();
    List<Integer> toUnexplained =
        reads("/api/movements/" + sold.getString("movement"))
            .extract()
            .path("entries.findAll { it.place == 'unexplained' }.amount");
    // 8 lb in air are 8 × 453.59237 g of weight, 0.08 % more of mass
    assertEquals(8 * GRAMS_PER_LB * 1.0008, toUnexplained.get(0), 3);
    reads("/api/barrels/" + tag).body("state", equalTo("drained"));
  }

  @Test
  void a_scale_above_the_book_empties_the_barrel_too() {
    posts(path(), right().replace("'value': 444.5", "'value': 445.0"))
        .statusCode(201)
        .body("bookDifference.weight.value.toDouble()", closeTo(0.5, 0.01))
        .body("bookDifference.beyondUncertainty", equalTo(false));
    reads("/api/barrels/" + tag).body("state", equalTo("drained"));
  }

  @Test
  void the_buyers_name_is_read_back_but_neither_remembered_nor_kept_beside_the_sale() {
    UUID key = UUID.randomUUID();
    String answer = posts(path(), right(), key).statusCode(201).extract().asString();
    assertFalse(answer.contains("Thistledown"), answer);
    assertEquals(answer, posts(path(), right(), key).statusCode(201).extract().asString());
    String id = new JsonPath(answer).getString("id");
    reads("/api/bulk-sales/" + id)
        .body("buyer.name", equalTo("Thistledown " + tag))
        .body("buyer.details", equalTo("Gate 3"))
        .body("takenBack", equalTo(false))
        .body("variance.total.amount.toDouble()", equalTo(-69.98));
    reads("/api/bulk-sales?limit=500").body("items.id", hasItem(id));
    assertFalse(kept(id).contains("Thistledown"), kept(id));
  }

  @Test
  void one_price_is_enough_where_there_is_one_grade() {
    posts(
            path(),
            right()
                .replace("'dark'}", "'amber'}")
                .replaceAll(
                    "(?s)'prices':.*", "'pricePerLb': {'amount': 2.15, 'currency': 'USD'}}"))
        .statusCode(201)
        .body("amount.amount.toDouble()", equalTo(952.45))
        .body("variance.byGrade.amount.toDouble()", equalTo(0.0))
        .body("variance.byWeight.amount.toDouble()", equalTo(-3.23));
  }

  @Test
  void processing_grade_may_be_sold_in_bulk_and_a_grade_unlike_the_books_is_pointed_out() {
    posts(path(), right().replace("dark", "processing"))
        .statusCode(201)
        .body("agreed.grade", equalTo("processing"));
    a_full_barrel();
    posts(path(), right().replace("'grade': 'amber'", "'grade': 'dark'"))
        .statusCode(201)
        .body("cautions", hasItem(containsString("as amber, not as dark")));
  }

  @Test
  void a_sale_taken_back_fills_the_barrel_again() {
    JsonPath sold = posts(path(), right()).statusCode(201).extract().jsonPath();
    posts("/api/movements/" + sold.getString("movement") + "/reversal", "{'reason': 'Not fetched'}")
        .statusCode(201);
    reads("/api/barrels/" + tag)
        .body("state", equalTo("full"))
        .body("netWeight.value.toDouble()", closeTo(444.5, 0.01));
    reads("/api/bulk-sales/" + sold.getString("id")).body("takenBack", equalTo(true));
    posts(path(), right()).statusCode(201);
  }

  @Test
  void a_held_a_drained_and_an_unknown_barrel_are_refused() {
    posts("/api/barrels/" + tag + "/hold", "{'reason': 'Bung leaks'}").statusCode(200);
    posts(path(), right()).statusCode(409).body("code", equalTo("lot-held"));
    posts("/api/barrels/" + tag + "/release", "{'reason': 'New bung'}").statusCode(200);
    posts(path(), right()).statusCode(201);
    posts(path(), right()).statusCode(409).body("code", equalTo("barrel-drained"));
    posts("/api/barrels/NOBODY/bulk-sale", right())
        .statusCode(404)
        .body("code", equalTo("unknown-barrel"));
    reads("/api/barrels/" + tag).body("state", equalTo("drained"));
    Owner.asks()
        .get("/api/bulk-sales/017f22e2-79b0-7cc3-98c4-dc0c0c07398f")
        .then()
        .statusCode(404)
        .body("code", equalTo("unknown-bulk-sale"));
  }

  @Test
  void a_barrel_that_changed_since_it_was_read_is_not_sold() {
    Owner.asks()
        .contentType("application/json")
        .header("Idempotency-Key", UUID.randomUUID().toString())
        .header("If-Match", "\"stale\"")
        .body(right().replace('\'', '"'))
        .post(path())
        .then()
        .statusCode(412);
  }

  @ParameterizedTest(name = "{1} instead of {0} is refused naming {4}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'name': 'Thistledown $B'|'name': ' '|400|invalid-field|buyer.name",
        "'buyer'|'seller'|400|unknown-field|seller",
        "'value': 444.5|'value': 0|400|invalid-field|ours.weight",
        "'value': 444.5|'value': -4|400|invalid-field|ours.weight",
        "'value': 442.0, 'unit': 'lb'|'value': 40, 'unit': 'gal'|400|invalid-field|theirs.weight.unit",
        "'value': 443.0, 'unit': 'lb'|'value': 443.0, 'unit': 'stone'|400|unknown-unit|agreed.weight.unit",
        "'value': 443.0|'value': 443000000|400|invalid-field|agreed.weight",
        "'grade': 'amber'|'grade': 'blonde'|400|invalid-field|ours.grade",
        ", 'grade': 'amber'||400|invalid-field|ours.grade",
        "'amber': {|'golden': {|400|price-missing|prices.amber",
        "'amber': {|'blonde': {|400|invalid-field|prices.blonde",
        "'amount': 2.35|'amount': 2.355|400|invalid-field|prices.amber.amount",
        "'amount': 2.35|'amount': -2.35|400|invalid-field|prices.amber",
        "'amount': 2.35|'amount': '2.35'|400|wrong-type|prices.amber.amount",
        "'amount': 2.35, 'currency': 'USD'|'amount': 2.35, 'currency': 'usd'|400|invalid-field|prices.amber.currency",
        "'amount': 2.20, 'currency': 'USD'|'amount': 2.20, 'currency': 'EUR'|400|currency-mismatch|prices.dark",
        "'prices'|'pricePerLb': {'amount': 9, 'currency': 'USD'}, 'prices'|400|invalid-field|pricePerLb",
        "'2026-05-12'|'2126-05-12'|400|in-the-future|on",
        "'2026-05-12'|'2026-03-01'|400|invalid-field|on",
        "'on': '2026-05-12',||400|invalid-field|on"
      })
  void a_wrong_sale_is_refused_and_nothing_stays(
      String part, String instead, int status, String code, String field) {
    long before = sales();
    String body = RIGHT.replace(part, instead == null ? "" : instead).replace("$B", tag);
    posts(path(), body)
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
    assertEquals(before, sales());
    reads("/api/barrels/" + tag).body("state", equalTo("full"));
  }

  @Test
  void a_sale_that_says_nothing_names_everything_that_is_missing() {
    posts(path(), "{'on': '2026-05-12'}")
        .statusCode(400)
        .body("errors.field", hasItem("buyer.name"))
        .body("errors.field", hasItem("ours.weight"))
        .body("errors.field", hasItem("theirs.grade"))
        .body("errors.field", hasItem("agreed.weight"));
  }

  private String path() {
    return "/api/barrels/" + tag + "/bulk-sale";
  }

  private String right() {
    return RIGHT.replace("$B", tag);
  }

  @Transactional
  String kept(String id) {
    return entities
        .createNativeQuery(
            "SELECT CAST(row_to_json(s) AS text) FROM bulk_sales s WHERE id = CAST(:id AS uuid)")
        .setParameter("id", id)
        .getSingleResult()
        .toString();
  }

  @Transactional
  long sales() {
    return ((Number)
            entities
                .createNativeQuery(
                    "SELECT (SELECT count(*) FROM bulk_sales) + (SELECT count(*) FROM bulk_buyers)"
                        + " + (SELECT count(*) FROM movements)")
                .getSingleResult())
        .longValue();
  }
}
