package org.barreltally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The list of what was looked at for security names every requirement once, and tests there are.
 */
class SecurityListTest {

  private static final Path LIST = Path.of("src/docs/security.md");
  private static final Path NUMBERS = Path.of("src/test/resources/asvs-levels-1-2.txt");
  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| ((?:\\d+\\.\\d+\\.\\d+(?:, )?)+) [^|]+ \\| (.+) \\|$");
  private static final Pattern STATE =
      Pattern.compile("(\\*\\*)?(Holds|In part|Open|Not applicable)\\b.*");
  private static final Pattern NAMED = Pattern.compile("`([A-Z][A-Za-z]+(?:Test|IT))`");

  @Test
  void each_requirement_of_both_levels_has_one_state() throws IOException {
    List<String> listed = new ArrayList<>();
    Matcher row = ROW.matcher(Files.readString(LIST));
    while (row.find()) {
      listed.addAll(List.of(row.group(1).split(", ")));
      assertTrue(STATE.matcher(row.group(2)).matches(), row.group());
    }
    assertEquals(new TreeSet<>(asked()), new TreeSet<>(listed));
    assertEquals(asked().size(), listed.size(), "none stands twice");
  }

  private static List<String> asked() throws IOException {
    return Files.readAllLines(NUMBERS).stream()
        .filter(line -> line.startsWith("level"))
        .flatMap(line -> Arrays.stream(line.replaceFirst("level \\d: ", "").split(" ")))
        .toList();
  }

  @Test
  void every_test_it_names_exists() throws IOException {
    Set<String> tests;
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      tests =
          files
              .map(file -> file.getFileName().toString().replaceFirst("\\.java$", ""))
              .collect(Collectors.toSet());
    }
    Set<String> missing = new TreeSet<>();
    Matcher named = NAMED.matcher(Files.readString(LIST));
    while (named.find()) {
      if (!tests.contains(named.group(1))) {
        missing.add(named.group(1));
      }
    }
    assertEquals(Set.of(), missing);
  }
}
