package org.barreltally.documents;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** What a label sheet must be before it is added; every field at fault is named at once. */
final class LabelSheetRules {

  private static final Pattern CODE = Pattern.compile("[a-z0-9][a-z0-9-]{0,29}");
  private static final int NAME_MAX = 100;
  private static final int LINES_MAX = 100;
  private static final int DECIMALS_MAX = 5;

  /** Stock sizes are printed rounded; a sheet may reach this much over the edge, in points. */
  private static final double ROUNDING = 0.5;

  private final List<FieldError> errors = new ArrayList<>();

  private LabelSheetRules() {}

  /**
   * @throws InvalidField naming every field that is missing, malformed or out of its range
   * @throws SheetDoesNotFitPaper if the labels reach over the edge of the paper
   */
  static void check(LabelSheet said) {
    LabelSheetRules rules = new LabelSheetRules();
    rules.words(said);
    rules.lines(said.columns(), "columns");
    rules.lines(said.rows(), "rows");
    rules.length(said.labelWidth(), true, "labelWidth");
    rules.length(said.labelHeight(), true, "labelHeight");
    rules.length(said.marginLeft(), false, "marginLeft");
    rules.length(said.marginTop(), false, "marginTop");
    rules.length(said.gapAcross(), false, "gapAcross");
    rules.length(said.gapDown(), false, "gapDown");
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
    List<FieldError> over = new ArrayList<>();
    Paper paper = said.paper();
    over(said.reachAcross(), paper.width(), said, "columns", "wide").ifPresent(over::add);
    over(said.reachDown(), paper.height(), said, "rows", "high").ifPresent(over::add);
    if (!over.isEmpty()) {
      throw new SheetDoesNotFitPaper(over);
    }
  }

  private static Optional<FieldError> over(
      double reach, double edge, LabelSheet said, String field, String way) {
    if (reach <= edge + ROUNDING) {
      return Optional.empty();
    }
    return Optional.of(
        new FieldError(
            field,
            String.format(
                Locale.ROOT,
                "Margin, labels and gaps reach to %.2f %s, but %s paper is %.2f %s %s. Give fewer %s or"
                    + " smaller lengths.",
                reach / said.unit().points(),
                said.unit().code(),
                said.paper().code(),
                edge / said.unit().points(),
                said.unit().code(),
                way,
                field)));
  }

  private void words(LabelSheet said) {
    require(
        said.code() != null && CODE.matcher(said.code()).matches(),
        "code",
        "Give a code of small letters, digits and dashes, at most 30, for example letter-2x5.");
    require(
        said.name() != null && !said.name().isBlank() && said.name().length() <= NAME_MAX,
        "name",
        "Give a name of at most " + NAME_MAX + " characters, for example Oval labels.");
    require(said.paper() != null, "paper", "Give one of letter, a4.");
    require(said.unit() != null, "unit", "Say the unit of the lengths: in or mm.");
  }

  private void lines(Integer number, String field) {
    require(
        number != null && number >= 1 && number <= LINES_MAX,
        field,
        "Give a whole number from 1 to " + LINES_MAX + ".");
  }

  private void length(BigDecimal length, boolean some, String field) {
    boolean there =
        length != null && (some ? length.signum() > 0 : length.signum() >= 0) && notHuge(length);
    require(
        there,
        field,
        some
            ? "Give a length of more than 0."
            : "Give a length of 0 or more; 0 where there is none.");
    require(
        !there || length.stripTrailingZeros().scale() <= DECIMALS_MAX,
        field,
        "Give at most " + DECIMALS_MAX + " decimals.");
  }

  /** No paper is a metre long in any unit taken here. */
  private static boolean notHuge(BigDecimal length) {
    return length.compareTo(BigDecimal.valueOf(1000)) < 0;
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
