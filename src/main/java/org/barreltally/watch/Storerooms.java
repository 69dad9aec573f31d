package org.barreltally.watch;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.Places;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.watch.internal.TemperatureRows;

/** Keeps the temperatures of storerooms. */
@ApplicationScoped
public class Storerooms {

  private static final double COLDEST_CELSIUS = -60;
  private static final double HOTTEST_CELSIUS = 80;
  private static final int DECIMALS_MAX = 4;

  private final Places places;
  private final TemperatureRows rows;
  private final Days days;
  private final Ids ids;

  Storerooms(Places places, TemperatureRows rows, Days days, Ids ids) {
    this.places = places;
    this.rows = rows;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Notes a temperature, -76 to 176 °F (-60 to 80 °C).
   *
   * @throws UnknownStoreroom if own stock never stands there
   */
  @Transactional
  public StoreroomTemperature note(String place, Instant at, Quantity temperature) {
    known(place);
    Instant read = days.happened(at, "at");
    check(temperature);
    StoreroomTemperature noted = new StoreroomTemperature(ids.next(), place, read, temperature);
    rows.keep(noted);
    return noted;
  }

  /** A storeroom's temperatures, the newest entered first, before one of them (or null). */
  @Transactional
  public List<StoreroomTemperature> list(String place, UUID before, int limit) {
    known(place);
    return rows.list(place, before, limit);
  }

  private void known(String place) {
    places.find(place).filter(Place::isOwn).orElseThrow(() -> new UnknownStoreroom(place));
  }

  private static void check(Quantity temperature) {
    if (temperature == null) {
      throw new InvalidField("temperature", "Give the temperature, for example 72 degF.");
    }
    if (temperature.unit().dimension() != Dimension.TEMPERATURE) {
      throw new InvalidField("temperature.unit", "Give the temperature in degF or degC.");
    }
    double celsius = temperature.doubleIn(Unit.DEGC);
    if (celsius < COLDEST_CELSIUS || celsius > HOTTEST_CELSIUS) {
      throw new InvalidField(
          "temperature", "A storeroom is between -76 and 176 °F (-60 and 80 °C).");
    }
    if (temperature.value().stripTrailingZeros().scale() > DECIMALS_MAX) {
      throw new InvalidField("temperature.value", "Give at most " + DECIMALS_MAX + " decimals.");
    }
  }
}
