package org.barreltally.documents;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.barreltally.documents.FormText.Cell;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.FormText.Type;
import org.barreltally.lots.NamedHolders.Holding;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.recall.Holder;
import org.barreltally.recall.Recall;

/** The letter of a recall to one who holds jars or syrup of it; one page where it fits. */
final class RecallLetter {

  private final Recall recall;
  private final Maker maker;
  private final LocalDate day;
  private final UnaryOperator<String> sizes;

  /**
   * @param sizes the name of a container by its code
   */
  RecallLetter(Recall recall, Maker maker, LocalDate day, UnaryOperator<String> sizes) {
    this.recall = recall;
    this.maker = maker;
    this.day = day;
    this.sizes = sizes;
  }

  FormText to(Holder holder, Paper paper) {
    List<Part> parts = new ArrayList<>();
    parts.add(sides(holder));
    parts.add(head());
    parts.add(lines(holder));
    parts.add(please(holder));
    parts.add(answer());
    return new FormText(paper, title() + " · " + holder.name(), parts);
  }

  String title() {
    return (recall.rehearsal() ? "Rehearsal of the recall of lot " : "Recall of lot ")
        + recall.lot();
  }

  private Part sides(Holder holder) {
    List<Row> rows = new ArrayList<>();
    List<String> from = new ArrayList<>(List.of(maker.name()));
    from.addAll(maker.address());
    List<String> to = new ArrayList<>(List.of(holder.name()));
    to.addAll(holder.address());
    if (holder.address().isEmpty()) {
      to.add("(no address is known)");
    }
    if (holder.contact() != null) {
      to.add(holder.contact());
    }
    rows.add(row(Type.STRONG, false, cell("holder", "To"), cell("maker", "From")));
    for (int n = 0; n < Math.max(from.size(), to.size()); n++) {
      rows.add(
          row(
              Type.PLAIN,
              false,
              cell("holder", n < to.size() ? to.get(n) : ""),
              cell("maker", n < from.size() ? from.get(n) : "")));
    }
    return new Part(List.of(new Column(0.5, false), new Column(0.5, false)), rows);
  }

  private Part head() {
    List<Row> rows = new ArrayList<>();
    rows.add(row(Type.PLAIN, false, cell("day", DayWords.of(day, maker.habit()))));
    if (recall.rehearsal()) {
      rows.add(
          row(
              Type.STRONG,
              false,
              cell("rehearsal", "REHEARSAL: nothing is wrong, and you need not do anything.")));
    }
    rows.add(row(Type.LARGE, false, cell("title", "We are calling back maple syrup")));
    rows.add(row(Type.PLAIN, false, cell("reason", "Why: " + recall.reason())));
    return Part.of(rows.toArray(Row[]::new));
  }

  private Part lines(Holder holder) {
    List<Row> rows = new ArrayList<>();
    rows.add(
        row(
            Type.STRONG,
            true,
            cell("lines", "Lot on the label"),
            cell("lines", "Size"),
            cell("lines", "You have, by our records"),
            cell("lines", "")));
    for (Holding holding : holder.holdings()) {
      rows.add(
          row(
              Type.PLAIN,
              false,
              cell("lines", holding.lot()),
              cell(
                  "lines",
                  holding.container() == null ? "in bulk" : sizes.apply(holding.container())),
              cell("lines", amount(holding)),
              cell("lines", holding.exact() ? "" : "perhaps: the lot was not written down")));
    }
    return new Part(
        List.of(
            new Column(0.2, false),
            new Column(0.22, false),
            new Column(0.3, false),
            new Column(0.28, false)),
        rows);
  }

  private static String amount(Holding holding) {
    if (holding.container() != null) {
      return holding.amount() + (holding.amount() == 1 ? " jar" : " jars");
    }
    Quantity mass = Quantity.rounded(holding.amount(), Unit.G, 0);
    return mass.to(Unit.KG, 1) + " (" + mass.to(Unit.LB, 1) + ")";
  }

  private Part please(Holder holder) {
    List<Row> rows = new ArrayList<>();
    rows.add(row(Type.STRONG, true, cell("please", "What we ask of you")));
    rows.add(
        row(
            Type.PLAIN,
            false,
            cell(
                "please",
                "1. Do not eat, use, sell or give away this syrup. Compare the lot on each label.")));
    rows.add(
        row(
            Type.PLAIN,
            false,
            cell("please", "2. Keep it closed, apart from other food, and marked.")));
    rows.add(
        row(
            Type.PLAIN,
            false,
            cell(
                "please",
                "3. Tell us how much you still have, how much is used, and who has the rest.")));
    if (holder.holdsJars()) {
      rows.add(
          row(
              Type.STRONG,
              false,
              cell(
                  "caution",
                  "A jar that bulges or leaks can burst, and glass cuts. Do not open it. Wear gloves, cover"
                      + " your eyes, and keep children away.")));
    }
    rows.add(
        row(
            Type.SMALL,
            false,
            cell(
                "decide",
                "If somebody feels unwell, ask a doctor. Your food inspector and state agency decide what"
                    + " must be done with called-back food; this letter does not replace their word.")));
    return Part.of(rows.toArray(Row[]::new));
  }

  private Part answer() {
    List<Row> rows = new ArrayList<>();
    rows.add(row(Type.STRONG, true, cell("answer", "Your answer, to send back to us")));
    rows.add(
        row(
            Type.PLAIN,
            false,
            cell(
                "answer",
                "Still closed: ________   Opened or used: ________   Passed on: ________   None: "
                    + FormText.TICK_BOX)));
    rows.add(row(Type.PLAIN, false, cell("answer", "Passed on to: ____________________________")));
    rows.add(row(Type.PLAIN, false, cell("answer", "Name, day: _______________________________")));
    rows.add(row(Type.SMALL, false, cell("recall", "Recall " + recall.id())));
    return Part.of(rows.toArray(Row[]::new));
  }

  private static Row row(Type type, boolean ruled, Cell... cells) {
    return new Row(type, ruled, List.of(cells));
  }

  private static Cell cell(String field, String text) {
    return new Cell(field, text);
  }
}
