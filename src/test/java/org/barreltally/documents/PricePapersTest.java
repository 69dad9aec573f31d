package org.barreltally.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.barreltally.measure.ColorClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Price lists and cards of an invented farm, read from their pages. */
class PricePapersTest {

  /** Nothing stands nearer to the edge of the paper, inches: what printers leave blank. */
  private static final double EDGE = 0.45;

  @ParameterizedTest
  @EnumSource(Paper.class)
  void a_short_list_stands_large_on_one_page(Paper paper) throws IOException {
    byte[] pdf = draw("short-" + paper.code(), sheet(shortList()), paper);
    assertEquals(1, Page.pages(pdf));
    String text = Page.text(pdf);
    for (String said :
        List.of(
            "Oxnoddle Hill Sugarhouse",
            "Price list · Fair prices 2026",
            "Valid from July 1, 2026",
            "Golden, delicate taste",
            "Every other grade",
            "Together for less",
            "2 × Half-pint jug",
            "$16",
            "tax, where it is due, is added",
            "Version 1")) {
      assertTrue(text.contains(said), said + " in " + text);
    }
    assertTrue(sizes(pdf, "Pint jug").stream().allMatch(size -> size >= 21.5), "large type");
    requireInside(pdf);
  }

  @Test
  void forty_lines_stand_on_two_pages_in_type_read_at_arms_length() throws IOException {
    List<PriceSheetText.Section> sections = new ArrayList<>();
    for (ColorClass grade :
        List.of(ColorClass.GOLDEN, ColorClass.AMBER, ColorClass.DARK, ColorClass.VERY_DARK)) {
      sections.add(new PriceSheetText.Section(grade.words(), rows(10)));
    }
    byte[] pdf = draw("forty", sheet(sections), Paper.LETTER);
    assertEquals(2, Page.pages(pdf));
    assertEquals(40, sizes(pdf, "Shaped bottle").size());
    assertFalse(Page.text(pdf).contains("(continued)"), "no row of ten stands alone");
    assertTrue(sizes(pdf, "Shaped bottle").stream().allMatch(size -> size >= 16), "type");
    assertTrue(Page.text(pdf).contains("page 2 of 2"));
    requireInside(pdf);
  }

  @Test
  void a_hundred_lines_take_two_columns_on_two_pages() throws IOException {
    byte[] pdf =
        draw(
            "hundred",
            sheet(List.of(new PriceSheetText.Section("Amber, rich taste", rows(100)))),
            Paper.A4);
    assertEquals(2, Page.pages(pdf));
    assertTrue(sizes(pdf, "Shaped bottle").stream().allMatch(size -> size >= 13), "type");
    assertTrue(
        Page.text(pdf).replaceAll("\\s+", " ").contains("Amber, rich taste (continued)"),
        Page.text(pdf));
    requireInside(pdf);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 7, 18, 30, 55, 160, 1000})
  void a_list_of_any_length_keeps_every_line_and_the_least_type(int lines) throws IOException {
    byte[] pdf =
        draw(
            "long-" + lines,
            sheet(List.of(new PriceSheetText.Section("Every grade", rows(lines)))),
            Paper.LETTER);
    List<Double> sizes = sizes(pdf, "Shaped bottle");
    assertEquals(lines, sizes.size());
    assertTrue(sizes.stream().allMatch(size -> size >= 13), sizes.toString());
    requireInside(pdf);
  }

  @Test
  void long_names_and_large_prices_are_wrapped_and_never_cut() throws IOException {
    String name =
        "Hand-blown shaped bottle of the sugarhouse with the two sleighs, a lantern and a cork";
    List<PriceSheetText.Section> sections =
        List.of(
            new PriceSheetText.Section(
                "Very dark, strong taste",
                List.of(
                    new PriceSheetText.Row(name, "250 mL (8.45 fl oz)", "$1,000,000.00"),
                    new PriceSheetText.Row(
                        PriceSheets.parted("W".repeat(100)), "16 fl oz (473 mL)", "$999,999.99"),
                    new PriceSheetText.Row("Pint jug", "16 fl oz (473 mL)", "$15.00"))));
    byte[] pdf = draw("wide", sheet(sections), Paper.LETTER);
    assertEquals(1, Page.pages(pdf));
    String text = Page.text(pdf).replaceAll("\\s+", " ");
    assertTrue(text.contains("lantern and a cork") && text.contains("$1,000,000.00"), text);
    requireInside(pdf);
  }

  @Test
  void an_old_list_says_so() throws IOException {
    PriceSheetText text = sheet(shortList());
    byte[] pdf =
        draw(
            "old",
            new PriceSheetText(
                text.maker(),
                text.address(),
                text.title(),
                text.name(),
                text.validity(),
                List.of("Replaced from September 1, 2026 by a newer list"),
                text.sections(),
                text.footnotes(),
                text.version()),
            Paper.LETTER);
    assertTrue(Page.text(pdf).contains("Replaced from September 1, 2026"));
  }

  @Test
  void a_character_without_a_picture_is_named_with_its_field() {
    CharacterNotCovered refused =
        assertThrows(
            CharacterNotCovered.class,
            () ->
                Papers.priceSheet(
                    sheet(
                        List.of(
                            new PriceSheetText.Section(
                                "Every grade",
                                List.of(new PriceSheetText.Row("楓 bottle", "1 L", "$9"))))),
                    Paper.A4));
    assertEquals("lines", refused.errors().get(0).field());
  }

  @ParameterizedTest
  @ValueSource(strings = {"letter-2x3", "letter-2x5", "a4-2x4", "a4-2x7", "a4-3x8"})
  void cards_stand_one_by_one_on_every_known_sheet(String code) throws IOException {
    LabelSheet sheet = LabelFixture.sheet(code);
    List<PriceCardText> cards = cards();
    byte[] pdf = save("cards-" + code, Papers.priceCards(cards, sheet, 2));
    int per = sheet.labelsPerPage();
    assertEquals((cards.size() + per) / per, Page.pages(pdf));
    String text = Page.text(pdf).replaceAll("\\s+", " ");
    assertTrue(text.contains("First ribbon, Elmshire Fair 2026"), text);
    assertTrue(text.contains("2 for $16") && text.contains("$1,250.00"), text);
    assertTrue(text.contains("Amber, rich taste") && text.contains("Quart jug"), text);
    double left = sheet.marginLeft().doubleValue() * sheet.unit().points() / 72;
    double top = sheet.marginTop().doubleValue() * sheet.unit().points() / 72;
    Page page = Page.of(pdf, 1);
    assertTrue(
        page.part(left, top, sheet.width() / 72 - 0.02, sheet.height() / 72 - 0.02).isBlank(),
        "the first place is left free");
    assertFalse(page.part(left + sheet.width() / 72 + 0.1, top, 1, 1).isBlank());
  }

  @Test
  void small_cards_take_short_names_and_refuse_long_ones() throws IOException {
    LabelSheet small = LabelFixture.sheet("letter-3x10");
    byte[] pdf = save("cards-small", Papers.priceCards(cards().subList(2, 3), small, 1));
    assertEquals(1, Page.pages(pdf));
    TextDoesNotFit refused =
        assertThrows(TextDoesNotFit.class, () -> Papers.priceCards(cards(), small, 1));
    assertEquals("lines", refused.errors().get(0).field());
  }

  @Test
  void a_price_wider_than_its_card_is_refused() {
    PriceCardText card =
        new PriceCardText("Jug", "1 gal", "", "$" + "9".repeat(60), List.of(), null, "Farm");
    assertThrows(
        TextDoesNotFit.class,
        () -> Papers.priceCards(List.of(card), LabelFixture.sheet("letter-3x10"), 1));
  }

  private static List<PriceCardText> cards() {
    String foot = "Oxnoddle Hill Sugarhouse · Valid from July 1, 2026 · version 1";
    return List.of(
        new PriceCardText(
            "Half-pint jug",
            "8 fl oz (236 mL)",
            "Golden, delicate taste",
            "$9",
            List.of("2 for $16, any grades"),
            "First ribbon, Elmshire Fair 2026",
            foot),
        new PriceCardText(
            "Pint jug",
            "16 fl oz (473 mL)",
            "Amber, rich taste",
            "$15",
            List.of("2 for $28", "6 for $80"),
            null,
            foot),
        new PriceCardText("Quart jug", "32 fl oz (946 mL)", "", "$25", List.of(), null, foot),
        new PriceCardText(
            "Hand-blown shaped bottle of the sugarhouse with two sleighs",
            "250 mL (8.45 fl oz)",
            "Very dark, strong taste",
            "$1,250.00",
            List.of(),
            null,
            foot));
  }

  private static List<PriceSheetText.Section> shortList() {
    return List.of(
        new PriceSheetText.Section(
            "Golden, delicate taste",
            List.of(
                new PriceSheetText.Row("Glass 250 mL", "250 mL (8.45 fl oz)", "$13"),
                new PriceSheetText.Row("Pint jug", "16 fl oz (473 mL)", "$17"))),
        new PriceSheetText.Section(
            "Every other grade",
            List.of(
                new PriceSheetText.Row("Half-pint jug", "8 fl oz (236 mL)", "$9"),
                new PriceSheetText.Row("Pint jug", "16 fl oz (473 mL)", "$15"),
                new PriceSheetText.Row("Quart jug", "32 fl oz (946 mL)", "$25"),
                new PriceSheetText.Row("Gallon jug", "1 gal (3.78 L)", "$75"))),
        new PriceSheetText.Section(
            "Together for less",
            List.of(
                new PriceSheetText.Row("2 × Half-pint jug", "any grades", "$16"),
                new PriceSheetText.Row("3 × Leaf-shaped glass", "Golden, delicate taste", "$45"))));
  }

  private static List<PriceSheetText.Row> rows(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(
            i ->
                new PriceSheetText.Row(
                    "Shaped bottle " + i,
                    "250 mL (8.45 fl oz)",
                    String.format(Locale.ROOT, "$%d.50", i)))
        .toList();
  }

  private static PriceSheetText sheet(List<PriceSheetText.Section> sections) {
    return new PriceSheetText(
        "Oxnoddle Hill Sugarhouse",
        List.of("412 Ridge Lane", "Millbrook Hollow, VT 05000"),
        "Price list",
        "Fair prices 2026",
        "Valid from July 1, 2026",
        List.of(),
        sections,
        List.of(
            "Prices in USD for one container, tax, where it is due, is added.",
            "Contents are nominal, at 68 °F (20 °C)."),
        "Version 1");
  }

  private static byte[] draw(String name, PriceSheetText text, Paper paper) throws IOException {
    return save(name, Papers.priceSheet(text, paper));
  }

  /** Keeps a paper to be looked at. */
  private static byte[] save(String name, byte[] pdf) throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "papers"));
    Files.write(folder.resolve(name + ".pdf"), pdf);
    return pdf;
  }

  private static void requireInside(byte[] pdf) throws IOException {
    for (int i = 1; i <= Math.min(Page.pages(pdf), 3); i++) {
      Page page = Page.of(pdf, i);
      double[] ink = page.ink();
      assertTrue(ink[0] >= EDGE && ink[1] >= EDGE, "page " + i);
      assertTrue(page.widthInches() - ink[2] >= EDGE, "page " + i + " reaches " + ink[2]);
      assertTrue(page.heightInches() - ink[3] >= EDGE, "page " + i + " reaches down to " + ink[3]);
    }
  }

  /** The sizes of type of all lines beginning with some words, points. */
  private static List<Double> sizes(byte[] pdf, String words) throws IOException {
    List<Double> sizes = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      new PDFTextStripper() {
        @Override
        protected void writeString(String text, List<TextPosition> positions) {
          for (int at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
            sizes.add((double) positions.get(at).getFontSizeInPt());
          }
        }
      }.getText(document);
    }
    return sizes;
  }
}
