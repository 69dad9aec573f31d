package org.barreltally.documents;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BarcodeFormat;
import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the owner sets stands on papers from then on, and not on those that were printed before. */
@QuarkusTest
class PapersFollowSettingsTest {

  private static final String SET =
      """
      {'maker': 'Oxnoddle Hill Sugarhouse', 'address': ['12 Oxnoddle Hill', 'Fernby'],
       'bestByMonths': 24, 'publicAddress': 'https://oxnoddle.example', 'labelSheet': 'a4-2x7',
       'unitHabit': 'metric'}
      """;

  private static final String FRESH =
      """
      {'maker': 'Your sugarhouse', 'address': ['Set your name and address in settings'],
       'bestByMonths': 0, 'publicAddress': '', 'labelSheet': '', 'unitHabit': 'us'}
      """;

  private static final double A4_WIDTH_INCHES = 210 / 25.4;

  private String tag;
  private String lot;

  @BeforeEach
  void a_barrel_and_a_lot_of_pints() {
    PackedLot packed = PackedLot.ofPints();
    tag = packed.tag();
    lot = packed.lot();
  }

  @AfterEach
  void as_at_a_fresh_start_for_other_tests() {
    posts("/api/settings", FRESH).statusCode(200);
  }

  @Test
  void maker_dates_sheet_address_and_units_are_those_that_are_set() throws Exception {
    posts("/api/settings", SET).statusCode(200).body("labelSheet", equalTo("a4-2x7"));
    byte[] pdf = pdf("labels.pdf?container=PT&count=1");
    String text = Page.text(pdf);
    assertTrue(text.contains("Oxnoddle Hill Sugarhouse"), text);
    assertTrue(text.contains("12 Oxnoddle Hill") && text.contains("Fernby"), text);
    assertTrue(text.contains("Packed 2024-06-20") && text.contains("Best by 2026-06-20"), text);
    assertTrue(text.contains("473 mL (16 fl oz)"), text);
    Page page = Page.of(pdf, 1);
    assertEquals(A4_WIDTH_INCHES, page.widthInches(), 0.01);
    assertEquals("https://oxnoddle.example/lot/" + lot, page.decoded(BarcodeFormat.QR_CODE));
    String barrel = Page.text(PackedLot.pdf("/api/barrels/" + tag + "/tag.pdf"));
    assertTrue(barrel.contains("201.6 kg (444.5 lb)"), barrel);
    assertTrue(barrel.contains("Oxnoddle Hill Sugarhouse"), barrel);
  }

  @Test
  void what_was_printed_before_is_printed_again_as_it_was() throws Exception {
    String first = printed("{'container': 'PT', 'count': 3}");
    posts("/api/settings", SET).statusCode(200);
    byte[] again = pdf("label-prints/" + first + "/labels.pdf");
    assertWordsOfBefore(again);
    assertEquals(8.5, Page.of(again, 1).widthInches(), 0.01);
    assertEquals(lot, Page.of(again, 1).decoded(BarcodeFormat.QR_CODE));

    String reprint =
        printed("{'container': 'PT', 'count': 1, 'reprintOf': '%s', 'reason': 'Jam'}", first);
    assertWordsOfBefore(pdf("label-prints/" + reprint + "/labels.pdf"));
    reads("/api/lots/" + lot + "/label-prints")
        .body("items.sheet", contains("letter-2x5", "a4-2x7"));
  }

  @Test
  void a_sheet_nobody_added_is_not_set_and_one_the_owner_added_is() {
    String own = org.barreltally.Owner.newTag("set-").toLowerCase(java.util.Locale.ROOT);
    String set = "{'labelSheet': '%s'}".formatted(own);
    posts("/api/settings", set)
        .statusCode(400)
        .body("code", equalTo("unknown-label-sheet"))
        .body("errors.field", contains("labelSheet"));
    posts(
            "/api/label-sheets",
            """
            {'code': '%s', 'name': 'Own', 'paper': 'letter', 'unit': 'in', 'columns': 2, 'rows': 4,
             'marginLeft': 0.25, 'marginTop': 0.5, 'labelWidth': 3.9, 'labelHeight': 2.4,
             'gapAcross': 0.2, 'gapDown': 0.1}
            """
                .formatted(own))
        .statusCode(201);
    posts("/api/settings", set).statusCode(200).body("labelSheet", equalTo(own));
  }

  private static void assertWordsOfBefore(byte[] pdf) throws Exception {
    String text = Page.text(pdf);
    assertTrue(text.contains("Your sugarhouse") && text.contains("16 fl oz (473 mL)"), text);
    assertFalse(text.contains("Oxnoddle") || text.contains("Best by"), text);
  }

  private String printed(String said, Object... values) {
    return posts("/api/lots/" + lot + "/label-prints", said.formatted(values))
        .statusCode(201)
        .extract()
        .path("id");
  }

  private byte[] pdf(String paper) {
    return PackedLot.pdf("/api/lots/" + lot + "/" + paper);
  }
}
