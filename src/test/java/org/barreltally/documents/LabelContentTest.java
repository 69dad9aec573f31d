package org.barreltally.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BarcodeFormat;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.settings.UnitHabit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What stands on a label, read from the page by PDFBox and ZXing. */
class LabelContentTest {

  @ParameterizedTest
  @MethodSource("org.barreltally.documents.LabelSheetTest#known")
  void both_codes_on_it_are_read_back_as_the_lot(String sheet) throws Exception {
    Page page = Page.of(LabelFixture.pdf(LabelFixture.anyLabel(), sheet, 1, 1), 1);
    assertEquals(LabelFixture.LOT, page.decoded(BarcodeFormat.QR_CODE));
    assertEquals(LabelFixture.LOT, page.decoded(BarcodeFormat.CODE_128));
  }

  @Test
  void the_qr_code_leads_to_the_lot_where_there_is_a_public_address() throws Exception {
    Maker maker =
        new Maker("Any", List.of("Any"), null, "https://ridge.example/syrup/", null, UnitHabit.US);
    String address = maker.lotAddress(LabelFixture.LOT);
    assertEquals("https://ridge.example/syrup/lot/P260620-1", address);
    LabelText text =
        LabelFixture.label(Quantity.of(8, Unit.FLOZ), "Any", List.of("Any lane"), address);
    Page page = Page.of(LabelFixture.pdf(text, "a4-3x8", 1, 1), 1);
    assertEquals(address, page.decoded(BarcodeFormat.QR_CODE));
    assertEquals(LabelFixture.LOT, page.decoded(BarcodeFormat.CODE_128));
  }

  @ParameterizedTest
  @CsvSource({
    "https://oxnoddle.example/syrup/lot/P260620-1,https://oxnoddle.example/syrup/lot/P260620-1",
    "https://oxnoddle.example/the-second-sugarhouse-behind-the-mill/syrup/lot/P260620-1,P260620-1"
  })
  void a_small_label_leads_to_the_lot_if_there_is_room_and_says_its_code_if_not(
      String address, String said) throws Exception {
    LabelText text =
        LabelFixture.label(Quantity.of(8, Unit.FLOZ), "Any", List.of("Any lane"), address);
    Page page = Page.of(LabelFixture.pdf(text, "letter-3x10", 1, 1), 1);
    assertEquals(said, page.decoded(BarcodeFormat.QR_CODE));
  }

  @ParameterizedTest
  @MethodSource("org.barreltally.documents.LabelSheetTest#known")
  void grade_contents_maker_lot_and_dates_stand_on_it(String sheet) throws Exception {
    String text = Page.text(LabelFixture.pdf(LabelFixture.anyLabel(), sheet, 1, 1));
    for (String words :
        List.of(
            "Pure maple syrup",
            "Amber, rich taste",
            "16 fl oz (473 mL)",
            "Thistle Ridge Sugarhouse",
            "412 Ridge Lane",
            "Millbrook Hollow, VT 05000",
            "Lot P260620-1",
            "Packed 2026-06-20",
            "Best by 2028-06-20")) {
      assertTrue(text.contains(words), words + " in " + text);
    }
  }

  /** The factors of NIST Handbook 44, appendix C: 1 fl oz is 29.5735 mL, 1 gal 3.785412 L. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "8|floz|8 fl oz (236 mL) · ½ pt",
        "1|pt|16 fl oz (473 mL) · 1 pt",
        "16|floz|16 fl oz (473 mL) · 1 pt",
        "1|qt|32 fl oz (946 mL) · 1 qt",
        "0.5|gal|64 fl oz (1.89 L) · ½ gal",
        "1|gal|1 gal (3.78 L)",
        "5|gal|5 gal (18.9 L)",
        "12.5|floz|12.5 fl oz (369 mL)",
        "250|mL|8.45 fl oz (250 mL)",
        "1|L|33.8 fl oz (1 L)",
        "20|L|5.28 gal (20 L)"
      })
  void net_contents_are_said_in_both_unit_systems_and_never_too_high(
      String number, String unit, String words) {
    Quantity contents = Quantity.of(number, Unit.of(unit));
    assertEquals(words, NetContents.ways(contents, UnitHabit.US).get(0));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "16|floz|473 mL (16 fl oz)",
        "1|gal|3.78 L (1 gal)",
        "250|mL|250 mL (8.45 fl oz)",
        "1|L|1 L (33.8 fl oz)"
      })
  void whoever_thinks_in_litres_reads_them_first(String number, String unit, String words) {
    Quantity contents = Quantity.of(number, Unit.of(unit));
    assertEquals(List.of(words), NetContents.ways(contents, UnitHabit.METRIC));
  }

  /** 21 CFR 101.7, from memory, in points: a sixteenth of an inch is 4.5. */
  @ParameterizedTest
  @CsvSource({
    "1,4.5",
    "5,4.5",
    "5.01,9",
    "25,9",
    "25.1,13.5",
    "100,13.5",
    "101,18",
    "400,18",
    "401,36"
  })
  void the_least_height_of_the_net_contents_follows_the_panel(double area, double points) {
    assertEquals(points, TypeHeight.least(area), 1e-9);
  }

  /**
   * 231 cubic inches, 1.5 times as high as wide: 5.81 in wide, 8.71 in high, 63.6 square inches.
   */
  @Test
  void the_panel_of_a_gallon_is_guessed_at_two_fifths_of_its_side() {
    assertEquals(63.6, TypeHeight.guessedPanel(Quantity.of(1, Unit.GAL)), 0.1);
  }

  @ParameterizedTest
  @CsvSource({"8,floz,letter-3x10,9", "1,pt,letter-2x5,9", "1,gal,letter-2x3,13.5"})
  void the_net_contents_are_printed_at_least_that_high_and_in_the_lowest_part(
      String number, String unit, String sheet, double points) throws Exception {
    LabelText text =
        LabelFixture.label(
            Quantity.of(number, Unit.of(unit)), "Any", List.of("Any lane"), LabelFixture.LOT);
    List<TextPosition> net = netContents(LabelFixture.pdf(text, sheet, 1, 1));
    LabelSheet stock = LabelFixture.sheet(sheet);
    double bottom = stock.paper().height() - stock.corner(0).y();
    for (TextPosition glyph : net) {
      assertTrue(
          glyph.getYDirAdj() - height(glyph) >= bottom - 0.3 * stock.height() - 0.5,
          "in the lowest 30 percent: " + glyph);
      if ("0123456789oL".contains(glyph.getUnicode())) {
        assertTrue(height(glyph) >= points - 0.01, glyph + " is " + height(glyph) + " pt high");
      }
    }
  }

  /** Height of a glyph's outline over its base line, points. */
  private static double height(TextPosition glyph) {
    try {
      int code = glyph.getCharacterCodes()[0];
      // normalized: of type 1000 high
      double top = ((PDVectorFont) glyph.getFont()).getNormalizedPath(code).getBounds2D().getMaxY();
      return top / 1000 * glyph.getFontSize();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The glyphs of the line with the bracket, which only the net contents have. */
  private static List<TextPosition> netContents(byte[] pdf) throws Exception {
    List<TextPosition> found = new ArrayList<>();
    PDFTextStripper reader =
        new PDFTextStripper() {
          @Override
          protected void writeString(String line, List<TextPosition> glyphs) {
            if (line.contains("(")) {
              found.addAll(glyphs);
            }
          }
        };
    try (PDDocument document = Loader.loadPDF(pdf)) {
      reader.getText(document);
    }
    assertTrue(found.size() > 10);
    return found;
  }
}
