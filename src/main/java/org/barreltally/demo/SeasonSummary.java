package org.barreltally.demo;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.PrintStream;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What the played season came to: barrels in, jars out, lots, shrink. */
final class SeasonSummary {

  private double netPounds;
  private double inGallons;
  private double shrinkGallons;
  private int barrelCount;
  private final Map<String, Integer> jarsByGradeAndSize = new TreeMap<>();
  private final StringBuilder lots = new StringBuilder();
  private final StringBuilder shows = new StringBuilder();

  void barrel(JsonNode barrel) {
    barrelCount++;
    netPounds += barrel.at("/netWeight/value").asDouble();
  }

  void run(JsonNode sheet) {
    inGallons += sheet.at("/blend/volumeAt68F/value").asDouble();
    shrinkGallons += sheet.at("/shrink/volumeAt68F/value").asDouble();
    String grade = sheet.get("grade").asText();
    for (JsonNode fill : sheet.get("fills")) {
      jarsByGradeAndSize.merge(
          grade + " " + fill.get("container").asText(), fill.get("count").asInt(), Integer::sum);
    }
    lots.append(
        String.format(
            Locale.ROOT,
            "    %s  %s, %.2f gal in, shrink %.2f gal (%.2f %%)%n",
            sheet.get("lot").asText(),
            grade,
            sheet.at("/blend/volumeAt68F/value").asDouble(),
            sheet.at("/shrink/volumeAt68F/value").asDouble(),
            sheet.at("/shrink/percent").asDouble()));
  }

  void settlement(JsonNode settled) {
    int jars = 0;
    for (JsonNode sold : settled.get("sold")) {
      jars += sold.get("count").asInt();
    }
    shows.append(
        String.format(
            Locale.ROOT,
            "    %d jars sold, takings %.2f, drawer %+.2f, profit before syrup %.2f%n",
            jars,
            settled.at("/takings/amount").asDouble(),
            settled.at("/cashOverShort/amount").asDouble(),
            settled.at("/profit/amount").asDouble()));
  }

  void print(String farm, PrintStream out) {
    out.printf(Locale.ROOT, "An invented season was played: %s%n", farm);
    out.printf(Locale.ROOT, "  Barrels filled: %d, %.1f lb net%n", barrelCount, netPounds);
    out.println("  Jars packed:");
    jarsByGradeAndSize.forEach(
        (what, count) -> out.printf(Locale.ROOT, "    %-18s %5d%n", what, count));
    out.println("  Lots made:");
    out.print(lots);
    out.printf(
        Locale.ROOT,
        "  Shrink in all: %.2f gal of %.2f gal canned (%.2f %%), at 68 °F%n",
        shrinkGallons,
        inGallons,
        100 * shrinkGallons / inGallons);
    out.println("  Shows settled:");
    out.print(shows);
    out.flush();
  }
}
