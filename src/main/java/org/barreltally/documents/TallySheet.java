package org.barreltally.documents;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.barreltally.documents.FormText.Cell;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.FormText.Type;
import org.barreltally.pricing.Deal;
import org.barreltally.table.TableSheet;

/**
 * A show table's tally on paper, for when no phone works: a line to tick on for every row of the
 * phone's screen, the deals, and places for what was broken, tasted, given and carried over.
 */
final class TallySheet {

  private static final String CARE =
      "Glass cuts: gloves and closed shoes, and look over the jars that stood beside a broken one"
          + " before they are sold.";

  private final TableSheet table;
  private final Maker maker;

  TallySheet(TableSheet table, Maker maker) {
    this.table = table;
    this.maker = maker;
  }

  FormText on(Paper paper) {
    List<Part> parts = new ArrayList<>(List.of(head(), rows()));
    if (!table.deals().isEmpty()) {
      parts.add(deals());
    }
    parts.add(others());
    parts.add(end());
    return new FormText(paper, "Tally sheet · " + table.name(), parts);
  }

  private Part head() {
    return Part.of(
        row(Type.LARGE, false, cell("title", "Tally sheet: " + table.name())),
        row(
            Type.PLAIN,
            false,
            cell(
                "maker",
                "%s · %s, %s"
                    .formatted(
                        maker.name(), table.town(), DayWords.of(table.starts(), maker.habit())))),
        row(
            Type.SMALL,
            false,
            cell(
                "prices",
                (table.priceList() == null
                        ? "No price list holds on that day."
                        : "Prices of the list “%s”, version %d, on %s."
                            .formatted(
                                table.priceList().name(),
                                table.priceList().version(),
                                DayWords.of(table.pricedOn(), maker.habit())))
                    + " One stroke a jar, five to a bundle; write the lot where two are out.")));
  }

  private Part rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(line(Type.STRONG, "Size", "Grade", "Price", "Lots on the table", "Sold", "Total"));
    for (TableSheet.Row each : table.rows()) {
      rows.add(
          line(
              Type.PLAIN,
              each.size(),
              each.grade() == null ? "any" : each.grade().words(),
              each.price() == null ? "______" : each.price().toString(),
              each.lots().stream().map(TableSheet.LotThere::lot).collect(Collectors.joining(", ")),
              "",
              "______"));
      rows.add(line(Type.PLAIN, false, " ", "", "", "", "", ""));
    }
    return new Part(
        List.of(
            new Column(0.17, false),
            new Column(0.19, false),
            new Column(0.12, false),
            new Column(0.2, false),
            new Column(0.22, false),
            new Column(0.1, false)),
        rows);
  }

  private Part deals() {
    List<Row> rows = new ArrayList<>();
    rows.add(row(Type.STRONG, true, cell("deals", "Deals"), cell("deals", "Given")));
    for (Deal deal : table.deals()) {
      String grade = deal.grade() == null ? "any grade" : deal.grade().words();
      rows.add(
          row(
              Type.PLAIN,
              true,
              cell(
                  "deals",
                  "%d × %s, %s: %s".formatted(deal.count(), size(deal), grade, deal.price())),
              cell("deals", "")));
    }
    return new Part(List.of(new Column(0.6, false), new Column(0.4, false)), rows);
  }

  private String size(Deal deal) {
    return table.rows().stream()
        .filter(row -> row.container().equals(deal.container()))
        .map(TableSheet.Row::size)
        .findFirst()
        .orElse(deal.container());
  }

  private Part others() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        row(
            Type.STRONG,
            true,
            cell("others", "Also"),
            cell("others", "Jars, size, grade and lot, and why")));
    for (String what :
        List.of("Broken", "Opened to taste", "Given away", "To another table", "Owing, not paid")) {
      rows.add(row(Type.PLAIN, true, cell("others", what), cell("others", "")));
      rows.add(row(Type.PLAIN, false, cell("others", " "), cell("others", "")));
    }
    return new Part(List.of(new Column(0.25, false), new Column(0.75, false)), rows);
  }

  private Part end() {
    return Part.of(
        row(
            Type.PLAIN,
            true,
            cell(
                "cash",
                "Change money out: %s     Cash ____________   Card ____________"
                    .formatted(table.cashFloat() == null ? "____________" : table.cashFloat()))),
        row(
            Type.PLAIN,
            false,
            cell("signed", "At the table: ____________________   Page ___ of ___")),
        row(Type.SMALL, false, cell("care", CARE)));
  }

  private static Row line(Type type, String... texts) {
    return line(type, true, texts);
  }

  private static Row line(Type type, boolean ruled, String... texts) {
    return Row.of(type, ruled, "rows", texts);
  }

  private static Row row(Type type, boolean ruled, Cell... cells) {
    return new Row(type, ruled, List.of(cells));
  }

  private static Cell cell(String field, String text) {
    return new Cell(field, text);
  }
}
