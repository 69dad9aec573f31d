package org.barreltally.settings;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.FarmZone;
import org.barreltally.measure.Instruments;
import org.barreltally.measure.Jurisdiction;
import org.barreltally.measure.Quantity;
import org.barreltally.settings.internal.SettingRows;

/**
 * What the owner sets for the farm. Every change is dated and nothing is overwritten, and a change
 * cannot begin in the past: what held at an instant that has passed holds for it for ever, so
 * papers of that day come out the same when they are printed again.
 */
@ApplicationScoped
public class FarmSettings implements FarmZone {

  private final KnownSettings known;
  private final SettingRows rows;
  private final LabelSheetRule sheets;
  private final Clock clock;

  FarmSettings(KnownSettings known, SettingRows rows, LabelSheetRule sheets, Clock clock) {
    this.known = known;
    this.rows = rows;
    this.sheets = sheets;
    this.clock = clock;
  }

  /** The settings that hold now. */
  public SettingsAt now() {
    return at(clock.instant());
  }

  /** The settings that hold at an instant, past or to come as far as it is settled. */
  public SettingsAt at(Instant instant) {
    return known.timeline().at(instant);
  }

  /** Whose limits apply now. */
  public Jurisdiction jurisdiction() {
    return now().jurisdiction();
  }

  /** How far the instruments may be off now. */
  public Instruments instruments() {
    return now().instruments();
  }

  /** The least temperature of the syrup when a jar is capped, as it holds now. */
  public Quantity cappingTemperature() {
    return now().cappingTemperature();
  }

  @Override
  public ZoneId zoneAt(Instant instant) {
    return at(instant).zone();
  }

  /**
   * Changes settings from an instant on, in a transaction of its own.
   *
   * @return all settings as they hold from then
   * @throws org.barreltally.refusal.InvalidField naming every field that needs mending
   * @throws org.barreltally.measure.UnknownJurisdiction if its limits are not in the tables
   * @throws org.barreltally.refusal.Refusal naming labelSheet if nobody added that sheet
   * @throws ChangeBackdated if it is to begin in the past
   */
  public MakerSettings change(SettingsChange change) {
    SettingsRules.check(change);
    if (change.labelSheet() != null && !change.labelSheet().isEmpty()) {
      sheets.requireKnown(change.labelSheet(), "labelSheet");
    }
    Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
    Instant from =
        change.validFrom() == null ? now : change.validFrom().truncatedTo(ChronoUnit.MICROS);
    if (from.isBefore(now)) {
      throw new ChangeBackdated(from, now);
    }
    QuarkusTransaction.requiringNew().run(() -> rows.add(change, from, now));
    known.forget();
    return at(from).said();
  }

  /** Changes in the order of their recording, newest first, before an id, at most so many. */
  public List<SettingRecord> history(UUID before, int limit) {
    return rows.newest(before, limit);
  }
}
