package org.barreltally.documents;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BarcodeFormat;
import io.quarkus.test.junit.QuarkusTest;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Papers as an owner asks for them: of a barrel, of the lot canned from it, held and released. */
@QuarkusTest
class PapersOverRestTest {

  private String tag;
  private String lot;

  @BeforeEach
  void a_barrel_and_a_lot_of_pints() {
    PackedLot packed = PackedLot.ofPints();
    tag = packed.tag();
    lot = packed.lot();
  }

  @Test
  void labels_of_a_lot_are_drawn_from_the_label_said() throws Exception {
    byte[] pdf = pdf("labels.pdf?container=PT&count=9&sheet=letter-2x5&startAt=4");
    assertEquals(2, Page.pages(pdf));
    Page page = Page.of(pdf, 1);
    assertTrue(page.part(0, 0, 8.5, 2.5).isBlank());
    Page first = page.part(4.34375, 2.5, 4, 2);
    assertEquals(lot, first.decoded(BarcodeFormat.QR_CODE));
    assertEquals(lot, first.decoded(BarcodeFormat.CODE_128));
    String text = Page.text(pdf);
    assertTrue(text.contains("Amber, rich taste"), text);
    assertTrue(text.contains("16 fl oz (473 mL)"), text);
    assertTrue(text.contains("Lot " + lot) && text.contains("Packed 2024-06-20"), text);
    assertTrue(text.contains("Your sugarhouse"), text);
    assertFalse(text.contains("Best by"), "the owner set none");
  }

  @Test
  void without_a_count_the_rest_of_one_sheet_is_drawn() throws Exception {
    byte[] pdf = pdf("labels.pdf?container=PT&startAt=8");
    assertEquals(1, Page.pages(pdf));
    assertEquals(3, Page.text(pdf).split("Packed", -1).length - 1);
  }

  @Test
  void labels_of_cases_say_how_many_jars_are_in_one() throws Exception {
    byte[] pdf = pdf("case-labels.pdf?container=PT&perCase=12&count=25&sheet=letter-2x3");
    assertEquals(5, Page.pages(pdf));
    assertTrue(Page.text(pdf).contains("12 × 16 fl oz (473 mL)"));
    assertEquals(lot, Page.of(pdf, 5).decoded(BarcodeFormat.CODE_128));
  }

  @Test
  void the_number_licensed_to_the_owner_is_barred_with_the_lot() throws Exception {
    for (String paper : new String[] {"labels.pdf?", "case-labels.pdf?perCase=12&"}) {
      byte[] pdf = pdf(paper + "container=PT&count=1&gtin=6291041500213");
      assertTrue(Page.text(pdf).contains("GTIN 06291041500213"));
      String bars = Page.of(pdf, 1).decoded(BarcodeFormat.CODE_128);
      assertEquals("0106291041500213" + "10" + lot, bars);
    }
  }

  @Test
  void a_barrel_tag_says_what_is_in_it() throws Exception {
    byte[] pdf = PackedLot.pdf("/api/barrels/" + tag + "/tag.pdf");
    String text = Page.text(pdf);
    assertTrue(text.contains(tag) && text.contains("Amber, rich taste"), text);
    assertTrue(text.contains("444.5 lb (201.6 kg)") && text.contains("66.9 °Bx"), text);
    assertTrue(text.contains("filled 2024-03-14") && text.contains("Crop of 2024"), text);
    Page page = Page.of(pdf, 1);
    assertEquals(tag, page.decoded(BarcodeFormat.CODE_128));
    String barrelsLot = reads("/api/barrels/" + tag).extract().path("lot");
    assertEquals(barrelsLot, page.decoded(BarcodeFormat.QR_CODE));
  }

  @Test
  void a_held_lot_has_a_hold_tag_and_no_labels() throws Exception {
    refused("hold-tag.pdf", 409, "not-held", "lot");
    String print = printed("{'container': 'PT', 'count': 10}");
    posts("/api/lots/" + lot + "/hold", "{'reason': 'Smells sour'}").statusCode(200);
    refused("labels.pdf?container=PT", 409, "lot-held", "lot");
    refused("case-labels.pdf?container=PT&perCase=12", 409, "lot-held", "lot");
    refused("label-prints/" + print + "/labels.pdf", 409, "lot-held", "lot");
    posts(prints(), "{'container': 'PT', 'count': 10}")
        .statusCode(409)
        .body("code", equalTo("lot-held"));
    byte[] pdf = pdf("hold-tag.pdf");
    String text = Page.text(pdf);
    String today = java.time.LocalDate.now(java.time.ZoneOffset.UTC).toString();
    assertTrue(text.contains("HOLD") && text.contains(lot), text);
    assertTrue(text.contains("Held since " + today + ": Smells sour"), text);
    assertEquals(lot, Page.of(pdf, 1).decoded(BarcodeFormat.CODE_128));

    posts("/api/lots/" + lot + "/hold", "{'reason': '" + "Mouldy cap ".repeat(45) + "'}")
        .statusCode(200);
    assertTrue(Page.text(pdf("hold-tag.pdf")).contains("Again on " + today + ": Mouldy"));
    posts("/api/lots/" + lot + "/release", "{'reason': 'Tasted again'}").statusCode(200);
    pdf("labels.pdf?container=PT");
  }

  @Test
  void prints_are_logged_and_printed_again_with_a_reason() throws Exception {
    String first = printed("{'container': 'PT', 'count': 160, 'sheet': 'a4-2x7', 'startAt': 3}");
    posts(prints(), "{'container': 'PT', 'count': 4, 'reprintOf': '%s'}".formatted(first))
        .statusCode(400)
        .body("errors.field", contains("reason"));
    posts(
            prints(),
            "{'container': 'PT', 'count': 4, 'reprintOf': '%s', 'reason': 'Jammed'}"
                .formatted(first))
        .statusCode(201)
        .header("Location", containsString("/label-prints/"))
        .body("reprint", equalTo(true))
        .body("reprintOf", equalTo(first))
        .body("reason", equalTo("Jammed"));
    reads(prints())
        .body("items.count", contains(160, 4))
        .body("items.reprint", contains(false, true))
        .body("items.lot", contains(lot, lot))
        .body("items.container", contains("PT", "PT"))
        .body("items[0].printedAt", endsWith("Z"));
    reads(prints() + "?limit=1").body("items.id", contains(first));
    reads(prints() + "/" + first).body("startAt", equalTo(3)).body("sheet", equalTo("a4-2x7"));
    byte[] again = pdf("label-prints/" + first + "/labels.pdf");
    assertEquals(12, Page.pages(again)); // 2 left blank and 160 labels, 14 a sheet
  }

  @Test
  void a_print_keeps_its_words_when_the_lot_is_graded_again() throws Exception {
    String print = printed("{'container': 'PT', 'count': 2}");
    posts(
            "/api/lots/" + lot + "/regrade",
            "{'transmittance': 40, 'taste': 'clean', 'reason': 'Darkened'}")
        .statusCode(200);
    assertTrue(Page.text(pdf("labels.pdf?container=PT")).contains("Dark, robust taste"));
    assertTrue(
        Page.text(pdf("label-prints/" + print + "/labels.pdf")).contains("Amber, rich taste"));
  }

  @Test
  void a_print_said_twice_is_logged_once() {
    UUID key = UUID.randomUUID();
    String said = "{'container': 'PT', 'count': 7}";
    String id = posts(prints(), said, key).statusCode(201).extract().path("id");
    posts(prints(), said, key).statusCode(201).body("id", equalTo(id));
    asks()
        .contentType("application/json")
        .body("{\"container\": \"PT\", \"count\": 8}")
        .post(prints())
        .then()
        .statusCode(201);
    reads(prints()).body("items.count", contains(7, 8));
  }

  @Test
  void the_owner_adds_a_sheet_and_prints_on_it() throws Exception {
    String code = newTag("own-").toLowerCase(java.util.Locale.ROOT);
    String said =
        """
        {'code': '%s', 'name': 'Tall labels', 'paper': 'a4', 'unit': 'mm', 'columns': 2, 'rows': 3,
         'marginLeft': 5, 'marginTop': 10.5, 'labelWidth': 95, 'labelHeight': 90, 'gapAcross': 8,
         'gapDown': 2}
        """
            .formatted(code);
    posts("/api/label-sheets", said)
        .statusCode(201)
        .header("Location", endsWith("/api/label-sheets/" + code))
        .body("marginTop.toDouble()", equalTo(10.5));
    posts("/api/label-sheets", said).statusCode(409).body("code", equalTo("label-sheet-exists"));
    reads("/api/label-sheets?limit=500").body("items.code", hasItems(code, "letter-2x5", "a4-3x8"));
    reads("/api/label-sheets/" + code).body("paper", equalTo("a4"));
    Page page = Page.of(pdf("labels.pdf?container=PT&count=1&startAt=4&sheet=" + code), 1);
    double mm = 1 / 25.4;
    assertTrue(page.part(0, 0, 210 * mm, 102 * mm).isBlank());
    assertEquals(
        lot, page.part(108 * mm, 102.5 * mm, 95 * mm, 90 * mm).decoded(BarcodeFormat.QR_CODE));

    posts("/api/label-sheets", said.replace("'columns': 2", "'columns': 3"))
        .statusCode(422)
        .body("code", equalTo("sheet-does-not-fit-paper"))
        .body("errors.field", contains("columns"));
    posts("/api/label-sheets", "{}")
        .statusCode(400)
        .body("errors.field", hasItems("code", "paper", "unit", "rows", "labelWidth", "gapDown"));
    PackedLot.refused("/api/label-sheets/nobody", 404, "unknown-label-sheet", null);
  }

  @Test
  void the_description_says_who_decides() {
    String description = asks().get("/openapi?format=json").asString();
    assertTrue(description.contains("your state agency and weights-and-measures office decide"));
  }

  private String prints() {
    return "/api/lots/" + lot + "/label-prints";
  }

  private String printed(String said) {
    return posts(prints(), said)
        .statusCode(201)
        .body("lot", equalTo(lot))
        .body("reprint", equalTo(false))
        .extract()
        .path("id");
  }

  private byte[] pdf(String paper) {
    return PackedLot.pdf("/api/lots/" + lot + "/" + paper);
  }

  private void refused(String paper, int status, String code, String field) {
    PackedLot.refused("/api/lots/" + lot + "/" + paper, status, code, field);
  }
}
