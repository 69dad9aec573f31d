package org.barreltally.supplies;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** What a supply must be before it is added, and which counts are possible. */
final class SupplyRules {

  /** More of one thing does not lie at a sugarhouse; beyond it is a slip of the pen. */
  static final long MOST = 10_000_000;

  static final int NAME_MAX = 100;
  static final int NOTE_MAX = 500;

  private static final int PER_JAR_MAX = 100;
  private static final int JARS_EACH_MIN = 2;
  private static final int JARS_EACH_MAX = 10_000;
  private static final Pattern CODE = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,19}");

  private final List<FieldError> errors = new ArrayList<>();

  private SupplyRules() {}

  /**
   * The supply as it is added: one that belongs to a size is used once per jar unless it says
   * otherwise.
   *
   * @throws InvalidField naming every field that needs mending
   */
  static Supply checked(Supply said) {
    SupplyRules rules = new SupplyRules();
    rules.require(
        said.code() != null && CODE.matcher(said.code()).matches(),
        "code",
        "Give a code of capital letters, digits and dashes, at most 20, for example CAP-38.");
    rules.require(
        said.name() != null && !said.name().isBlank() && said.name().length() <= NAME_MAX,
        "name",
        "Give a name of at most " + NAME_MAX + " characters, for example Caps, 38 mm.");
    rules.require(said.kind() != null, "kind", "Give one of container, cap, label, carton, other.");
    rules.range(said.perJar(), 1, PER_JAR_MAX, "perJar");
    rules.range(said.jarsEach(), JARS_EACH_MIN, JARS_EACH_MAX, "jarsEach");
    rules.require(
        said.perJar() == null || said.jarsEach() == null,
        "jarsEach",
        "Give either perJar, so many for one jar, or jarsEach, one for so many jars.");
    rules.range(said.lowLine(), 0, MOST, "lowLine");
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
    boolean once = said.container() != null && said.perJar() == null && said.jarsEach() == null;
    return new Supply(
        said.code(),
        said.name().strip(),
        said.kind(),
        said.container(),
        once ? Integer.valueOf(1) : said.perJar(),
        said.jarsEach(),
        said.lowLine());
  }

  /** A count of pieces. */
  static long pieces(Long count, long least) {
    if (count == null || count < least || count > MOST) {
      throw new InvalidField("count", "Give a whole number from %d to %d.".formatted(least, MOST));
    }
    return count;
  }

  static String note(String note) {
    if (note != null && note.length() > NOTE_MAX) {
      throw new InvalidField("note", "Keep the note within " + NOTE_MAX + " characters.");
    }
    return note;
  }

  private void range(Number number, long least, long most, String field) {
    require(
        number == null || number.longValue() >= least && number.longValue() <= most,
        field,
        "Give a whole number from %d to %d, or leave it out.".formatted(least, most));
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
