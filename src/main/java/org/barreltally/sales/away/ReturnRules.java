package org.barreltally.sales.away;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** The form of what is said of returns and their inspection. */
final class ReturnRules {

  private static final int LINES_MAX = 100;
  private static final long COUNT_MAX = 1_000_000;
  private static final int WORDS_MAX = 500;

  private final List<FieldError> errors = new ArrayList<>();

  private ReturnRules() {}

  static long orNone(Long count) {
    return count == null ? 0 : count;
  }

  static void check(TakeBack said) {
    ReturnRules rules = new ReturnRules();
    rules.require(
        said.reason() != null && !said.reason().isBlank() && said.reason().length() <= WORDS_MAX,
        "reason",
        "Say why they came back, in at most " + WORDS_MAX + " characters.");
    rules.require(
        said.refund() == null || said.refund().signum() >= 0,
        "refund.amount",
        "Give an amount of 0 or more.");
    List<TakeBack.Line> lines = said.lines() == null ? List.of() : said.lines();
    rules.some(lines);
    for (int n = 0; n < lines.size() && n < LINES_MAX; n++) {
      TakeBack.Line line = lines.get(n);
      String field = "lines[" + n + "]";
      if (rules.named(
          line == null ? null : line.container(), line == null ? null : line.lot(), field)) {
        rules.require(
            line.count() != null && line.count() >= 1 && line.count() <= COUNT_MAX,
            field + ".count",
            "Give a whole number of jars from 1 to 1,000,000.");
      }
    }
    rules.refuse();
  }

  static void check(Inspect said) {
    ReturnRules rules = new ReturnRules();
    rules.require(
        said.note() == null || said.note().length() <= WORDS_MAX,
        "note",
        "Keep it within " + WORDS_MAX + " characters.");
    List<Inspect.Line> lines = said.lines() == null ? List.of() : said.lines();
    rules.some(lines);
    for (int n = 0; n < lines.size() && n < LINES_MAX; n++) {
      Inspect.Line line = lines.get(n);
      String field = "lines[" + n + "]";
      if (rules.named(
          line == null ? null : line.container(), line == null ? null : line.lot(), field)) {
        rules.whole(line.sound(), field + ".sound");
        rules.whole(line.broken(), field + ".broken");
        rules.whole(line.discarded(), field + ".discarded");
      }
    }
    rules.refuse();
  }

  private void some(List<?> lines) {
    require(
        !lines.isEmpty() && lines.size() <= LINES_MAX,
        "lines",
        "Give 1 to " + LINES_MAX + " lines.");
  }

  private boolean named(String container, String lot, String field) {
    boolean given = container != null && !container.isBlank() && lot != null && !lot.isBlank();
    require(given, field, "Give the container and the lot on the label.");
    return given;
  }

  private void whole(Long count, String field) {
    require(
        orNone(count) >= 0 && orNone(count) <= COUNT_MAX,
        field,
        "Give a whole number of jars from 0 to 1,000,000.");
  }

  private void refuse() {
    if (!errors.isEmpty()) {
      throw new InvalidField(errors);
    }
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
