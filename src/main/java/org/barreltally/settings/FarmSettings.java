package org.barreltally.settings;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.measure.Instruments;
import org.barreltally.measure.Jurisdiction;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The settings a fresh installation has: US federal limits, usual instruments, capping at 180 °F.
 */
@ApplicationScoped
public class FarmSettings {

  private final String jurisdiction;

  public FarmSettings(
      @ConfigProperty(name = "barreltally.jurisdiction", defaultValue = "us-federal")
          String jurisdiction) {
    this.jurisdiction = jurisdiction;
  }

  public Jurisdiction jurisdiction() {
    return Jurisdiction.of(jurisdiction);
  }

  public Instruments instruments() {
    return Instruments.usual();
  }

  /**
   * The least temperature of the syrup when a jar is capped. Packing guides ask for at least 180 °F
   * (Ontario packing guide D.6); local rules decide.
   */
  public Quantity cappingTemperature() {
    return Quantity.of(180, Unit.DEGF);
  }
}
