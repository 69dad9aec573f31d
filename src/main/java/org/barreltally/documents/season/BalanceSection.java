package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;
import org.barreltally.reconciliation.Amount;
import org.barreltally.reconciliation.Balance;
import org.barreltally.reconciliation.Balances;
import org.barreltally.reconciliation.FlowWords;
import org.barreltally.reconciliation.Line;
import org.barreltally.reconciliation.SeasonFlows;
import org.barreltally.reconciliation.SeasonReconciled;
import org.barreltally.reconciliation.flows.NetworkTooLarge;

/** Where every gallon went: the balance of the year in mass, and what it leaves unexplained. */
@ApplicationScoped
class BalanceSection implements SeasonBookSection {

  private static final Map<Line, String> WORDS =
      Map.ofEntries(
          Map.entry(Line.OPENING, "Stood at the year's beginning"),
          Map.entry(Line.MADE, "Made"),
          Map.entry(Line.WATER, "Water added"),
          Map.entry(Line.BOUGHT, "Bought"),
          Map.entry(Line.RETURNED, "Came back from buyers"),
          Map.entry(Line.SOLD, "Sold in jars"),
          Map.entry(Line.GIFTS, "Gift orders and jars given away"),
          Map.entry(Line.SHARES, "Landowners' shares"),
          Map.entry(Line.BULK, "Sold in bulk"),
          Map.entry(Line.CONSIGNED_SOLD, "Sold by shops on consignment"),
          Map.entry(Line.SAMPLES, "Samples"),
          Map.entry(Line.BROKEN, "Broken"),
          Map.entry(Line.DISCARDED, "Discarded"),
          Map.entry(Line.SHRINK, "Left in filters, and over the net contents"),
          Map.entry(Line.UNEXPLAINED, "Unexplained"),
          Map.entry(Line.CONVERTED, "Between lots: into jars and blends, and what rounding leaves"),
          Map.entry(Line.BARRELS, "At the end: in barrels and heels"),
          Map.entry(Line.CONTAINERS, "At the end: in jars"),
          Map.entry(Line.CONSIGNED, "At the end: in jars at shops"));

  /** How many things that do not fit are told; the rest follow from them oftener than not. */
  private static final int SUSPECTS = 2;

  private final Balances balances;
  private final SeasonFlows flows;

  BalanceSection(Balances balances, SeasonFlows flows) {
    this.balances = balances;
    this.flows = flows;
  }

  @Override
  public int order() {
    return 100;
  }

  @Override
  public String title() {
    return "Balance of the year";
  }

  @Override
  public void write(BookYear year, BookPages out) {

    Balance balance = balances.of(year.year(), null);
    out.say(
        "What was there and came in, less what went, is what stands at the end. The unexplained is"
            + " what weighings, runs and counts found and nobody could account for.");
    out.table(
        Heading.of("Line", 0.46),
        Heading.number("kg", 0.18),
        Heading.number("gal", 0.18),
        Heading.number("jars", 0.18));
    for (Line line : List.of(Line.OPENING, Line.MADE, Line.WATER, Line.BOUGHT, Line.RETURNED)) {
      row(out, balance, line);
    }
    sum(out, "Was there and came in", balance.cameIn());
    for (Line line : Line.values()) {
      if (line.ordinal() > Line.RETURNED.ordinal() && line.ordinal() < Line.BARRELS.ordinal()) {
        row(out, balance, line);
      }
    }
    for (Line line : List.of(Line.BARRELS, Line.CONTAINERS, Line.CONSIGNED)) {
      row(out, balance, line);
    }
    sum(out, "Stands at the year's end", balance.closing());
    out.say(unexplained(balance));
    if (year.closedAt() == null) {
      suspects(year, out);
    }
  }

  /**
   * Where to look while the year is open. What was weighed again after a closing would speak here
   * too, so a closed year has none.
   */
  private void suspects(BookYear year, BookPages out) {
    SeasonReconciled season;
    try {
      season = flows.of(year.year());
    } catch (NetworkTooLarge tooLarge) {
      out.say("Weighings and counts were not held beside each other. " + tooLarge.getMessage());
      return;
    }
    if (season.found() == null || season.found().suspects().isEmpty()) {
      return;
    }
    out.say(FlowWords.of(season));
    season.found().suspects().stream()
        .limit(SUSPECTS)
        .map(
            suspect ->
                suspect.readings().stream()
                    .map(FlowWords::of)
                    .collect(Collectors.joining(" Or, as likely: ")))
        .forEach(out::say);
  }

  private static void row(BookPages out, Balance balance, Line line) {
    Amount amount = balance.line(line);
    out.row(
        WORDS.get(line),
        Told.kg(amount.grams()),
        Told.gallons(amount.mL()),
        Long.toString(amount.pieces()));
  }

  private static void sum(BookPages out, String words, Amount amount) {
    out.sum(
        words, Told.kg(amount.grams()), Told.gallons(amount.mL()), Long.toString(amount.pieces()));
  }

  private static String unexplained(Balance balance) {
    return String.format(
        Locale.ROOT,
        "Unexplained: %s kg, %.2f %% of what was there and came in, with a standard uncertainty of %s kg. %s",
        Told.kg(balance.line(Line.UNEXPLAINED).grams()),
        balance.unexplainedPercent(),
        Told.kg(balance.unexplainedU()),
        balance.unexplainedSignificant()
            ? "That is more than twice its uncertainty: measuring alone does not explain it."
            : "That is within twice its uncertainty: measuring alone may explain it.");
  }
}
