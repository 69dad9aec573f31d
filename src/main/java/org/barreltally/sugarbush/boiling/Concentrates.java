package org.barreltally.sugarbush.boiling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.refusal.InvalidField;
import org.barreltally.sugarbush.boiling.internal.Entry;
import org.barreltally.sugarbush.boiling.internal.LogReading;
import org.barreltally.sugarbush.boiling.internal.LogRows;

/** What a membrane made of sap. */
@ApplicationScoped
public class Concentrates {

  private final LogReading log;
  private final LogRows rows;
  private final LogReadings readings;
  private final LogRules rules;

  Concentrates(LogReading log, LogRows rows, LogReadings readings, LogRules rules) {
    this.log = log;
    this.rows = rows;
    this.readings = readings;
    this.rules = rules;
  }

  /**
   * Records concentrate that was made. Sugar lost is judged, not refused.
   *
   * @throws NotStronger if it is no stronger or no less than the sap
   * @throws NotSap if a strength is impossible
   * @throws InvalidField naming what is missing or out of its range
   */
  @Transactional
  public Concentrate make(MakeConcentrate said) {
    LocalDate on = rules.day(said.on());
    int season = LogRules.season(on, said.season());
    LogRules.text(said.note(), "note");
    Amount taken = side(Role.TAKEN, said.sap(), "Sap", LogReadings.CONCENTRATE_MAX, "sap");
    Amount made =
        side(
            Role.MADE,
            said.concentrate(),
            "Concentrate",
            LogReadings.CONCENTRATE_MAX,
            "concentrate");
    if (made.brix().value() <= taken.brix().value()) {
      throw new NotStronger("a higher Brix", "concentrate.brix");
    }
    if (made.mL().value() >= taken.mL().value()) {
      throw new NotStronger("less volume", "concentrate.volume");
    }
    if (said.permeateBrix() != null) {
      readings.ofPermeate(said.permeateBrix());
    }
    UUID id =
        rows.add(
            new LogRows.Head(EntryKind.CONCENTRATE, null, season, on, null),
            said,
            List.of(taken, made));
    return at(id);
  }

  private Amount side(Role role, Gauged said, String what, double most, String field) {
    if (said == null) {
      throw new InvalidField(field, "Give tank, volume, temperature and brix.");
    }
    String tank =
        LogRules.name(said.tank(), field + ".tank", "Name the tank, at most 40 characters.");
    Gauged tidy = new Gauged(tank, said.volume(), said.temperature(), said.brix());
    return readings.gauged(role, tidy, what, most, field + ".");
  }

  /**
   * One making of concentrate.
   *
   * @throws UnknownEntry if there is none of that id
   */
  @Transactional
  public Concentrate at(UUID id) {
    return log.find(id, EntryKind.CONCENTRATE)
        .map(entry -> made(entry, new TankLog(log)))
        .orElseThrow(() -> new UnknownEntry("concentrate", id, "/api/concentrates"));
  }

  /** The newest first, of a season or of all (null), after an id (or null), at most so many. */
  @Transactional
  public List<Concentrate> list(Integer season, UUID after, int limit) {
    return made(log.list(EntryKind.CONCENTRATE, season, after, limit));
  }

  /**
   * All that count of a season. What a permeate holds is reckoned with today's instruments, and is
   * no part of what was known at a time.
   *
   * @param asOf what was entered and taken back by then counts; null for all
   */
  @Transactional
  public List<Concentrate> counting(int season, Instant asOf) {
    return made(log.counting(EntryKind.CONCENTRATE, season, asOf));
  }

  /**
   * Takes one back.
   *
   * @throws EntryReversed if it was
   */
  @Transactional
  public Concentrate reverse(UUID id, String reason) {
    rows.lock(id);
    Concentrate made = at(id);
    if (made.reversed() != null) {
      throw new EntryReversed(made.reversed());
    }
    rows.reverse(id, LogRules.reason(reason));
    return at(id);
  }

  private List<Concentrate> made(List<Entry> entries) {
    TankLog tanks = new TankLog(log);
    return entries.stream().map(entry -> made(entry, tanks)).toList();
  }

  private Concentrate made(Entry entry, TankLog tanks) {
    Amount taken = entry.amount(Role.TAKEN);
    List<ShortTank> low =
        entry.reversed() == null
            ? tanks.shortOnes(entry.season(), entry.on(), List.of(taken.tank()))
            : List.of();
    MakeConcentrate said = log.said(entry, MakeConcentrate.class);
    return new Concentrate(
        entry.id(),
        entry.season(),
        entry.on(),
        said,
        taken,
        entry.amount(Role.MADE),
        said.permeateBrix() == null ? null : readings.ofPermeate(said.permeateBrix()),
        low.isEmpty() ? null : low.get(0),
        entry.reversed());
  }
}
