package org.barreltally.start;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The names of several books that one program keeps, as the environment says them. */
final class BookNames {

  static final String SETTING = "BARRELTALLY_BOOKS";

  /** The first part of a host name and a schema without quotes; PostgreSQL's own begin with pg. */
  private static final Pattern NAME = Pattern.compile("(?!pg)[a-z][a-z0-9]{0,29}");

  /** That of the one book of a program that keeps no other, and of things every database has. */
  private static final List<String> TAKEN = List.of("public", "information");

  private BookNames() {}

  /**
   * Reads them; none if the text is empty.
   *
   * @throws CannotStart when one cannot be used, or beside a setting for one book alone
   */
  static List<String> from(String text, Optional<DatabaseLogin> outside, boolean demo) {
    if (text.isBlank()) {
      return List.of();
    }
    List<String> names = Arrays.stream(text.split(",", -1)).map(String::strip).toList();
    if (!names.stream().allMatch(n -> NAME.matcher(n).matches() && !TAKEN.contains(n))
        || new HashSet<>(names).size() < names.size()) {
      throw new CannotStart(
          SETTING
              + " must be different names with commas between them, each of at most 30 small"
              + " letters and digits, a letter first, and none that begins with pg.");
    }
    if (demo) {
      throw new CannotStart(
          "The invented season is played in the book of a program that keeps one; leave out"
              + " BARRELTALLY_DEMO or "
              + SETTING
              + ".");
    }
    if (outside.filter(login -> !login.schema().equals("public")).isPresent()) {
      throw new CannotStart(
          "With "
              + SETTING
              + " each book has the schema of its name; leave currentSchema out of"
              + " the options of BARRELTALLY_DB_URL.");
    }
    return names;
  }
}
