package org.barreltally.sugarbush.boiling;

import java.util.List;
import org.barreltally.measure.Pressure;
import org.barreltally.measure.Uncertain;

/**
 * At what temperature syrup is drawn off today.
 *
 * @param pressure of the air; read, or worked out from the water
 * @param byWater whether the boiling point of water was measured and counts
 * @param waterCelsius at which water boils
 * @param brix of the syrup wanted
 * @param elevationCelsius above water, a step
 * @param drawOffCelsius the sum
 * @param cautions in sentences
 */
public record DrawOffTemperature(
    Pressure pressure,
    boolean byWater,
    Uncertain waterCelsius,
    double brix,
    Uncertain elevationCelsius,
    Uncertain drawOffCelsius,
    List<String> cautions) {

  public DrawOffTemperature {
    cautions = List.copyOf(cautions);
  }
}
