package org.barreltally.documents;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The ticket of a barrel sold whole, its words read from the page. The figures were worked by hand:
 * 444.5 lb at 2.35 is 1044.58, 443.0 lb at 2.20 is 974.60, so 69.98 less; −1.5 lb at 2.35 is −3.53,
 * and −0.15 at 443.0 lb is −66.45. A pound is 0.45359237 kg.
 */
@QuarkusTest
class BulkTicketTest {

  private static final String SALE =
      """
      {'on': '2026-05-12', 'buyer': {'name': 'Thistledown Packers', 'details': 'Gate 3\\nFernby'},
       'ours': {'weight': {'value': 444.5, 'unit': 'lb'}, 'grade': 'amber'},
       'theirs': {'weight': {'value': 442.0, 'unit': 'lb'}, 'grade': 'dark'},
       'agreed': {'weight': {'value': 443.0, 'unit': 'lb'}, 'grade': 'dark'},
       'prices': {'amber': {'amount': 2.35, 'currency': 'USD'},
                  'dark': {'amount': 2.20, 'currency': 'USD'}}}
      """;

  private static final String DECIDE = "inspector and tax preparer decide.";

  private String tag;

  @BeforeEach
  void a_full_barrel() {
    filled("stainless");
  }

  @Test
  void it_says_who_sold_what_to_whom_and_what_is_due_and_why() throws Exception {
    String text = text(sold(SALE));
    for (String words :
        List.of(
            "Your sugarhouse",
            "Thistledown Packers",
            "Gate 3, Fernby",
            tag + " (stainless)",
            "S26-",
            "66.90 °Bx",
            "62.0 %Tc",
            "2026-05-12",
            "Seller 444.5 lb (201.6 kg) Amber, rich taste 2.35 USD 1044.58 USD",
            "Buyer 442.0 lb (200.5 kg) Dark, robust taste 2.20 USD 972.40 USD",
            "Agreed, due 443.0 lb (200.9 kg) Dark, robust taste 2.20 USD 974.60 USD",
            "Agreed less the seller's figures -69.98 USD",
            "by weight, at the price of the seller's grade -3.53 USD",
            "by grade, at the agreed weight -66.45 USD",
            DECIDE)) {
      assertTrue(text.contains(words), words + " in " + text);
    }
    assertFalse(text.contains("TAKEN BACK") || text.contains("galvanized"), text);
  }

  @Test
  void weights_in_kilograms_are_said_in_pounds_finely_enough_to_reckon_with() throws Exception {
    String kilograms =
        SALE.replace("444.5, 'unit': 'lb'", "201.6, 'unit': 'kg'")
            .replace("443.0, 'unit': 'lb'", "200, 'unit': 'kg'");
    String text = text(sold(kilograms));
    // 200 / 0.45359237 = 440.92452, at 2.20 that is 970.03
    assertTrue(text.contains("200 kg (440.9245 lb)") && text.contains("970.03 USD"), text);
  }

  @Test
  void a_sale_taken_back_says_so() throws Exception {
    String id = sold(SALE);
    String movement =
        org.barreltally.Owner.reads("/api/bulk-sales/" + id).extract().path("movement");
    posts("/api/movements/" + movement + "/reversal", "{'reason': 'Not fetched'}").statusCode(201);
    assertTrue(text(id).contains("TAKEN BACK: this sale was reversed"));
  }

  @Test
  void a_caution_about_the_vessel_goes_with_it_and_one_about_the_book_does_not() throws Exception {
    filled("galvanized");
    String text = text(sold(SALE.replace("444.5", "436.5")));
    assertTrue(text.contains("Galvanized barrels are not on food-grade lists"), text);
    assertFalse(text.contains("slip of the pen"), text);
  }

  @Test
  void the_seller_stands_on_it_as_it_was_set_when_it_was_recorded() throws Exception {
    String id = sold(SALE);
    try {
      posts("/api/settings", "{'maker': 'Renamed Sugarhouse', 'labelSheet': 'a4-2x7'}")
          .statusCode(200);
      assertTrue(text(id).contains("Your sugarhouse"));
      assertEquals(8.5, Page.of(pdf(id), 1).widthInches(), 0.01);
      filled("stainless");
      String later = sold(SALE);
      assertTrue(text(later).contains("Renamed Sugarhouse"));
      assertEquals(210 / 25.4, Page.of(pdf(later), 1).widthInches(), 0.01);
    } finally {
      posts("/api/settings", "{'maker': 'Your sugarhouse', 'labelSheet': ''}").statusCode(200);
    }
  }

  @Test
  void the_longest_names_and_details_stay_on_the_one_page() throws Exception {
    String name = "Thistledown and Daughters, Packers ".repeat(3).substring(0, 99) + ".";
    String details = "Gate 3 behind the mill ".repeat(22).substring(0, 499) + ".";
    String sale = SALE.replace("Thistledown Packers", name).replace("Gate 3\\nFernby", details);
    byte[] pdf = pdf(sold(sale));
    assertEquals(1, Page.pages(pdf));
    double[] ink = Page.of(pdf, 1).ink();
    assertTrue(ink[0] >= 0.74 && ink[1] >= 0.74, "left and top");
    assertTrue(ink[2] <= 8.5 - 0.74 && ink[3] <= 11 - 0.74, "right and bottom");
    assertTrue(Page.text(pdf).contains(DECIDE));
  }

  @ParameterizedTest
  @CsvSource({
    "Thistledown Packers,枫糖收购站,character-not-covered,buyer.name",
    "Gate 3\\nFernby,gate 枫,character-not-covered,buyer.details",
    "Gate 3\\nFernby,LONG,text-does-not-fit,buyer.details"
  })
  void a_buyer_who_cannot_be_printed_is_refused_by_name(
      String part, String instead, String code, String field) {
    String typed = instead.equals("LONG") ? "x".repeat(400) : instead;
    String id = sold(SALE.replace(part, typed));
    PackedLot.refused("/api/bulk-sales/" + id + "/ticket.pdf", 422, code, field);
  }

  @Test
  void an_unknown_sale_has_no_ticket() {
    PackedLot.refused(
        "/api/bulk-sales/017f22e2-79b0-7cc3-98c4-dc0c0c07398f/ticket.pdf",
        404,
        "unknown-bulk-sale",
        null);
  }

  private void filled(String material) {
    tag = newTag("K");
    posts(
            "/api/barrels",
            barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62).replace("stainless", material))
        .statusCode(201);
  }

  private String sold(String sale) {
    return posts("/api/barrels/" + tag + "/bulk-sale", sale).statusCode(201).extract().path("id");
  }

  private static byte[] pdf(String id) {
    return PackedLot.pdf("/api/bulk-sales/" + id + "/ticket.pdf");
  }

  private static String text(String id) throws Exception {
    return Page.text(pdf(id)).replaceAll("\\s+", " ");
  }
}
