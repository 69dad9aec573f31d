package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.ReferenceTable;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.sugarbush.boiling.Boil;
import org.barreltally.sugarbush.boiling.Boils;
import org.barreltally.sugarbush.boiling.Concentrate;
import org.barreltally.sugarbush.boiling.Concentrates;
import org.barreltally.sugarbush.boiling.ExpectedSyrup;
import org.barreltally.sugarbush.boiling.Production;
import org.barreltally.sugarbush.boiling.ProductionSeason;
import org.barreltally.sugarbush.boiling.ProductionSeason.OfBush;

/** The sugarhouse's log: sap by bush, concentrate, and what each boil gave. */
@ApplicationScoped
class SugarhouseSection implements SeasonBookSection {

  private static final double PER_GAL = Quantity.of(1, Unit.GAL).doubleIn(Unit.ML);
  private static final double PER_LB = Quantity.of(1, Unit.LB).doubleIn(Unit.G);

  /** What a scale in air shows of a gram; it moves by a hundred-thousandth from 60 to 70 °Bx. */
  private static final double IN_AIR = new Syrup(66.9).weightInAir(1);

  private static final int PER_TAP = 4;

  private final Production production;
  private final Concentrates concentrates;
  private final Boils boils;

  SugarhouseSection(Production production, Concentrates concentrates, Boils boils) {
    this.production = production;
    this.concentrates = concentrates;
    this.boils = boils;
  }

  @Override
  public int order() {
    return 150;
  }

  @Override
  public String title() {
    return "The sugarhouse";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    ProductionSeason season = production.of(year.year(), year.asOf());
    out.note(
        "As the log had it at the time the book stands at; only what was entered counts. Gallons are"
            + " at 68 °F. Pounds of syrup are what a scale in air shows, those of sugar are mass."
            + " After ± stands the standard uncertainty; what differs by more than twice that means"
            + " something.");
    sap(season, out);
    concentrate(concentrates.counting(year.year(), year.asOf()), season, out);
    boiled(boils.counting(year.year(), year.asOf()), season, out);
  }

  private static void sap(ProductionSeason season, BookPages out) {
    out.say("Sap and taps by bush. Syrup is parted by the sugar gathered from each:");
    out.table(
        Heading.of("Bush", 0.21),
        Heading.number("taps", 0.08),
        Heading.number("Sap, gal", 0.19),
        Heading.number("°Bx", 0.15),
        Heading.number("Syrup, gal", 0.17),
        Heading.number("gal a tap", 0.2));
    for (OfBush bush : season.bushes()) {
      Uncertain syrup = season.drawnML().times(bush.share());
      out.row(
          bush.bush() + (bush.agreed() ? " (taps as agreed)" : ""),
          bush.taps() == null ? "" : Integer.toString(bush.taps()),
          gallons(bush.sap(), 1),
          bush.brix() == null ? "" : both(bush.brix(), 1, 2),
          gallons(syrup, 2),
          perTap(syrup, bush.taps()));
    }
    if (!season.bushes().isEmpty()) {
      out.sum(
          "All",
          season.taps() == 0 ? "" : Integer.toString(season.taps()),
          gallons(season.sap(), 1),
          "",
          gallons(season.drawnML(), 2),
          perTap(season.drawnML(), season.taps()));
    }
    if (season.taps() > 0 && season.drawnML().value() > 0) {
      published(out);
    }
  }

  private static void published(BookPages out) {
    out.table(
        Heading.of("Published: a mean over many makers", 0.3),
        Heading.of("Season", 0.12),
        Heading.number("gal a tap", 0.14),
        Heading.of("Source", 0.44));
    for (CSVRecord row : ReferenceTable.rows("yield_per_tap.csv")) {
      out.row(
          row.get("where"),
          row.get("season"),
          row.get("gallons_per_tap"),
          "University of Vermont Extension, from USDA NASS");
    }
  }

  private static void concentrate(List<Concentrate> made, ProductionSeason season, BookPages out) {
    out.say("Concentrate, and the sugar that went into the membrane and did not come out in it:");
    out.table(
        Heading.of("On", 0.13),
        Heading.number("Sap, gal", 0.17),
        Heading.number("°Bx", 0.08),
        Heading.number("Concentrate, gal", 0.17),
        Heading.number("°Bx", 0.08),
        Heading.number("Sugar, lb", 0.16),
        Heading.of("Means something?", 0.21));
    made.stream()
        .sorted(Comparator.comparing(Concentrate::on))
        .forEach(
            one ->
                out.row(
                    one.on().toString(),
                    gallons(one.taken().mL(), 1),
                    plain(one.taken().brix().value(), 1),
                    gallons(one.made().mL(), 1),
                    plain(one.made().brix().value(), 1),
                    both(one.lost(), PER_LB, 2),
                    judged(one.lost())));
    if (!made.isEmpty()) {
      ProductionSeason.OfMembrane all = season.concentrate();
      out.sum(
          "All",
          gallons(all.taken(), 1),
          "",
          gallons(all.made(), 1),
          "",
          both(all.lostSugar(), PER_LB, 2),
          judged(all.lostSugar()));
    }
  }

  private static void boiled(List<Boil> boiled, ProductionSeason season, BookPages out) {
    out.say(
        "Boils: what went into the pan, the syrup its sugar could give, and what was drawn off:");
    out.table(
        Heading.of("On", 0.13),
        Heading.number("Fed, gal", 0.15),
        Heading.number("Expected, gal and lb", 0.16),
        Heading.number("Drawn off, gal and lb", 0.16),
        Heading.number("More or less, lb", 0.17),
        Heading.of("Means something?", 0.23));
    boiled.stream().sorted(Comparator.comparing(Boil::on)).forEach(boil -> row(boil, out));
    if (!boiled.isEmpty()) {
      boolean both = season.drawn().value() > 0 && season.expected().value() > 0;
      out.sum(
          "All",
          gallons(season.fed(), 1),
          pounds(season.expected()) + " lb",
          pounds(season.drawn()) + " lb",
          both ? pounds(season.difference()) : "",
          both ? judged(season.difference()) : "");
    }
  }

  private static void row(Boil boil, BookPages out) {
    ExpectedSyrup expected = boil.expected();
    ExpectedSyrup.Drawn drawn = expected.drawn();
    boolean fed = expected.sugar().value() > 0;
    Uncertain volume =
        boil.feeds().stream()
            .filter(feed -> feed.reversed() == null)
            .map(feed -> feed.amount().mL())
            .reduce(Uncertain.exact(0), Uncertain::plus);
    boolean both = fed && drawn != null;
    out.row(
        boil.on().toString(),
        fed ? gallons(volume, 1) : "",
        fed ? gallons(expected.mL(), 2) + " gal " + pounds(expected.grams()) + " lb" : "",
        drawn == null ? "" : gallons(drawn.mL(), 2) + " gal " + pounds(drawn.grams()) + " lb",
        both ? pounds(drawn.difference()) : "",
        both ? judged(drawn.difference()) : fed ? "nothing drawn off" : "nothing fed");
  }

  private static String judged(Uncertain difference) {
    return difference.differsFrom(Uncertain.exact(0))
        ? "yes, more than twice its uncertainty"
        : "no, measuring may explain it";
  }

  private static String perTap(Uncertain mL, Integer taps) {
    return taps == null || taps == 0 || mL.value() == 0 ? "" : both(mL, PER_GAL * taps, PER_TAP);
  }

  private static String gallons(Uncertain mL, int decimals) {
    return mL.value() == 0 ? "" : both(mL, PER_GAL, decimals);
  }

  private static String pounds(Uncertain grams) {
    return both(grams, PER_LB / IN_AIR, 1);
  }

  /** In a unit of so many of what it is given in. */
  private static String both(Uncertain figure, double unit, int decimals) {
    return plain(figure.value() / unit, decimals) + " ± " + plain(figure.u() / unit, decimals);
  }

  private static String plain(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }
}
