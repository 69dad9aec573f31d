package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.function.Supplier;
import org.barreltally.measure.Air;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Hydrometer;
import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.Instruments;
import org.barreltally.measure.LooksLikeBaume;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Refractometer;
import org.barreltally.measure.Sucrose;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;
import org.barreltally.settings.FarmSettings;

/**
 * Turns what instruments say into true Brix at 20 °C and grams of syrup, each with the standard
 * uncertainty that the instrument's setting gives it.
 */
@ApplicationScoped
public class Readings {

  private static final double USUAL_REFERENCE_CELSIUS = 20;

  /** Below, it is concentrate on its way to syrup. */
  static final double LEAST_BRIX = 50;

  /** Above, the density model ends. */
  static final double MOST_BRIX = 70;

  // A tank truck holds about this much; more is a slip of the pen.
  private static final double MOST_GRAMS = 40_000_000;

  private final FarmSettings settings;

  public Readings(FarmSettings settings) {
    this.settings = settings;
  }

  /**
   * True Brix at 20 °C, that is, the percentage of sugar by mass.
   *
   * @throws LooksLikeBaume for a reading of 30 to 40 Brix
   * @throws InvalidField naming the part that is missing or no syrup
   */
  public Uncertain trueBrix(Density density) {
    Quantity reading = required(density.reading(), "reading", Dimension.SUGAR);
    Quantity temperature = required(density.temperature(), "temperature", Dimension.TEMPERATURE);
    if (density.instrument() == null) {
      throw new InvalidField(
          "instrument", "Say what it was read with: hydrometer or refractometer.");
    }
    LooksLikeBaume.check(reading, "reading");
    boolean hydrometer = density.instrument() == Density.Instrument.HYDROMETER;
    if (!hydrometer && reading.unit() == Unit.BAUME) {
      throw new InvalidField("reading.unit", "A refractometer reads Brix. Give the unit as Brix.");
    }
    double reference =
        density.reference() == null
            ? USUAL_REFERENCE_CELSIUS
            : required(density.reference(), "reference", Dimension.TEMPERATURE).doubleIn(Unit.DEGC);
    Instruments instruments = settings.instruments();
    Uncertain celsius = at(temperature, "temperature", instruments);
    Uncertain brix;
    if (hydrometer) {
      Uncertain said = instruments.read(InstrumentKind.HYDROMETER, reading);
      brix = Hydrometer.trueBrix(plausible(said, reading), celsius, reference);
    } else {
      Uncertain said = instruments.read(InstrumentKind.REFRACTOMETER, reading);
      brix = Refractometer.trueBrix(plausible(said, reading), celsius, reference);
    }
    return plausible(brix, reading);
  }

  /**
   * Grams of syrup on the scale, weighed in air.
   *
   * @throws GrossUnderTare if the full vessel weighs no more than the empty one
   */
  public Uncertain weighed(Weighing weighing, Uncertain brix) {
    Quantity gross = required(weighing.gross(), "gross", Dimension.MASS);
    Quantity tare = required(weighing.tare(), "tare", Dimension.MASS);
    if (tare.signum() < 0) {
      throw new InvalidField("tare", "An empty vessel does not weigh less than nothing.");
    }
    if (gross.in(Unit.G).compareTo(tare.in(Unit.G)) <= 0) {
      throw new GrossUnderTare(gross, tare);
    }
    Instruments instruments = settings.instruments();
    Uncertain inAir =
        instruments
            .read(InstrumentKind.PLATFORM_SCALE, gross)
            .minus(instruments.read(InstrumentKind.PLATFORM_SCALE, tare));
    double density = Sucrose.density(brix.value(), 20);
    return sane(
        new Uncertain(Air.mass(inAir.value(), density), Air.mass(inAir.u(), density)), "gross");
  }

  /** Grams of syrup by the dipstick: hot syrup is lighter, so the temperature counts. */
  public Uncertain dipped(Dipstick dipstick, Uncertain brix) {
    Quantity volume = required(dipstick.volume(), "volume", Dimension.VOLUME);
    if (volume.signum() <= 0) {
      throw new InvalidField("volume", "A volume is more than nothing.");
    }
    if (dipstick.temperature() == null) {
      throw new VolumeWithoutTemperature("temperature");
    }
    Instruments instruments = settings.instruments();
    Uncertain celsius = at(dipstick.temperature(), "temperature", instruments);
    Uncertain litres = instruments.read(InstrumentKind.DIPSTICK, volume);
    Uncertain density = Uncertain.through(Sucrose::density, brix, celsius);
    return sane(litres.times(density).times(1e-3), "volume");
  }

  /**
   * A weight as a scale reads in air, as grams of syrup of that Brix, read off the platform scale
   * twice.
   */
  public Uncertain drawn(Quantity weight, double brix, String field) {
    required(weight, field, Dimension.MASS);
    if (weight.signum() <= 0) {
      throw new InvalidField(field, "A weight is more than nothing.");
    }
    Uncertain inAir = settings.instruments().read(InstrumentKind.PLATFORM_SCALE, weight);
    double grams = new Syrup(brix).massFromWeight(inAir.value());
    return sane(new Uncertain(grams, inAir.u() * Math.sqrt(2)), field);
  }

  private static Uncertain at(Quantity temperature, String field, Instruments instruments) {
    if (temperature.unit().dimension() != Dimension.TEMPERATURE) {
      throw new InvalidField(field, "Give the temperature in degF or degC.");
    }
    Uncertain celsius = instruments.read(InstrumentKind.PROBE, temperature);
    if (celsius.value() < 0 || celsius.value() > 100) {
      throw new InvalidField(
          field,
          "Syrup is measured between 32 and 212 °F (0 and 100 °C), not at " + temperature + ".");
    }
    return celsius;
  }

  private static Uncertain plausible(Uncertain brix, Quantity reading) {
    if (brix.value() < LEAST_BRIX || brix.value() > MOST_BRIX) {
      throw new NotSyrup(reading, brix.value());
    }
    return brix;
  }

  private static Uncertain sane(Uncertain grams, String field) {
    if (grams.value() > MOST_GRAMS) {
      throw new InvalidField(field, "That is more than a tank truck holds. Check number and unit.");
    }
    return grams;
  }

  /** A part of a reading that must be there, in a unit of the right kind. */
  static Quantity required(Quantity quantity, String field, Dimension dimension) {
    if (quantity == null) {
      throw new InvalidField(field, "Give the " + field + ".");
    }
    if (quantity.unit().dimension() != dimension) {
      throw new InvalidField(
          field + ".unit",
          "%s is a unit of %s; %s is needed here."
              .formatted(
                  quantity.unit().code(), said(quantity.unit().dimension()), said(dimension)));
    }
    return quantity;
  }

  private static String said(Dimension dimension) {
    return switch (dimension) {
      case MASS -> "weight (lb, oz, kg, g)";
      case VOLUME -> "volume (gal, qt, pt, floz, L, mL)";
      case TEMPERATURE -> "temperature (degF, degC)";
      case SUGAR -> "density (Brix, Baume)";
    };
  }

  /** Runs a reading of one part of a request, putting its fields under that part's name. */
  static <T> T under(String path, Supplier<T> reading) {
    try {
      return reading.get();
    } catch (Refusal refusal) {
      throw refusal.under(path);
    }
  }
}
