package org.barreltally.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Text never runs out of its label, and every letter on it has a picture. */
class FittingTest {

  private static final double WIDTH = 4;
  private static final double HEIGHT = 2;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Érablière de l'Œuvre",
        "Cukrárna Žluťoučký Kůň",
        "Κλήμης ο Σιροπάς",
        "Кленовый сироп Ёлкиных",
        "E\u0301rablie\u0300re"
      })
  void latin_greek_and_cyrillic_names_are_printed(String name) throws Exception {
    String text = Page.text(LabelFixture.pdf(LabelFixture.labelOf(name, "1 Lane"), "a4-2x7", 1, 1));
    String composed = java.text.Normalizer.normalize(name, java.text.Normalizer.Form.NFC);
    assertTrue(text.contains(composed), text);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "枫糖小屋,U+67AB,maker",
    "Syrup 🍁,U+1F341,maker",
    "سكر,U+0633,maker",
    "แม่,U+0E41,maker",
    "Tab\u0007bell,U+0007,maker"
  })
  void a_character_the_fonts_do_not_cover_is_refused_by_name(
      String name, String character, String field) {
    Refusal refused = refused(LabelFixture.labelOf(name, "1 Lane"), "letter-2x5");
    assertEquals("character-not-covered", refused.code());
    assertTrue(refused.detail().contains(character), refused.detail());
    assertEquals(field, refused.errors().get(0).field());
  }

  @Test
  void an_uncovered_character_in_the_address_is_refused_there() {
    Refusal refused = refused(LabelFixture.labelOf("Any", "1 Lane", "東京"), "letter-2x5");
    assertEquals("address", refused.errors().get(0).field());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Thistle Ridge",
        "Thistle Ridge and Daughters Sugarhouse",
        "Thistle Ridge and Daughters Sugarhouse, Beekeepers and Makers of Spoons at Millbrook Hollow"
      })
  void a_long_name_shrinks_then_wraps_and_stays_on_its_label(String name) throws Exception {
    byte[] pdf = LabelFixture.pdf(LabelFixture.labelOf(name, "1 Lane"), "letter-2x5", 1, 1);
    String text = Page.text(pdf).replaceAll("\\s+", " ");
    assertTrue(text.contains(name), text);
    double[] ink = Page.of(pdf, 1).ink();
    assertTrue(ink[0] >= 0.15625 && ink[2] <= 0.15625 + WIDTH, "sideways");
    assertTrue(ink[1] >= 0.5 && ink[3] <= 0.5 + HEIGHT, "up and down");
  }

  @Test
  void a_word_that_cannot_be_wrapped_is_refused() {
    Refusal refused =
        refused(LabelFixture.labelOf("Thistle" + "ridge".repeat(30), "1 Lane"), "letter-2x5");
    assertEquals("text-does-not-fit", refused.code());
    assertEquals("maker", refused.errors().get(0).field());
    assertTrue(refused.detail().length() < 200);
  }

  @Test
  void an_address_that_does_not_fit_is_refused() {
    List<String> lines = Collections.nCopies(8, "Behind the third barn on the left of Ridge Lane");
    LabelText text = LabelFixture.label(Quantity.of(1, Unit.PT), "Any", lines, LabelFixture.LOT);
    Refusal tooHigh = refused(text, "letter-3x10");
    assertEquals("text-does-not-fit", tooHigh.code());
    assertEquals("address", tooHigh.errors().get(0).field());
  }

  @Test
  void net_contents_wider_than_the_label_in_their_least_height_are_refused() {
    LabelText text =
        LabelFixture.label(Quantity.of(5, Unit.GAL), "Any", List.of("Any"), LabelFixture.LOT);
    Refusal refused = refused(text, "letter-3x10");
    assertEquals("text-does-not-fit", refused.code());
    assertEquals("sheet", refused.errors().get(0).field());
  }

  @Test
  void a_hebrew_name_is_set_from_right_to_left() throws Exception {
    String text =
        Page.text(LabelFixture.pdf(LabelFixture.labelOf("סוכר מייפל", "1 Lane"), "a4-2x7", 1, 1));
    assertTrue(text.contains("סוכר מייפל"), text); // PDFBox turns what stands from the right
  }

  private static Refusal refused(LabelText text, String sheet) {
    return assertThrows(Refusal.class, () -> LabelFixture.pdf(text, sheet, 1, 1));
  }
}
