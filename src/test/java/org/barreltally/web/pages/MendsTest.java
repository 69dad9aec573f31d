package org.barreltally.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MendsTest {

  private static final Path FILE = Path.of("src/main/resources/words/mends_fr.txt");
  private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

  private static List<String[]> lines() throws IOException {
    return Files.readAllLines(FILE).stream()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.split(" \\| ", 2))
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Name the carrier. | Nommez le transporteur.",
        "Give a whole number from 2 to 40. | Donnez un entier de 2 à 40.",
        "Give a whole number from 1 to 40. | Donnez un entier de 1 à 40.",
        "Keep it within 80 characters; these are 93. | Restez sous 80 caractères ; il y en a 93.",
        "A sentence that nobody translated. | A sentence that nobody translated.",
      })
  void a_mend_is_said_in_french_with_what_was_filled_in(String english, String french) {
    assertEquals(french, Mends.read().french(english));
  }

  @Test
  void each_line_says_the_same_things_in_both_languages() throws IOException {
    Set<String> seen = new TreeSet<>();
    for (String[] both : lines()) {
      assertTrue(seen.add(both[0]), "twice: " + both[0]);
      int places = both[0].split("\\{}", -1).length - 1;
      Set<String> used = new TreeSet<>();
      Matcher place = PLACE.matcher(both[1]);
      while (place.find()) {
        used.add(place.group(1));
        assertTrue(Integer.parseInt(place.group(1)) < places, both[1]);
      }
      assertEquals(places, used.size(), both[0]);
      assertFalse(both[1].contains("'"), both[1]);
    }
    assertTrue(seen.size() > 400);
  }

  /**
   * What is in the file was taken from rules; a rule that changed its words leaves a line alone.
   */
  @Test
  void each_sentence_without_places_is_said_somewhere() throws IOException {
    StringBuilder sources = new StringBuilder();
    try (var files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
        sources.append(Files.readString(file).replaceAll("\"\\s*\\n\\s*\\+ \"", ""));
      }
    }
    String all = sources.toString();
    for (String[] both : lines()) {
      for (String part : both[0].split("\\{}")) {
        String longest = part.strip();
        if (longest.length() > 12) {
          assertTrue(all.contains(longest.replace("\"", "\\\"")), "nobody says: " + part);
        }
      }
    }
  }
}
