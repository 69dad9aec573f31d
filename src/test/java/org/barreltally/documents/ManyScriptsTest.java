package org.barreltally.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.io.InputStream;
import java.lang.Character.UnicodeScript;
import java.text.Bidi;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.barreltally.refusal.Refusal;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Names in every script that Unicode has, as a maker's name on a label: printed as they are, read
 * back by PDFBox, or refused by a character for which the font has no picture, as the JDK's own
 * reading of that font tells. The long form: {@code mvn -q test -Dtest=ManyScriptsTest
 * -Dbarreltally.names=20000 -Dbarreltally.seed=1}.
 */
class ManyScriptsTest {

  private static final int NAMES = Integer.getInteger("barreltally.names", 400);
  private static final long SEED = Long.getLong("barreltally.seed", 20_261_127L);

  /** What is laid over, hides or turns text, and ends it in other programs. */
  private static final int[] ODD = {
    0x0000, 0x0007, 0x0009, 0x000A, 0x000D, 0x00A0, 0x00AD, 0x0301, 0x0308, 0x0327, 0x05B8, 0x061C,
    0x200B, 0x200D, 0x200E, 0x200F, 0x202A, 0x202E, 0x2066, 0x2069, 0x2028, 0xD800, 0xDC00, 0xE000,
    0xFB01, 0xFEFF, 0xFFFD, 0xFFFF, 0x1F341, 0x1F1E8, 0x10FFFF
  };

  /** Signs that cannot be seen and turn what stands beside them (Unicode Standard Annex 9). */
  private static final String TURNING = "\u061C\u200E\u200F\u202A\u202E\u2066\u2069";

  private static final Map<UnicodeScript, List<Integer>> LETTERS = new TreeMap<>();
  private static Font bold;

  private final Random random = new Random(SEED);

  @BeforeAll
  static void letters_of_all_scripts_and_the_font_read_by_another() throws Exception {
    for (int c = 0; c <= Character.MAX_CODE_POINT; c++) {
      if (Character.isLetter(c) || Character.getType(c) == Character.NON_SPACING_MARK) {
        LETTERS.computeIfAbsent(UnicodeScript.of(c), script -> new ArrayList<>()).add(c);
      }
    }
    try (InputStream file =
        ManyScriptsTest.class
            .getClassLoader()
            .getResourceAsStream("liberation/LiberationSans-Bold.ttf")) {
      bold = Font.createFont(Font.TRUETYPE_FONT, file);
    }
  }

  @Test
  void names_are_printed_as_they_are_or_refused_by_a_character_without_a_picture()
      throws Exception {
    System.out.println("names in many scripts: " + NAMES + ", seed " + SEED);
    Map<String, Integer> outcomes = new TreeMap<>();
    Set<UnicodeScript> printed = new HashSet<>();
    for (int n = 0; n < NAMES; n++) {
      String name = name();
      String what = escaped(name) + ", seed " + SEED;
      try {
        byte[] pdf = LabelFixture.pdf(LabelFixture.labelOf(name, "1 Lane"), "letter-2x5", 1, 1);
        assertTrue(Page.text(pdf).length() > 0);
        outcomes.merge("printed", 1, Integer::sum);
        stands_there(name, Page.text(pdf), what);
        name.codePoints()
            .filter(Character::isLetter)
            .forEach(c -> printed.add(UnicodeScript.of(c)));
      } catch (Refusal refused) {
        outcomes.merge(refused.code(), 1, Integer::sum);
        refused_with_reason(name, refused, what);
      }
    }
    System.out.println(outcomes + ", printed in " + printed);
    assertTrue(outcomes.get("printed") > NAMES / 10, outcomes::toString);
    assertTrue(outcomes.get("character-not-covered") > NAMES / 10, outcomes::toString);
    assertTrue(printed.size() >= 4, printed::toString);
  }

  /** A few letters of one script or of two, with something odd now and then. */
  private String name() {
    List<UnicodeScript> likely =
        List.of(
            UnicodeScript.LATIN, UnicodeScript.GREEK, UnicodeScript.CYRILLIC, UnicodeScript.HEBREW);
    List<UnicodeScript> all = new ArrayList<>(LETTERS.keySet());
    StringBuilder name = new StringBuilder();
    for (int words = 1 + random.nextInt(3); words > 0; words--) {
      List<Integer> letters = LETTERS.get(random.nextInt(10) < 6 ? one(likely) : one(all));
      // the first of a script are those in use; of Latin as far as the extensions for Europe
      int common = Math.min(letters.size(), 80);
      for (int n = 1 + random.nextInt(8); n > 0; n--) {
        int most = random.nextInt(20) == 0 ? letters.size() : common;
        name.appendCodePoint(letters.get(random.nextInt(most)));
      }
      name.append(words > 1 ? " " : "");
    }
    if (random.nextInt(4) == 0) {
      name.insert(
          random.nextInt(name.length()), Character.toChars(ODD[random.nextInt(ODD.length)]));
    }
    return name.toString();
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** Line for line, however it was wrapped; in which order is known where text runs one way. */
  private static void stands_there(String name, String text, String what) {
    String wanted = plain(name);
    assertTrue(covered(wanted), () -> "printed without a picture: " + what);
    String read = plain(text);
    boolean turned = name.codePoints().anyMatch(c -> TURNING.indexOf(c) >= 0);
    if (turned || new Bidi(wanted, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).isMixed()) {
      wanted
          .codePoints()
          .forEach(c -> assertTrue(read.indexOf(c) >= 0, () -> escaped(wanted) + " of " + what));
    } else {
      assertTrue(read.contains(wanted), () -> escaped(wanted) + " not in " + escaped(read) + what);
    }
  }

  private static void refused_with_reason(String name, Refusal refused, String what) {
    assertEquals("maker", refused.errors().get(0).field(), what);
    if (refused.code().equals("character-not-covered")) {
      String tidy = Normalizer.normalize(name, Normalizer.Form.NFC);
      assertTrue(
          tidy.codePoints()
              .filter(c -> !bold.canDisplay(c) || !Character.isLetter(c))
              .anyMatch(c -> refused.detail().contains("U+%04X".formatted(c))),
          () -> refused.detail() + " for " + what);
    } else {
      assertEquals("text-does-not-fit", refused.code(), what);
    }
  }

  private static boolean covered(String text) {
    return text.codePoints().filter(Character::isLetter).allMatch(bold::canDisplay);
  }

  /**
   * Composed; without white space, as where a line breaks is another test's; ligatures parted, and
   * without marks and signs that cannot be seen by themselves, which PDFBox puts before their
   * letters where text runs from the right.
   */
  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC)
        .replaceAll("[\\s\\p{M}\\p{Cf}\u00A0\u2028\u2029]", "");
  }

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text).append(" (");
    text.codePoints().forEach(c -> escaped.append("%04X ".formatted(c)));
    return escaped.append(")").toString();
  }

  @ParameterizedTest
  @ValueSource(strings = {"סוכר (מייפל) טבעי", "«בית הסוכר»", "Sirop (d'érable) de Łucja"})
  void brackets_open_towards_what_they_hold(String name) throws Exception {
    byte[] pdf = LabelFixture.pdf(LabelFixture.labelOf(name, "1 Lane"), "a4-2x7", 1, 1);
    String text = Page.text(pdf);
    assertTrue(text.contains(Normalizer.normalize(name, Normalizer.Form.NFC)), escaped(text));
    assertFalse(text.contains("[U+"), text);
  }

  @Test
  void a_mark_stands_after_its_letter_where_text_runs_from_the_right() throws Exception {
    byte[] pdf = LabelFixture.pdf(LabelFixture.labelOf("שָׁלוֹם", "1 Lane"), "a4-2x7", 1, 1);
    assertTrue(plain(Page.text(pdf)).contains("שלום"), Page.text(pdf));
  }
}
