package org.barreltally.reconciliation.pages;

import io.quarkus.qute.TemplateData;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.reconciliation.Balance;
import org.barreltally.reconciliation.Line;

/**
 * A year's syrup drawn as bands from where it came, through barrels and jars, to where it went. A
 * band is as wide as its mass, except that the thinnest are drawn wide enough to be seen. In units
 * of the drawing, 1000 wide.
 *
 * @param cameIn all that came in and was there
 */
@TemplateData
public record FlowPicture(
    int height, List<Band> bands, List<Block> blocks, Stage barrels, Stage jars, Quantity cameIn) {

  private static final double SCALE_HEIGHT = 340;
  private static final double THINNEST = 1.5;
  private static final double SLOT = 27;
  private static final int TOP = 40;
  private static final int SOURCES_X = 200;
  private static final int BARRELS_X = 350;
  private static final int JARS_X = 530;
  private static final int GOALS_X = 690;
  private static final int THICK = 12;
  private static final int G_PER_KG = 1000;

  /** Less than this many grams is rounding of the book, and drawn nowhere. */
  private static final double ROUNDING = 1;

  /** A band: the outline as SVG writes paths, and its class in the style sheet. */
  @TemplateData
  public record Band(String path, String look) {}

  /** Where a band begins or ends outside, with its name beside it. */
  @TemplateData
  public record Block(
      String line,
      Quantity mass,
      String look,
      int x,
      int y,
      int height,
      int textX,
      int textY,
      boolean source) {

    /** Which end of the text stands at textX. */
    public String anchor() {
      return source ? "end" : "start";
    }
  }

  /** Barrels, or jars. */
  @TemplateData
  public record Stage(int x, int y, int height, Quantity mass) {

    public int middle() {
      return x + THICK / 2;
    }

    public int nameY() {
      return y - 10;
    }
  }

  /** One line of the balance, split by whether it was in bulk or in jars; grams, above zero. */
  record Part(String line, double bulk, double jars) {

    double whole() {
      return bulk + jars;
    }
  }

  /** What comes in and what goes, in the order in which it is drawn. */
  record Parts(List<Part> in, List<Part> out, double intoJars) {}

  private static final List<Line> ORDER =
      List.of(
          Line.MADE,
          Line.BOUGHT,
          Line.WATER,
          Line.RETURNED,
          Line.OPENING,
          Line.BARRELS,
          Line.BULK,
          Line.DISCARDED,
          Line.SHRINK,
          Line.UNEXPLAINED,
          Line.BROKEN,
          Line.SAMPLES,
          Line.SHARES,
          Line.GIFTS,
          Line.SOLD,
          Line.CONSIGNED_SOLD,
          Line.CONSIGNED,
          Line.CONTAINERS);

  /** What is below zero on one side of the balance stands on the other. */
  static Parts parts(Balance balance) {
    List<Part> in = new ArrayList<>();
    List<Part> out = new ArrayList<>();
    for (Line line : ORDER) {
      double bulk = balance.line(line).bulkGrams();
      double jars = balance.line(line).jarGrams();
      add(line.comesIn() ? in : out, line, Math.max(bulk, 0), Math.max(jars, 0));
      add(line.comesIn() ? out : in, line, Math.max(-bulk, 0), Math.max(-jars, 0));
    }
    double intoJars = -balance.line(Line.CONVERTED).jarGrams();
    if (intoJars < 0) {
      add(in, Line.CONVERTED, -intoJars, 0);
      add(out, Line.CONVERTED, 0, -intoJars);
    }
    return new Parts(in, out, Math.max(intoJars, 0));
  }

  private static void add(List<Part> side, Line line, double bulk, double jars) {
    double seenBulk = bulk < ROUNDING ? 0 : bulk;
    double seenJars = jars < ROUNDING ? 0 : jars;
    if (seenBulk + seenJars > 0) {
      String name = line.name().toLowerCase(Locale.ROOT).replace('_', '-');
      side.add(new Part(name, seenBulk, seenJars));
    }
  }

  /** Draws a balance; null where nothing came in, since there is nothing to draw then. */
  static FlowPicture of(Balance balance) {
    Parts parts = parts(balance);
    double in = parts.in().stream().mapToDouble(Part::whole).sum();
    return in == 0 ? null : new Drawing(parts, SCALE_HEIGHT / in).drawn();
  }

  private static Quantity kg(double grams) {
    return Quantity.rounded(grams / G_PER_KG, Unit.KG, 3);
  }

  /** The drawing while it is made. */
  private static final class Drawing {
    private final Parts parts;
    private final double scale;
    private final List<Band> bands = new ArrayList<>();
    private final List<Block> blocks = new ArrayList<>();
    private double barrelsIn;
    private double barrelsOut;
    private double jarsIn;
    private double jarsOut;

    Drawing(Parts parts, double scale) {
      this.parts = parts;
      this.scale = scale;
    }

    FlowPicture drawn() {
      double left = stackHeight(parts.in());
      double right = stackHeight(parts.out());
      double barrelsHeight = Math.max(bulk(parts.in()), bulk(parts.out()) + wide(parts.intoJars()));
      double jarsHeight = Math.max(wide(parts.intoJars()) + jars(parts.in()), jars(parts.out()));
      double tall = Math.max(Math.max(left, right), Math.max(barrelsHeight, jarsHeight) + TOP);
      double barrelsY = TOP + (tall - barrelsHeight) / 2;
      double jarsY = TOP + tall - jarsHeight - (tall - jarsHeight) / 4;
      barrelsIn = barrelsY;
      barrelsOut = barrelsY;
      jarsIn = jarsY;
      jarsOut = jarsY;
      sources(TOP + (tall - left) / 2);
      goals(TOP + (tall - right) / 2);
      return new FlowPicture(
          (int) Math.ceil(TOP + tall + 10),
          bands,
          blocks,
          new Stage(BARRELS_X, round(barrelsY), round(barrelsHeight), mass(parts.in(), true)),
          new Stage(
              JARS_X,
              round(jarsY),
              round(jarsHeight),
              kg(parts.intoJars() + parts.in().stream().mapToDouble(Part::jars).sum())),
          kg(parts.in().stream().mapToDouble(Part::whole).sum()));
    }

    private static Quantity mass(List<Part> side, boolean inBulk) {
      return kg(side.stream().mapToDouble(part -> inBulk ? part.bulk() : part.jars()).sum());
    }

    private double bulk(List<Part> side) {
      return side.stream().mapToDouble(part -> wide(part.bulk())).sum();
    }

    private double jars(List<Part> side) {
      return side.stream().mapToDouble(part -> wide(part.jars())).sum();
    }

    private double stackHeight(List<Part> side) {
      return side.stream().mapToDouble(this::slot).sum();
    }

    private double slot(Part part) {
      return Math.max(wide(part.bulk()) + wide(part.jars()) + 6, SLOT);
    }

    private double wide(double grams) {
      return grams == 0 ? 0 : Math.max(grams * scale, THINNEST);
    }

    private void sources(double from) {
      double y = from;
      for (Part part : parts.in()) {
        double bulk = wide(part.bulk());
        double jars = wide(part.jars());
        double begins = y + (slot(part) - bulk - jars) / 2;
        block(part, SOURCES_X - THICK, begins, bulk + jars, true);
        band(part, SOURCES_X, begins, BARRELS_X, barrelsIn, bulk);
        barrelsIn += bulk;
        double toJars = jarsIn + wide(parts.intoJars());
        band(part, SOURCES_X, begins + bulk, JARS_X, toJars, jars);
        jarsIn += jars;
        y += slot(part);
      }
    }

    private void goals(double from) {
      double y = from;
      for (Part part : parts.out()) {
        double bulk = wide(part.bulk());
        double jars = wide(part.jars());
        double ends = y + (slot(part) - bulk - jars) / 2;
        block(part, GOALS_X, ends, bulk + jars, false);
        band(part, BARRELS_X + THICK, barrelsOut, GOALS_X, ends, bulk);
        barrelsOut += bulk;
        band(part, JARS_X + THICK, jarsOut, GOALS_X, ends + bulk, jars);
        jarsOut += jars;
        y += slot(part);
      }
      double top = jarsIn - jars(parts.in());
      double wide = wide(parts.intoJars());
      if (wide > 0) {
        bands.add(
            new Band(path(BARRELS_X + THICK, barrelsOut, JARS_X, top, wide), "band into-jars"));
      }
    }

    private void block(Part part, int x, double y, double height, boolean source) {
      blocks.add(
          new Block(
              part.line(),
              kg(part.whole()),
              look("block", part),
              x,
              round(y),
              Math.max(2, round(height)),
              source ? x - 8 : x + THICK + 8,
              round(y + height / 2) + 5,
              source));
    }

    private void band(Part part, double x, double y, double toX, double toY, double wide) {
      if (wide > 0) {
        bands.add(new Band(path(x, y, toX, toY, wide), look("band", part)));
      }
    }

    private static String look(String what, Part part) {
      return what + " " + part.line();
    }

    private static String path(double x, double y, double toX, double toY, double wide) {
      double middle = (x + toX) / 2;
      return String.format(
          Locale.ROOT,
          "M%.1f %.1fC%.1f %.1f %.1f %.1f %.1f %.1fV%.1fC%.1f %.1f %.1f %.1f %.1f %.1fZ",
          x,
          y,
          middle,
          y,
          middle,
          toY,
          toX,
          toY,
          toY + wide,
          middle,
          toY + wide,
          middle,
          y + wide,
          x,
          y + wide);
    }

    private static int round(double value) {
      return (int) Math.round(value);
    }
  }
}
