package org.barreltally.sugarbush.boiling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.measure.Uncertain;
import org.barreltally.sugarbush.Bushes;
import org.barreltally.sugarbush.boiling.internal.Entry;
import org.barreltally.sugarbush.boiling.internal.LogReading;
import org.barreltally.sugarbush.boiling.internal.LogRows;

/** Sap gathered, by bush and tank. */
@ApplicationScoped
public class SapLog {

  private final LogReading log;
  private final LogRows rows;
  private final LogReadings readings;
  private final LogRules rules;
  private final Bushes bushes;

  SapLog(LogReading log, LogRows rows, LogReadings readings, LogRules rules, Bushes bushes) {
    this.log = log;
    this.rows = rows;
    this.readings = readings;
    this.rules = rules;
    this.bushes = bushes;
  }

  /**
   * Records sap that was gathered.
   *
   * @throws org.barreltally.sugarbush.UnknownBush if the bush is neither leased nor one's own
   * @throws NotSap if it is stronger than sap is
   * @throws org.barreltally.refusal.InvalidField naming what is missing or out of its range
   */
  @Transactional
  public SapGathered gather(GatherSap said) {
    LocalDate on = rules.day(said.on());
    int season = LogRules.season(on, said.season());
    String bush = bushes.known(said.bush(), season, "bush");
    String tank =
        LogRules.name(said.tank(), "tank", "Name the tank or tote, at most 40 characters.");
    LogRules.text(said.note(), "note");
    Gauged gauged = new Gauged(tank, said.volume(), said.temperature(), said.brix());
    Amount amount = readings.gauged(Role.GATHERED, gauged, "Sap", LogReadings.SAP_MAX, "");
    UUID id =
        rows.add(new LogRows.Head(EntryKind.SAP, null, season, on, bush), said, List.of(amount));
    return at(id);
  }

  /**
   * One gathering.
   *
   * @throws UnknownEntry if there is none of that id
   */
  @Transactional
  public SapGathered at(UUID id) {
    return log.find(id, EntryKind.SAP)
        .map(this::gathered)
        .orElseThrow(() -> new UnknownEntry("sap", id, "/api/sap"));
  }

  /** The newest first, of a season or of all (null), after an id (or null), at most so many. */
  @Transactional
  public List<SapGathered> list(Integer season, UUID after, int limit) {
    return log.list(EntryKind.SAP, season, after, limit).stream().map(this::gathered).toList();
  }

  /**
   * Takes a gathering back.
   *
   * @throws EntryReversed if it was
   */
  @Transactional
  public SapGathered reverse(UUID id, String reason) {
    rows.lock(id);
    SapGathered sap = at(id);
    if (sap.reversed() != null) {
      throw new EntryReversed(sap.reversed());
    }
    rows.reverse(id, LogRules.reason(reason));
    return at(id);
  }

  /** What stands in each tank by the log of a season, mL at 20 °C; below zero too. */
  @Transactional
  public Map<String, Uncertain> tanks(int season, LocalDate until) {
    return log.tanks(season, until);
  }

  private SapGathered gathered(Entry entry) {
    return new SapGathered(
        entry.id(),
        entry.season(),
        entry.on(),
        entry.bush(),
        log.said(entry, GatherSap.class),
        entry.amount(Role.GATHERED),
        entry.reversed());
  }
}
