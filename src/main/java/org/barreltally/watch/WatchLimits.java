package org.barreltally.watch;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * When something is worth a look, from {@code barreltally.watch.*}.
 *
 * <ul>
 *   <li>{@code age-days}, 90: plastic can darken a grade after three months (Ontario packing guide
 *       D.6); checking colour again on stock over 90 days old is common practice.
 *   <li>{@code held-days}, 30: common practice.
 *   <li>{@code storeroom-fahrenheit}, 80: common practice; the owner sets it.
 *   <li>{@code warm-days}, 7: how far back temperatures are looked at; common practice.
 * </ul>
 */
@ApplicationScoped
public class WatchLimits {

  private final int ageDays;
  private final int heldDays;
  private final int storeroomFahrenheit;
  private final int warmDays;

  public WatchLimits(
      @ConfigProperty(name = "barreltally.watch.age-days", defaultValue = "90") int ageDays,
      @ConfigProperty(name = "barreltally.watch.held-days", defaultValue = "30") int heldDays,
      @ConfigProperty(name = "barreltally.watch.storeroom-fahrenheit", defaultValue = "80")
          int storeroomFahrenheit,
      @ConfigProperty(name = "barreltally.watch.warm-days", defaultValue = "7") int warmDays) {
    this.ageDays = ageDays;
    this.heldDays = heldDays;
    this.storeroomFahrenheit = storeroomFahrenheit;
    this.warmDays = warmDays;
  }

  /** Days after packing, filling or the newest colour reading. */
  public int ageDays() {
    return ageDays;
  }

  /** Days for which a lot is held. */
  public int heldDays() {
    return heldDays;
  }

  /** The temperature above which a storeroom is warm. */
  public Quantity storeroomMax() {
    return Quantity.of(storeroomFahrenheit, Unit.DEGF);
  }

  /** Days back for which temperatures are looked at. */
  public int warmDays() {
    return warmDays;
  }
}
