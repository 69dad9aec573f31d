package org.barreltally.sugarbush.boiling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;
import org.barreltally.sugarbush.Bushes;
import org.barreltally.sugarbush.boiling.internal.LogRows;

/** Boils are begun, fed, drawn off, noted on, taken back. */
@ApplicationScoped
public class Boiling {

  private static final int FEEDS_MAX = 50;
  private static final Duration LONGEST = Duration.ofHours(72);

  private final Boils boils;
  private final LogRows rows;
  private final LogReadings readings;
  private final LogRules rules;
  private final DrawOffTemperatures temperatures;
  private final Bushes bushes;
  private final FarmSettings settings;

  Boiling(
      Boils boils,
      LogRows rows,
      LogReadings readings,
      LogRules rules,
      DrawOffTemperatures temperatures,
      Bushes bushes,
      FarmSettings settings) {
    this.boils = boils;
    this.rows = rows;
    this.readings = readings;
    this.rules = rules;
    this.temperatures = temperatures;
    this.bushes = bushes;
    this.settings = settings;
  }

  /**
   * Begins a boil with what is fed so far. More taken from a tank than stands in it by the log is
   * flagged, not refused: gauges are rough, and what happened, happened.
   *
   * @throws org.barreltally.refusal.Refusal naming what is missing or impossible
   */
  @Transactional
  public Boil start(StartBoil said) {
    LocalDate on = rules.day(said.on());
    int season = LogRules.season(on, said.season());
    times(said, on);
    LogRules.text(said.fuel(), "fuel");
    LogRules.text(said.note(), "note");
    double target =
        said.targetBrix() == null
            ? settings.jurisdiction().brixMin()
            : temperatures.target(said.targetBrix(), "targetBrix");
    temperatures.check(said.pressure(), "pressure", said.waterBoils(), "waterBoils");
    if (said.feeds().size() > FEEDS_MAX) {
      throw new InvalidField("feeds", "Give at most " + FEEDS_MAX + " feeds at once.");
    }
    UUID id =
        rows.add(
            new LogRows.Head(EntryKind.BOIL, null, season, on, null), said.kept(target), List.of());
    for (int n = 0; n < said.feeds().size(); n++) {
      add(id, season, on, said.feeds().get(n), "feeds[" + n + "]");
    }
    return boils.at(id);
  }

  /**
   * Records more that went into the pan.
   *
   * @throws UnknownEntry if there is no such boil
   * @throws EntryReversed if it was taken back
   */
  @Transactional
  public Boil feed(UUID id, Feed said) {
    Boil boil = open(id);
    add(id, boil.season(), boil.on(), said, "");
    return boils.at(id);
  }

  /**
   * Records a draw-off. The barrel is named by its tag and need not be known: it is entered when it
   * is full.
   *
   * @throws UnknownEntry if there is no such boil
   * @throws EntryReversed if it was taken back
   * @throws TooHotForVolume if it goes by volume and is above 212 °F
   */
  @Transactional
  public Boil drawOff(UUID id, DrawOff said) {
    Boil boil = open(id);
    Instant at = rules.at(said.at(), "at");
    within(boil, at);
    String barrel =
        said.barrel() == null
            ? null
            : LogRules.name(said.barrel(), "barrel", "Give the tag, at most 40 characters.");
    boolean jars = Boolean.TRUE.equals(said.hotIntoJars());
    if ((barrel == null) != jars) {
      throw new InvalidField(
          "barrel", "Give the tag of the barrel it went to, or say hotIntoJars: true.");
    }
    LogRules.text(said.note(), "note");
    Amount amount = readings.drawn(said);
    DrawOff tidy =
        new DrawOff(
            at,
            said.volume(),
            said.temperature(),
            said.weight(),
            said.density(),
            barrel,
            jars,
            said.note());
    rows.add(
        new LogRows.Head(EntryKind.DRAW_OFF, id, boil.season(), boil.on(), null),
        tidy,
        List.of(amount));
    return boils.at(id);
  }

  /**
   * Says something of a boil later: its end, fuel, niter, filter press.
   *
   * @throws EntryReversed if it was taken back
   */
  @Transactional
  public Boil note(UUID id, BoilNote said) {
    Boil boil = open(id);
    if (said.saysNothing()) {
      throw new InvalidField("note", "Say endedAt, fuel, niter, filterPress or note.");
    }
    LogRules.text(said.fuel(), "fuel");
    LogRules.text(said.niter(), "niter");
    LogRules.text(said.filterPress(), "filterPress");
    LogRules.text(said.note(), "note");
    if (said.endedAt() != null) {
      end(boil.said().startedAt(), rules.at(said.endedAt(), "endedAt"));
    }
    rows.add(new LogRows.Head(EntryKind.NOTE, id, boil.season(), boil.on(), null), said, List.of());
    return boils.at(id);
  }

  /**
   * Takes a boil back with all its parts.
   *
   * @throws EntryReversed if it was
   */
  @Transactional
  public Boil reverse(UUID id, String reason) {
    open(id);
    rows.reverse(id, LogRules.reason(reason));
    return boils.at(id);
  }

  /**
   * Takes one feed, draw-off or note of a boil back.
   *
   * @throws UnknownEntry if the boil has no such part
   * @throws EntryReversed if it was
   */
  @Transactional
  public Boil reversePart(UUID id, UUID part, String reason) {
    Boil boil = open(id);
    Reversed before =
        PartOf.find(boil, part)
            .orElseThrow(() -> new UnknownEntry("part", part, "/api/boils/" + id))
            .reversed();
    if (before != null) {
      throw new EntryReversed(before);
    }
    rows.reverse(part, LogRules.reason(reason));
    return boils.at(id);
  }

  private Boil open(UUID id) {
    rows.lock(id);
    Boil boil = boils.at(id);
    if (boil.reversed() != null) {
      throw new EntryReversed(boil.reversed());
    }
    return boil;
  }

  private void add(UUID boil, int season, LocalDate on, Feed said, String path) {
    String dot = path.isEmpty() ? "" : path + ".";
    if (said == null || said.of() == null) {
      throw new InvalidField(dot + "of", "Say what is fed: sap or concentrate.");
    }
    String tank =
        said.tank() == null
            ? null
            : LogRules.name(said.tank(), dot + "tank", "Name the tank, at most 40 characters.");
    String bush = said.bush() == null ? null : bushes.known(said.bush(), season, dot + "bush");
    if (tank == null && bush == null) {
      throw new InvalidField(dot + "tank", "Name the tank it comes from, or the bush.");
    }
    boolean sap = said.of() == Feed.Of.SAP;
    Amount amount =
        readings.gauged(
            Role.BOILED,
            new Gauged(tank, said.volume(), said.temperature(), said.brix()),
            sap ? "Sap" : "Concentrate",
            sap ? LogReadings.SAP_MAX : LogReadings.CONCENTRATE_MAX,
            dot);
    rows.add(new LogRows.Head(EntryKind.FEED, boil, season, on, bush), said, List.of(amount));
  }

  private void times(StartBoil said, LocalDate on) {
    Instant start = rules.at(said.startedAt(), "startedAt");
    if (!rules.dateOf(start).equals(on)) {
      throw new InvalidField(
          "startedAt", "The boil of " + on + " began on another day. Mend the day or the time.");
    }
    if (said.endedAt() != null) {
      end(start, rules.at(said.endedAt(), "endedAt"));
    }
  }

  private static void end(Instant start, Instant end) {
    if (!end.isAfter(start) || Duration.between(start, end).compareTo(LONGEST) > 0) {
      throw new InvalidField("endedAt", "A boil ends after it began, and within 72 hours.");
    }
  }

  private static void within(Boil boil, Instant at) {
    Instant end = boil.endedAt();
    if (at.isBefore(boil.said().startedAt()) || end != null && at.isAfter(end)) {
      throw new InvalidField(
          "at",
          "The boil went on from %s to %s. Mend the time, or note another end of the boil first."
              .formatted(boil.said().startedAt(), end == null ? "now" : end));
    }
  }
}
