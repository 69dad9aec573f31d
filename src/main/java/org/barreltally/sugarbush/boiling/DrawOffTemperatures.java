package org.barreltally.sugarbush.boiling;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.OutsidePressureRange;
import org.barreltally.measure.Pressure;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Steam;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;
import org.barreltally.settings.SettingsAt;
import org.barreltally.settings.SugarhouseSettings;

/**
 * The day's draw-off temperature from the pressure of the air: where water boils (IAPWS-IF97, see
 * {@link Steam}), and above it the elevation that the owner set for 66.0 °Bx. Water measured
 * boiling that day with the same thermometer counts before the barometer, because the thermometer's
 * own error is then in both.
 */
@ApplicationScoped
public class DrawOffTemperatures {

  private static final double BRIX_MIN = 64;
  private static final double BRIX_MAX = 69;

  /**
   * Of the elevation, in °C for each °Bx: 0.4 °F. The trade has 7.1 °F for 66.0 and 7.3 to 7.5 for
   * 66.9 °Bx (common practice), which leaves half of it in doubt.
   */
  private static final double SLOPE = 0.4 * 5 / 9;

  private static final double SLOPE_HALF_WIDTH = SLOPE / 2;

  /** Below, nobody boils water in the open (some 4,000 m); above, no air is so heavy. */
  private static final double WATER_MIN = 85;

  private static final double WATER_MAX = 103;

  private static final double F_PER_C = 1.8;

  private static final String STATION =
      "Give the pressure at the sugarhouse. A weather report's is corrected to sea level: at 1,000 ft it is some"
          + " 36 hPa too high, and the draw-off would come out 1.8 °F too hot.";
  private static final String SAME =
      "Read the draw-off on the thermometer that was in the water: what it is off by is then in both.";
  private static final String CHECK =
      "Check the thermometer in boiling water each day, and the syrup with a hydrometer: density decides, not"
          + " temperature.";
  private static final String BURNS =
      "Syrup at draw-off is near 219 °F and clings: gloves, apron, closed shoes, no children at the pan.";

  private final FarmSettings settings;

  DrawOffTemperatures(FarmSettings settings) {
    this.settings = settings;
  }

  /**
   * The draw-off temperature.
   *
   * @param pressure or {@code water}, at least one; water counts if both are given
   * @param brix null for the least of the jurisdiction
   * @throws OutsidePressureRange if the air cannot have that pressure
   * @throws InvalidField naming what is missing or out of its range
   */
  public DrawOffTemperature of(Pressure pressure, Quantity water, BigDecimal brix) {
    return of(pressure, water, brix, settings.now());
  }

  /** The same for a boil that was begun, by the settings of that time. */
  public DrawOffTemperature of(StartBoil said) {
    return of(said.pressure(), said.waterBoils(), said.targetBrix(), settings.at(said.startedAt()));
  }

  private DrawOffTemperature of(
      Pressure pressure, Quantity water, BigDecimal brix, SettingsAt then) {
    if (pressure == null && water == null) {
      throw new InvalidField(
          "pressure", "Give the pressure at the sugarhouse, or at what temperature water boils.");
    }
    check(pressure, "pressure", water, "water");
    double target = brix == null ? then.jurisdiction().brixMin() : target(brix, "brix");
    SugarhouseSettings known = then.sugarhouse();
    Uncertain byAir =
        pressure == null ? null : Uncertain.through(Steam::boilingCelsius, known.read(pressure));
    Uncertain measured =
        water == null ? null : then.instruments().read(InstrumentKind.PROBE, water);
    Uncertain boils = measured == null ? byAir : measured;
    Uncertain elevation = elevation(known, target);
    List<String> cautions = new ArrayList<>();
    cautions.add(measured == null ? STATION : SAME);
    if (measured != null && byAir != null && byAir.differsFrom(measured)) {
      cautions.add(apart(byAir.value() - measured.value()));
    }
    cautions.add(CHECK);
    cautions.add(BURNS);
    return new DrawOffTemperature(
        pressure == null ? Pressure.hPa(Steam.pascalAt(measured.value())) : pressure,
        measured != null,
        boils,
        target,
        elevation,
        boils.plus(elevation),
        cautions);
  }

  private static Uncertain elevation(SugarhouseSettings known, double brix) {
    double beyond = brix - SugarhouseSettings.ELEVATION_BRIX;
    return known
        .elevationCelsius()
        .plus(Uncertain.within(SLOPE * beyond, SLOPE_HALF_WIDTH * Math.abs(beyond)));
  }

  private static String apart(double celsius) {
    return String.format(
        Locale.ROOT,
        "By the barometer water would boil %.1f °F %s than it did, more than both may be off: the reading may be"
            + " corrected to sea level, or the thermometer is off. The water counts.",
        Math.abs(celsius) * F_PER_C,
        celsius > 0 ? "hotter" : "cooler");
  }

  /** A strength to draw off at. */
  double target(BigDecimal said, String field) {
    double brix = said.doubleValue();
    if (!(brix >= BRIX_MIN && brix <= BRIX_MAX)) {
      throw new InvalidField(field, "Give the Brix wanted, from 64 to 69, for example 66.9.");
    }
    return brix;
  }

  /** Refuses what neither air nor water can have; each may be null. */
  void check(Pressure pressure, String field, Quantity water, String waterField) {
    if (pressure != null) {
      OutsidePressureRange.check(pressure, field);
    }
    if (water == null) {
      return;
    }
    if (water.unit().dimension() != Dimension.TEMPERATURE) {
      throw new InvalidField(waterField + ".unit", "Give the temperature in degF or degC.");
    }
    double celsius = water.doubleIn(Unit.DEGC);
    if (celsius < WATER_MIN || celsius > WATER_MAX) {
      throw new InvalidField(
          waterField, "Water in the open boils between 185 and 217 °F. Check the reading.");
    }
  }
}
