package org.barreltally.shows;

import java.util.ArrayList;
import java.util.List;

/** A show in a few lines, as a calendar carries it. */
final class ShowWords {

  private ShowWords() {}

  /** State, helper, vehicle, kit, fee, papers and rain plan; what is not known is left out. */
  static String of(Show show) {
    Booking booking = show.booking();
    List<String> lines = new ArrayList<>();
    lines.add("State: " + show.state().code());
    add(lines, "Helper", booking.helper());
    add(lines, "Vehicle", booking.vehicle());
    add(lines, "Table kit", booking.tableKit());
    if (booking.booth() != null) {
      add(lines, "Fee", booking.booth().fee());
      add(
          lines,
          "Percent of sales",
          booking.booth().percentOfSales() == null
              ? null
              : booking.booth().percentOfSales().toPlainString());
    }
    if (booking.papers() != null && !booking.papers().isEmpty()) {
      add(lines, "Bring", String.join(", ", booking.papers()));
    }
    add(lines, "In rain", booking.rainPlan());
    return String.join("\n", lines);
  }

  private static void add(List<String> lines, String name, Object value) {
    if (value != null) {
      lines.add(name + ": " + value);
    }
  }
}
