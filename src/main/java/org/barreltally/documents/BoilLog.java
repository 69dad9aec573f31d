package org.barreltally.documents;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.FormText.Type;
import org.barreltally.sugarbush.boiling.Boil;
import org.barreltally.sugarbush.boiling.BoilNote;
import org.barreltally.sugarbush.boiling.DrawOff;
import org.barreltally.sugarbush.boiling.DrawOffTemperature;
import org.barreltally.sugarbush.boiling.ExpectedSyrup;
import org.barreltally.sugarbush.boiling.Feed;
import org.barreltally.sugarbush.boiling.Reversed;
import org.barreltally.sugarbush.boiling.ShortTank;

/** The log of a boil: what went in, what came off, what was to be expected. */
final class BoilLog {

  private static final String CAUTION =
      "Syrup at draw-off is near 219 °F and clings to skin: gloves, apron, closed shoes, no children at the pan. Never"
          + " open a filter press under pressure: stop the pump and let the gauge fall to nothing first. Never leave a"
          + " pan alone on the fire.";
  private static final String DECIDE =
      "This sheet helps your records. ± is twice the standard uncertainty, from the settings of gauges and"
          + " instruments. Density decides when syrup is drawn off, not temperature; your state agency decides what"
          + " a record must hold.";
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);

  private static final List<Column> TABLE =
      List.of(
          new Column(0.18, false),
          new Column(0.18, false),
          new Column(0.26, false),
          new Column(0.1, true),
          new Column(0.14, true),
          new Column(0.14, true));

  private final Boil boil;
  private final DrawOffTemperature day;
  private final Maker maker;
  private final ZoneId zone;

  /**
   * @param day null if neither air nor water was read
   */
  BoilLog(Boil boil, DrawOffTemperature day, Maker maker, ZoneId zone) {
    this.boil = boil;
    this.day = day;
    this.maker = maker;
    this.zone = zone;
  }

  FormText on(Paper paper) {
    List<Part> parts = new ArrayList<>(List.of(head(), facts(), fed(), drawn(), expected()));
    parts.add(notes());
    parts.add(
        Part.of(
            Row.of(Type.STRONG, true, "caution", "Take care"),
            Row.of(Type.SMALL, false, "caution", CAUTION),
            Row.of(Type.SMALL, false, "decide", DECIDE)));
    return new FormText(paper, "Boil log " + boil.on(), parts);
  }

  private Part head() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.of(Type.LARGE, false, "title", "Boil log, " + DayWords.of(boil.on(), maker.habit())));
    rows.add(Row.of(Type.PLAIN, false, "maker", maker.name() + " · season " + boil.season()));
    if (boil.reversed() != null) {
      rows.add(Row.of(Type.STRONG, false, "reversed", "TAKEN BACK: " + boil.reversed().reason()));
    }
    return new Part(List.of(new Column(1, false)), rows);
  }

  private Part facts() {
    List<Row> rows = new ArrayList<>();
    Instant end = boil.endedAt();
    rows.add(
        pair(
            "Fire lit to out",
            hour(boil.said().startedAt()) + " to " + (end == null ? "—" : hour(end))));
    rows.add(pair("Fuel", boil.fuel() == null ? "—" : boil.fuel()));
    if (boil.said().pressure() != null) {
      rows.add(pair("Air at the sugarhouse", boil.said().pressure().toString()));
    }
    if (day != null) {
      rows.add(
          pair(
              "Water boiled at",
              BoilFigures.fahrenheit(day.waterCelsius())
                  + (day.byWater() ? ", measured" : ", by the pressure of the air")));
      rows.add(
          pair(
              "Draw off near",
              BoilFigures.fahrenheit(day.drawOffCelsius())
                  + " for "
                  + BoilFigures.one(day.brix())
                  + " °Bx, "
                  + BoilFigures.fahrenheitStep(day.elevationCelsius())
                  + " above water"));
    }
    return new Part(List.of(new Column(0.25, false), new Column(0.75, false)), rows);
  }

  private Part fed() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.of(
            Type.STRONG,
            true,
            "feeds",
            "Into the pan",
            "From",
            "As read",
            "°Bx",
            "gal, 68 °F",
            "lb sugar"));
    for (Boil.Fed fed : boil.feeds()) {
      Feed said = fed.said();
      rows.add(
          Row.of(
              Type.PLAIN,
              false,
              "feeds",
              said.of().code(),
              said.tank() == null ? fed.bush() : said.tank(),
              said.volume() + " at " + BoilFigures.inFahrenheit(said.temperature()),
              BoilFigures.one(fed.amount().brix().value()),
              BoilFigures.one(BoilFigures.gallons(fed.amount().mL().value())),
              BoilFigures.one(BoilFigures.pounds(fed.amount().sugar().value()))));
      takenBack(fed.reversed(), rows);
    }
    return new Part(TABLE, rows);
  }

  private Part drawn() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.of(
            Type.STRONG,
            true,
            "drawOffs",
            "Drawn off",
            "To",
            "As read",
            "°Bx",
            "lb in air",
            "gal, 68 °F"));
    for (Boil.Drawn drawn : boil.drawOffs()) {
      DrawOff said = drawn.said();
      rows.add(
          Row.of(
              Type.PLAIN,
              false,
              "drawOffs",
              hour(said.at()),
              said.barrel() == null ? "hot into jars" : said.barrel(),
              said.weight() == null
                  ? said.volume() + " at " + BoilFigures.inFahrenheit(said.temperature())
                  : said.weight().toString(),
              BoilFigures.one(drawn.amount().brix().value()),
              BoilFigures.one(BoilFigures.inAir(drawn.amount())),
              BoilFigures.two(BoilFigures.gallons(drawn.amount().mL().value()))));
      takenBack(drawn.reversed(), rows);
    }
    return new Part(TABLE, rows);
  }

  private static void takenBack(Reversed reversed, List<Row> rows) {
    if (reversed != null) {
      String[] cells = new String[TABLE.size()];
      Arrays.fill(cells, "");
      cells[2] = "taken back, counts for nothing: " + reversed.reason();
      rows.add(Row.of(Type.SMALL, false, "reversed", cells));
    }
  }

  private Part expected() {
    ExpectedSyrup expected = boil.expected();
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.of(
            Type.STRONG,
            true,
            "expected",
            "Syrup of " + BoilFigures.one(expected.brix().value()) + " °Bx",
            "gal at 68 °F",
            ""));
    rows.add(sum("By the sugar fed, none lost", BoilFigures.gallons(expected.mL()), ""));
    rows.add(
        sum("By 86 over the Brix", BoilFigures.gallons(expected.mLBy86()), "the trade's rule"));
    rows.add(
        sum(
            "By the revised rule",
            BoilFigures.gallons(expected.mLRevised()),
            BoilFigures.two(expected.numerator())
                + " over the Brix, less 0.32 (Perkins and Isselhardt)"));
    if (expected.drawn() != null) {
      rows.add(sum("Drawn off", BoilFigures.gallons(expected.drawn().mL()), ""));
      if (expected.sugar().value() > 0) {
        rows.add(
            Row.of(
                Type.STRONG,
                true,
                "expected",
                "Drawn less expected by sugar",
                BoilFigures.gallons(expected.drawn().differenceML()),
                expected.drawn().isBeyondDoubt()
                    ? "more than the readings leave in doubt: look for it"
                    : "within what the readings leave in doubt"));
      }
    }
    return new Part(
        List.of(new Column(0.36, false), new Column(0.22, true), new Column(0.42, false)), rows);
  }

  private Part notes() {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(Type.STRONG, true, "notes", "Notes", ""));
    if (boil.said().note() != null) {
      rows.add(pair("", boil.said().note()));
    }
    for (Boil.Noted noted : boil.notes()) {
      BoilNote said = noted.said();
      if (noted.reversed() == null) {
        note("Niter", said.niter(), rows);
        note("Filter press", said.filterPress(), rows);
        note("", said.note(), rows);
      }
    }
    for (ShortTank tank : boil.shortTanks()) {
      rows.add(
          pair(
              "Tank " + tank.tank(),
              "gave %s gal more than went in by the log, %s"
                  .formatted(
                      BoilFigures.gallons(tank.missing()),
                      tank.isBeyondDoubt() ? "beyond doubt" : "within doubt")));
    }
    rows.add(pair("Boiled by", "______________________"));
    return new Part(List.of(new Column(0.25, false), new Column(0.75, false)), rows);
  }

  private static void note(String what, String said, List<Row> rows) {
    if (said != null) {
      rows.add(pair(what, said));
    }
  }

  private static Row pair(String what, String said) {
    return Row.of(Type.PLAIN, false, "notes", what, said);
  }

  private static Row sum(String what, String gallons, String how) {
    return Row.of(Type.PLAIN, false, "expected", what, gallons, how);
  }

  private String hour(Instant at) {
    return HOUR.format(at.atZone(zone));
  }
}
