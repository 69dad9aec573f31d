package org.barreltally.gifts;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** Gathers what is wrong with a request, field by field, so that all is said at once. */
final class Faults {

  /** More is not shown: whoever has so many mends the first ones and sends again. */
  private static final int SHOWN_MAX = 1000;

  private final List<FieldError> errors = new ArrayList<>();

  void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }

  /** One line of text, or none where it may be missing. */
  void text(String text, int longest, boolean mayMiss, String field, String mend) {
    if (text == null || text.isBlank()) {
      require(mayMiss, field, mend);
      return;
    }
    require(
        text.codePointCount(0, text.length()) <= longest,
        field,
        "Keep it within " + longest + " characters; these are " + text.length() + ".");
    require(text.codePoints().noneMatch(Character::isISOControl), field, "Keep it on one line.");
  }

  /** Whether a list has a null in it. */
  static boolean hasGap(List<?> list) {
    return list.stream().anyMatch(Objects::isNull);
  }

  int count() {
    return errors.size();
  }

  List<FieldError> errors() {
    return List.copyOf(errors);
  }

  /**
   * @throws InvalidField naming all of it, if anything is wrong
   */
  void refuse() {
    if (!errors.isEmpty()) {
      throw new InvalidField(errors.subList(0, Math.min(SHOWN_MAX, errors.size())));
    }
  }
}
