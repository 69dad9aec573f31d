package org.barreltally.settings;

import java.time.ZoneId;
import org.barreltally.measure.Instruments;
import org.barreltally.measure.Jurisdiction;
import org.barreltally.measure.Quantity;

/**
 * The settings that hold at one instant, ready for use.
 *
 * @param said as the owner says them
 * @param zone of the farm
 * @param jurisdiction whose limits apply
 * @param instruments how far each may be off
 */
public record SettingsAt(
    MakerSettings said, ZoneId zone, Jurisdiction jurisdiction, Instruments instruments) {

  static SettingsAt of(MakerSettings said) {
    return new SettingsAt(
        said,
        ZoneId.of(said.timeZone()),
        Jurisdiction.of(said.jurisdiction()),
        said.instruments().asInstruments());
  }

  /** The least temperature of the syrup when a jar is capped. */
  public Quantity cappingTemperature() {
    return said.cappingTemperature();
  }

  /** By which rules net contents are checked. */
  public NetContentsRegime netContentsRegime() {
    return said.netContentsRegime();
  }

  /** How well sap, air and draw-off are known. */
  public SugarhouseSettings sugarhouse() {
    return said.sugarhouse();
  }
}
