package org.barreltally.documents;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Price lists and cards as an owner asks for them. */
@QuarkusTest
class PricePapersOverRestTest {

  private static final String LIST =
      """
      {'name': 'Fair prices 2026', 'audience': 'show', 'validFrom': '2026-07-01', %s
       'lines': [{'container': 'QT', 'price': {'amount': 25.00, 'currency': 'USD'}},
                 {'container': 'HP', 'price': {'amount': 9.00, 'currency': 'USD'}},
                 {'container': 'PT', 'price': {'amount': 15.00, 'currency': 'USD'}},
                 {'container': 'PT', 'grade': 'golden', 'price': {'amount': 17.00, 'currency': 'USD'}}],
       'deals': [{'container': 'HP', 'count': 2, 'price': {'amount': 16.00, 'currency': 'USD'}},
                 {'container': 'PT', 'grade': 'golden', 'count': 2, 'price': {'amount': 30.00, 'currency': 'USD'}}]}
      """;

  private String path;

  @BeforeEach
  void a_list_of_the_invented_farm() {
    path = "/api/price-lists/" + entered(LIST.formatted(""));
  }

  @Test
  void a_list_is_drawn_by_grade_with_its_deals() throws Exception {
    byte[] pdf = PackedLot.pdf(path + "/sheet.pdf");
    assertEquals(1, Page.pages(pdf));
    assertEquals(8.5, Page.of(pdf, 1).widthInches(), 0.01);
    String text = Page.text(pdf);
    int golden = text.indexOf("Golden, delicate taste");
    int others = text.indexOf("Every other grade");
    assertTrue(golden >= 0 && golden < others, text);
    assertTrue(text.indexOf("$17") > golden && text.indexOf("$17") < others, text);
    int every = text.indexOf("Every grade");
    assertTrue(text.indexOf("$15") > others && text.indexOf("$15") < every, text);
    int halfPint = text.indexOf("Half-pint jug");
    assertTrue(every < halfPint && halfPint < text.indexOf("Quart jug"), "by contents: " + text);
    assertTrue(text.contains("2 × Half-pint jug") && text.contains("$16"), text);
    assertTrue(text.contains("Valid from July 1, 2026"), text);
    assertTrue(text.contains("tax, where it is due, is added"), text);
    assertFalse(text.contains("Replaced"), text);
    assertEquals(
        210 / 25.4, Page.of(PackedLot.pdf(path + "/sheet.pdf?paper=a4"), 1).widthInches(), 0.01);
  }

  @Test
  void a_list_that_was_replaced_or_withdrawn_says_so() throws Exception {
    String id = path.substring(path.lastIndexOf('/') + 1);
    String next = entered(LIST.formatted("'replaces': '%s', ".formatted(id)));
    assertTrue(
        Page.text(PackedLot.pdf(path + "/sheet.pdf")).contains("Replaced from July 1, 2026"));
    posts("/api/price-lists/" + next + "/withdrawal", "{'reason': 'Mistyped'}").statusCode(200);
    String text = Page.text(PackedLot.pdf("/api/price-lists/" + next + "/sheet.pdf"));
    assertTrue(text.contains("Withdrawn on") && text.contains("Version 2"), text);
  }

  @Test
  void a_card_is_drawn_for_each_line_with_its_own_deals() throws Exception {
    byte[] pdf = PackedLot.pdf(path + "/cards.pdf");
    assertEquals(1, Page.pages(pdf));
    Page page = Page.of(pdf, 1);
    // letter-2x3: the fourth card is the third row's left, the sixth place is free
    assertFalse(page.part(0.15625, 0.5 + 3.3333, 4, 3.3).isBlank());
    assertTrue(page.part(4.4, 0.52 + 6.6667, 3.9, 3.2).isBlank());
    String text = Page.text(pdf);
    assertTrue(text.contains("2 for $30") && text.contains("2 for $16"), text);
    assertEquals(1, text.split("for \\$30", -1).length - 1, "only on the card it is for: " + text);
    assertFalse(text.contains("ribbon"), text);
  }

  @Test
  void cards_of_one_grade_take_the_prices_of_that_grade() throws Exception {
    byte[] pdf =
        PackedLot.pdf(
            path
                + "/cards.pdf?grade=golden&sheet=a4-2x4&startAt=7&ribbon=First ribbon, Elmshire Fair");
    assertEquals(2, Page.pages(pdf)); // three cards from the seventh of eight
    String text = Page.text(pdf).replaceAll("\\s+", " ");
    assertEquals(3, text.split("Golden, delicate taste", -1).length - 1, text);
    assertEquals(3, text.split("First ribbon, Elmshire Fair", -1).length - 1, text);
    assertTrue(text.contains("$17") && !text.contains("$15"), text);
  }

  @ParameterizedTest
  @CsvSource({
    "/sheet.pdf?paper=a5, 400, invalid-field, paper",
    "/cards.pdf?sheet=nobody, 400, unknown-label-sheet, sheet",
    "/cards.pdf?startAt=7, 400, start-beyond-sheet, startAt",
    "/cards.pdf?startAt=first, 400, invalid-field, startAt",
    "/cards.pdf?grade=pale, 400, invalid-field, grade",
    "/cards.pdf?container=BUCKET, 400, unknown-container, container",
    "/cards.pdf?container=GAL, 422, not-on-price-list, container",
    "/cards.pdf?ribbon=%20, 400, invalid-field, ribbon",
    "/cards.pdf?ribbon=%E6%A5%93, 422, character-not-covered, ribbon",
    "/cards.pdf?ribbon=xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx, 400, invalid-field, ribbon",
  })
  void what_cannot_be_drawn_is_refused_by_field(
      String paper, int status, String code, String field) {
    asks()
        .urlEncodingEnabled(false)
        .get(path + paper)
        .then()
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
  }

  @Test
  void a_list_nobody_entered_has_no_papers() {
    String nobody = "/api/price-lists/00000000-0000-7000-8000-000000000001";
    PackedLot.refused(nobody + "/sheet.pdf", 404, "unknown-price-list", null);
    PackedLot.refused(nobody + "/cards.pdf", 404, "unknown-price-list", null);
  }

  private static String entered(String said) {
    return posts("/api/price-lists", said).statusCode(201).extract().path("id");
  }
}
