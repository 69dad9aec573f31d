package org.barreltally.settings;

import java.time.Instant;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/** The settings through time: whole at every instant at which one of them changes. */
final class Timeline {

  private static final SettingsAt FRESH = SettingsAt.of(MakerSettings.FRESH);

  private final NavigableMap<Instant, SettingsAt> wholes = new TreeMap<>();

  /**
   * @param changes each with its {@code validFrom}, ordered by it; of two from the same instant the
   *     later in the list holds
   */
  Timeline(List<SettingsChange> changes) {
    MakerSettings whole = MakerSettings.FRESH;
    for (SettingsChange change : changes) {
      whole = whole.with(change);
      wholes.put(change.validFrom(), SettingsAt.of(whole));
    }
  }

  /** What holds at an instant: the changes valid from it are in it. */
  SettingsAt at(Instant instant) {
    var entry = wholes.floorEntry(instant);
    return entry == null ? FRESH : entry.getValue();
  }
}
