package org.barreltally.sugarbush.boiling.rest;

import java.math.BigDecimal;
import java.util.List;
import org.barreltally.measure.Pressure;
import org.barreltally.measure.Quantity;
import org.barreltally.sugarbush.boiling.DrawOffTemperature;

/**
 * The day's draw-off temperature, °F; standard uncertainties beside.
 *
 * @param from {@code pressure}, or {@code water} where its boiling point was measured
 * @param elevation above water, a difference
 */
public record DrawOffTemperatureView(
    String from,
    Pressure pressure,
    Quantity waterBoils,
    Quantity waterUncertainty,
    BigDecimal brix,
    Quantity elevation,
    Quantity elevationUncertainty,
    Quantity drawOff,
    Quantity standardUncertainty,
    List<String> cautions) {

  static DrawOffTemperatureView of(DrawOffTemperature day) {
    return new DrawOffTemperatureView(
        day.byWater() ? "water" : "pressure",
        day.pressure(),
        Amounts.fahrenheit(day.waterCelsius().value()),
        Amounts.fahrenheitStep(day.waterCelsius().u()),
        Amounts.number(day.brix(), 1),
        Amounts.fahrenheitStep(day.elevationCelsius().value()),
        Amounts.fahrenheitStep(day.elevationCelsius().u()),
        Amounts.fahrenheit(day.drawOffCelsius().value()),
        Amounts.fahrenheitStep(day.drawOffCelsius().u()),
        day.cautions());
  }
}
