package org.barreltally.settings;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Pressure;
import org.barreltally.measure.PressureUnit;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;

/**
 * How well sap, air and draw-off are known in the sugarhouse; in a change, null where nothing does.
 *
 * @param tankGaugePercent how far a tank's gauge may be off, ± percent of what it shows
 * @param sapBrix how far a reading of sap or concentrate may be off, ± °Bx
 * @param barometer how far it may be off, ±
 * @param drawOffElevation how far above water syrup of 66.0 °Bx boils, a difference of temperatures
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record SugarhouseSettings(
    BigDecimal tankGaugePercent, Quantity sapBrix, Pressure barometer, Quantity drawOffElevation) {

  /** The strength for which the elevation is set. */
  public static final double ELEVATION_BRIX = 66.0;

  /**
   * Common practice: gauges ± 2 to 5 percent (the wider end), sap hydrometers ± 0.2 °Bx, syrup of
   * 66.0 °Bx at 7.1 °F above water; the barometer's ± 2 hPa from memory.
   */
  static final SugarhouseSettings USUAL =
      new SugarhouseSettings(
          BigDecimal.valueOf(5),
          Quantity.of("0.2", Unit.BRIX),
          new Pressure(BigDecimal.valueOf(2), PressureUnit.HPA),
          Quantity.of("7.1", Unit.DEGF));

  private static final double ROUNDED_TO_FAHRENHEIT = 0.1;
  private static final double C_PER_F = 5.0 / 9;

  /** These, and what changes. */
  SugarhouseSettings with(SugarhouseSettings change) {
    return new SugarhouseSettings(
        change.tankGaugePercent == null ? tankGaugePercent : change.tankGaugePercent,
        change.sapBrix == null ? sapBrix : change.sapBrix,
        change.barometer == null ? barometer : change.barometer,
        change.drawOffElevation == null ? drawOffElevation : change.drawOffElevation);
  }

  @JsonIgnore
  boolean saysNothing() {
    return tankGaugePercent == null
        && sapBrix == null
        && barometer == null
        && drawOffElevation == null;
  }

  /** A volume read on a tank's gauge with its standard uncertainty, mL at its own temperature. */
  public Uncertain gauged(Quantity volume) {
    double mL = volume.doubleIn(Unit.ML);
    return Uncertain.within(mL, Math.abs(mL) * tankGaugePercent.doubleValue() / 100);
  }

  /** The strength of sap or concentrate with its standard uncertainty, °Bx. */
  public Uncertain sapBrix(double brix) {
    return Uncertain.within(brix, sapBrix.value().doubleValue());
  }

  /** A pressure with its standard uncertainty, Pa. */
  public Uncertain read(Pressure pressure) {
    return Uncertain.within(pressure.pascal(), barometer.pascal());
  }

  /** The elevation at 66.0 °Bx, a step in °C; known to the tenth of a °F to which it is given. */
  @JsonIgnore
  public Uncertain elevationCelsius() {
    double step = drawOffElevation.value().doubleValue();
    return Uncertain.within(
        drawOffElevation.unit() == Unit.DEGF ? step * C_PER_F : step,
        ROUNDED_TO_FAHRENHEIT * C_PER_F);
  }

  /** Whether the elevation is in a unit of temperature. */
  @JsonIgnore
  boolean isElevationTemperature() {
    return drawOffElevation.unit().dimension() == Dimension.TEMPERATURE;
  }
}
