package org.barreltally.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The texts of pages: each in both languages, none asked for that is not there. */
class WordsTest {

  private static final Path WORDS = Path.of("src/main/resources/words");
  private static final Path TEMPLATES = Path.of("src/main/resources/templates");
  private static final Pattern ASKED = Pattern.compile("words:(of|count)\\('([a-z0-9.-]+)'");

  /** A refusal or problem where it is made: its kind or status, its code, and its title. */
  private static final Pattern REFUSAL =
      Pattern.compile(
          "(?:[.]|\\b)(?:INVALID|RULE|CONFLICT|NOT_FOUND|STALE|FORBIDDEN|new Problem\\(\\s*\\d+|ofField\\(|4\\d\\d),?\\s*\"([a-z]+(?:-[a-z0-9]+)*)\",\\s*(?:\"[A-Z]|\\w+[,)])");

  private static final Pattern PLACE = Pattern.compile("\\{(\\d)");

  static List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(WORDS)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.matches("[a-z]+\\.properties"))
          .map(name -> name.replace(".properties", ""))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void each_text_is_there_in_both_languages_with_the_same_values(String file) throws IOException {
    Properties english = read(file);
    Properties french = read(file + "_fr");
    assertEquals(new TreeSet<>(english.stringPropertyNames()), french.stringPropertyNames());
    for (String key : english.stringPropertyNames()) {
      assertEquals(places(english.getProperty(key)), places(french.getProperty(key)), key);
      for (Properties one : List.of(english, french)) {
        String text = one.getProperty(key);
        assertFalse(text.contains("'"), key + " has a straight apostrophe: " + text);
        new MessageFormat(text);
      }
    }
  }

  @Test
  void no_page_asks_for_a_text_that_is_not_there() throws IOException {
    Set<String> missing = new TreeSet<>();
    try (Stream<Path> files = Files.walk(TEMPLATES)) {
      for (Path template : files.filter(file -> file.toString().endsWith(".html")).toList()) {
        Matcher asked = ASKED.matcher(Files.readString(template));
        while (asked.find()) {
          String key = asked.group(2);
          String file = key.substring(0, key.indexOf('.'));
          String rest = key.substring(file.length() + 1);
          Properties words = read(file);
          boolean there =
              asked.group(1).equals("of")
                  ? words.containsKey(rest)
                  : words.containsKey(rest + ".one") && words.containsKey(rest + ".many");
          if (!there) {
            missing.add(template.getFileName() + ": " + key);
          }
        }
      }
    }
    assertEquals(Set.of(), missing);
  }

  @Test
  void each_refusal_is_called_something_in_french() throws IOException {
    Set<String> codes = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
        Matcher refusal = REFUSAL.matcher(Files.readString(file));
        while (refusal.find()) {
          codes.add(refusal.group(1));
        }
      }
    }
    assertTrue(codes.size() > 200, codes.toString());
    assertEquals(codes, new TreeSet<>(read("refusals_fr").stringPropertyNames()));
  }

  private static Set<String> places(String text) {
    Set<String> places = new TreeSet<>();
    Matcher place = PLACE.matcher(text);
    while (place.find()) {
      places.add(place.group(1));
    }
    return places;
  }

  private static Properties read(String file) throws IOException {
    Properties words = new Properties();
    try (Reader text = Files.newBufferedReader(WORDS.resolve(file + ".properties"))) {
      words.load(text);
    }
    return words;
  }
}
