package org.barreltally.documents;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barreltally.documents.FormText.Cell;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.FormText.Type;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Money;
import org.barreltally.settings.UnitHabit;
import org.barreltally.shows.Booking;
import org.barreltally.shows.Show;

/**
 * The packing list of a show, to go along in the vehicle: every lot with boxes to tick out and home
 * and lines to count on, the kit, the papers, the change money and what it all weighs.
 */
final class PackingList {

  private static final String BOX = FormText.TICK_BOX;
  private static final String COUNT = "______";
  private static final double GRAMS_PER_KG = 1000;
  private static final String CARE =
      "Glass: pack it upright and apart, and look over what stood beside a broken jar before it is sold."
          + " Lift with two, and tie down the load. Keep jars and samples out of sun and heat.";
  private static final String DECIDE =
      "This sheet helps your records. Your state agency, weights-and-measures office, inspector and"
          + " tax preparer decide.";

  /**
   * Jars of one container and lot.
   *
   * @param lot null where it is still to be chosen
   * @param grams of all of them, syrup and known empty weight
   */
  record Line(
      String container, String name, ColorClass grade, String lot, long count, double grams) {}

  private final Show show;
  private final Booking booking;
  private final Maker maker;
  private final String setUp;
  private final List<Line> lines;
  private final Money cashFloat;
  private final List<String> withoutEmptyWeight;

  /**
   * @param setUp when, by the farm's clock; null if it is not said
   * @param cashFloat change money that went along, or is to; null for none
   * @param withoutEmptyWeight containers whose empty weight nobody said
   */
  PackingList(
      Show show,
      Maker maker,
      String setUp,
      List<Line> lines,
      Money cashFloat,
      List<String> withoutEmptyWeight) {
    this.show = show;
    this.booking = show.booking();
    this.maker = maker;
    this.setUp = setUp;
    this.lines = lines;
    this.cashFloat = cashFloat;
    this.withoutEmptyWeight = withoutEmptyWeight;
  }

  FormText on(Paper paper) {
    List<Part> parts = new ArrayList<>(List.of(head(), facts(), jars(), load()));
    ticked(
        "Table kit" + (booking.tableKit() == null ? "" : ": " + booking.tableKit()),
        booking.kitItems(),
        "kitItems",
        parts);
    ticked("Papers to bring", booking.papers(), "papers", parts);
    parts.add(cash());
    parts.add(end());
    return new FormText(paper, "Packing list " + show.name() + " " + show.starts(), parts);
  }

  private Part head() {
    return Part.of(
        row(Type.LARGE, false, cell("name", show.name())),
        row(
            Type.PLAIN,
            false,
            cell("town", "Packing list · " + show.town() + " · " + days() + " · " + maker.name())));
  }

  private String days() {
    return show.starts().equals(show.ends())
        ? show.starts().toString()
        : show.starts() + " to " + show.ends();
  }

  private Part facts() {
    List<Row> rows = new ArrayList<>();
    fact(rows, "Set up", setUp, "setUp");
    fact(rows, "Helper", booking.helper(), "helper");
    fact(rows, "Vehicle", booking.vehicle(), "vehicle");
    fact(rows, "In rain", booking.rainPlan(), "rainPlan");
    fact(rows, "State", show.state().code(), "state");
    return new Part(List.of(new Column(0.14, false), new Column(0.86, false)), rows);
  }

  private static void fact(List<Row> rows, String name, String value, String field) {
    if (value != null && !value.isBlank()) {
      rows.add(row(Type.PLAIN, false, cell(field, name), cell(field, value)));
    }
  }

  private Part jars() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        row(
            Type.STRONG,
            true,
            cell("lines", "Out"),
            cell("lines", "Jars"),
            cell("lines", "Size, grade"),
            cell("lines", "Lot"),
            cell("lines", "Home"),
            cell("lines", "Whole"),
            cell("lines", "Broken"),
            cell("lines", "Sampled")));
    for (Line line : lines) {
      rows.add(
          jarRow(
              String.valueOf(line.count()),
              "%s (%s), %s".formatted(line.name(), line.container(), grade(line.grade())),
              line.lot() == null ? "____________" : line.lot()));
    }
    if (lines.isEmpty()) {
      for (int n = 0; n < 8; n++) {
        rows.add(jarRow("____", "____________________", "____________"));
      }
    }
    return new Part(
        List.of(
            new Column(0.05, false),
            new Column(0.07, true),
            new Column(0.33, false),
            new Column(0.21, false),
            new Column(0.07, false),
            new Column(0.09, false),
            new Column(0.09, false),
            new Column(0.09, false)),
        rows);
  }

  private static Row jarRow(String count, String what, String lot) {
    return row(
        Type.PLAIN,
        true,
        cell("lines", BOX),
        cell("lines", count),
        cell("lines", what),
        cell("lot", lot),
        cell("lines", BOX),
        cell("lines", COUNT),
        cell("lines", COUNT),
        cell("lines", COUNT));
  }

  private static String grade(ColorClass grade) {
    return grade == null ? "not graded" : grade.words();
  }

  private Part load() {
    long jars = lines.stream().mapToLong(Line::count).sum();
    double grams = lines.stream().mapToDouble(Line::grams).sum();
    List<Row> rows = new ArrayList<>();
    rows.add(
        row(Type.STRONG, true, cell("load", "%d jars, about %s".formatted(jars, weight(grams)))));
    if (!withoutEmptyWeight.isEmpty()) {
      rows.add(
          row(
              Type.SMALL,
              false,
              cell(
                  "load",
                  "Without the empty weight of "
                      + String.join(", ", withoutEmptyWeight)
                      + ", which nobody gave, and without kit and boxes.")));
    } else if (jars > 0) {
      rows.add(row(Type.SMALL, false, cell("load", "Without kit and boxes.")));
    }
    Quantity most = booking.vehicleLoad();
    if (most != null) {
      double left = most.doubleIn(Unit.G) - grams;
      rows.add(
          row(
              left < 0 ? Type.STRONG : Type.PLAIN,
              false,
              cell(
                  "vehicleLoad",
                  "The vehicle should carry %s at most: %s %s."
                      .formatted(
                          weight(most.doubleIn(Unit.G)),
                          weight(Math.abs(left)),
                          left < 0 ? "TOO MUCH" : "are left for kit, boxes and people's things"))));
    }
    return Part.of(rows.toArray(Row[]::new));
  }

  private String weight(double grams) {
    double kilograms = grams / GRAMS_PER_KG;
    double pounds = Quantity.rounded(grams, Unit.G, 3).doubleIn(Unit.LB);
    return maker.habit() == UnitHabit.METRIC
        ? String.format(Locale.ROOT, "%.1f kg (%.0f lb)", kilograms, pounds)
        : String.format(Locale.ROOT, "%.0f lb (%.1f kg)", pounds, kilograms);
  }

  private static void ticked(String title, List<String> things, String field, List<Part> parts) {
    List<String> named = things == null ? List.of() : things;
    List<Row> rows = new ArrayList<>();
    rows.add(row(Type.STRONG, true, cell(field, title), cell(field, "Out"), cell(field, "Home")));
    for (String thing : named) {
      rows.add(row(Type.PLAIN, false, cell(field, thing), cell(field, BOX), cell(field, BOX)));
    }
    if (named.isEmpty()) {
      rows.add(
          row(
              Type.PLAIN,
              false,
              cell(field, "______________________________"),
              cell(field, BOX),
              cell(field, BOX)));
    }
    parts.add(
        new Part(
            List.of(new Column(0.76, false), new Column(0.12, false), new Column(0.12, false)),
            rows));
  }

  private Part cash() {
    return new Part(
        List.of(new Column(0.76, false), new Column(0.12, false), new Column(0.12, false)),
        List.of(
            row(
                Type.STRONG,
                true,
                cell("float", "Change money"),
                cell("float", "Out"),
                cell("float", "Home")),
            row(
                Type.PLAIN,
                false,
                cell("float", cashFloat == null ? "______________" : cashFloat.toString()),
                cell("float", BOX),
                cell("float", BOX))));
  }

  private static Part end() {
    return Part.of(
        row(
            Type.PLAIN,
            false,
            cell(
                "signed", "Packed by ____________________   Counted home by ____________________")),
        row(Type.SMALL, false, cell("care", CARE)),
        row(Type.SMALL, false, cell("decide", DECIDE)));
  }

  private static Row row(Type type, boolean ruled, Cell... cells) {
    return new Row(type, ruled, List.of(cells));
  }

  private static Cell cell(String field, String text) {
    return new Cell(field, text);
  }
}
