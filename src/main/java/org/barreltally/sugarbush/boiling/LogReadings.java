package org.barreltally.sugarbush.boiling;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Hydrometer;
import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.Instruments;
import org.barreltally.measure.LooksLikeBaume;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Refractometer;
import org.barreltally.measure.Sucrose;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.TooManyDigits;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;
import org.barreltally.settings.FarmSettings;

/**
 * Turns what gauges and glasses say into volume at 68 °F, mass and sugar, each with the standard
 * uncertainty that the settings give. Readings are taken as not correlated.
 */
@ApplicationScoped
class LogReadings {

  /** Sap of a sugar maple has 1 to 4 °Bx, of single trees up to 10 or so (common practice). */
  static final double SAP_MAX = 12;

  /** Strong membranes come to 35 °Bx and more (common practice). */
  static final double CONCENTRATE_MAX = 45;

  private static final double SAP_MIN = 0.1;
  private static final double PERMEATE_MAX = 5;
  private static final double SYRUP_MIN = 50;
  private static final double SYRUP_MAX = 70;
  private static final double USUAL_REFERENCE_CELSIUS = 20;

  /** A thousand cubic metres; more is a slip of the pen. */
  private static final double ML_MAX = 1e9;

  private static final double G_PER_ML = 1e-3;

  private final FarmSettings settings;

  LogReadings(FarmSettings settings) {
    this.settings = settings;
  }

  /**
   * Sap or concentrate on a tank's gauge.
   *
   * @param what begins the sentence of a refusal
   * @param path of the fields, with its dot; empty at the top
   */
  Amount gauged(Role role, Gauged said, String what, double brixMax, String path) {
    Uncertain mL = settings.now().sugarhouse().gauged(volume(said.volume(), path + "volume"));
    Uncertain celsius = celsius(said.temperature(), path + "temperature");
    Uncertain brix = strength(said.brix(), what, SAP_MIN, brixMax, path + "brix");
    return amount(role, said.tank(), mL, brix, celsius);
  }

  /** A plain strength of what is no syrup. */
  private Uncertain strength(
      BigDecimal said, String what, double least, double most, String field) {
    if (said == null) {
      throw new InvalidField(field, "Give the Brix, for example 2.1.");
    }
    if (said.precision() > TooManyDigits.MOST || Math.abs(said.scale()) > TooManyDigits.MOST) {
      throw new InvalidField(field, "Give at most " + TooManyDigits.MOST + " digits.");
    }
    double brix = said.doubleValue();
    if (!(brix >= least && brix <= most)) {
      throw new NotSap(what, brix, least, most, field);
    }
    return settings.now().sugarhouse().sapBrix(brix);
  }

  /** The little sugar that passes a membrane: from 0. */
  Uncertain ofPermeate(BigDecimal said) {
    return strength(said, "Permeate", 0, PERMEATE_MAX, "permeateBrix");
  }

  /**
   * A draw-off by weight or volume.
   *
   * @throws TooHotForVolume if it goes by volume and is above 212 °F
   */
  Amount drawn(DrawOff said) {
    Uncertain brix = trueBrix(said.density());
    if (said.weight() != null) {
      if (said.volume() != null) {
        volume(said.volume(), "volume");
        required(said.temperature(), "temperature");
      }
      return weighed(said.weight(), brix);
    }
    Quantity volume = volume(said.volume(), "volume");
    Quantity temperature = required(said.temperature(), "temperature");
    if (temperature.doubleIn(Unit.DEGC) > Sucrose.CELSIUS_MAX) {
      throw new TooHotForVolume(temperature, "temperature");
    }
    Uncertain mL = settings.now().sugarhouse().gauged(volume);
    return amount(Role.DRAWN, null, mL, brix, celsius(temperature, "temperature"));
  }

  private Amount weighed(Quantity weight, Uncertain brix) {
    if (weight.unit().dimension() != Dimension.MASS || weight.signum() <= 0) {
      throw new InvalidField("weight", "Give the net weight in lb, oz, kg or g, more than 0.");
    }
    Uncertain inAir = settings.instruments().read(InstrumentKind.PLATFORM_SCALE, weight);
    Syrup syrup = new Syrup(brix.value());
    // gross and tare were both read
    Uncertain grams = new Uncertain(syrup.massFromWeight(inAir.value()), inAir.u() * Math.sqrt(2));
    if (grams.value() > ML_MAX) {
      throw new InvalidField("weight", "That is more than anybody draws off. Check the unit.");
    }
    Uncertain perML = Uncertain.through(b -> 1 / (Sucrose.density(b, 20) * G_PER_ML), brix);
    return new Amount(
        Role.DRAWN, null, grams.times(perML), grams, brix, grams.times(brix.times(1.0 / 100)));
  }

  /** What a volume at a temperature comes to; all four figures go back to the three readings. */
  private static Amount amount(
      Role role, String tank, Uncertain mL, Uncertain brix, Uncertain celsius) {
    Uncertain density = Uncertain.through(Sucrose::density, brix, celsius).times(G_PER_ML);
    Uncertain shrunk =
        Uncertain.through((b, t) -> Sucrose.density(b, t) / Sucrose.density(b, 20), brix, celsius);
    Uncertain sugar =
        Uncertain.through((b, t) -> Sucrose.density(b, t) * G_PER_ML * b / 100, brix, celsius);
    return new Amount(role, tank, mL.times(shrunk), mL.times(density), brix, mL.times(sugar));
  }

  private Uncertain trueBrix(DrawOff.Reading density) {
    if (density == null) {
      throw new InvalidField(
          "density",
          "Give the density with its instrument and temperature: hot syrup reads light.");
    }
    try {
      return checkedBrix(density);
    } catch (NotDrawnSyrup named) {
      throw named;
    } catch (Refusal refusal) {
      throw refusal.under("density");
    }
  }

  private Uncertain checkedBrix(DrawOff.Reading density) {
    Quantity reading = density.reading();
    if (reading == null || reading.unit().dimension() != Dimension.SUGAR) {
      throw new InvalidField("reading", "Give the reading in Brix or Baume.");
    }
    if (density.instrument() == null) {
      throw new InvalidField(
          "instrument", "Say what it was read with: hydrometer or refractometer.");
    }
    if (density.temperature() == null) {
      throw new InvalidField("temperature", "Give the temperature at which it was read.");
    }
    LooksLikeBaume.check(reading, "reading");
    boolean hydrometer = density.instrument() == DrawOff.Instrument.HYDROMETER;
    if (!hydrometer && reading.unit() == Unit.BAUME) {
      throw new InvalidField("reading.unit", "A refractometer reads Brix. Give the unit as Brix.");
    }
    double reference =
        density.reference() == null
            ? USUAL_REFERENCE_CELSIUS
            : celsius(density.reference(), "reference").value();
    Uncertain celsius = celsius(density.temperature(), "temperature");
    Instruments instruments = settings.instruments();
    Uncertain said =
        plausible(
            instruments.read(
                hydrometer ? InstrumentKind.HYDROMETER : InstrumentKind.REFRACTOMETER, reading),
            reading);
    return plausible(
        hydrometer
            ? Hydrometer.trueBrix(said, celsius, reference)
            : Refractometer.trueBrix(said, celsius, reference),
        reading);
  }

  private static Uncertain plausible(Uncertain brix, Quantity reading) {
    if (brix.value() < SYRUP_MIN || brix.value() > SYRUP_MAX) {
      throw new NotDrawnSyrup(reading, brix.value());
    }
    return brix;
  }

  private static Quantity volume(Quantity said, String field) {
    if (said == null) {
      throw new InvalidField(
          field, "Give the volume, for example {\"value\": 400, \"unit\": \"gal\"}.");
    }
    if (said.unit().dimension() != Dimension.VOLUME) {
      throw new InvalidField(field + ".unit", "Give a volume: gal, qt, pt, floz, L or mL.");
    }
    if (said.signum() <= 0 || said.doubleIn(Unit.ML) > ML_MAX) {
      throw new InvalidField(field, "Give more than 0 and at most 1,000,000 L. Check the unit.");
    }
    return said;
  }

  private static Quantity required(Quantity temperature, String field) {
    if (temperature == null) {
      throw new VolumeWithoutTemperature(field);
    }
    if (temperature.unit().dimension() != Dimension.TEMPERATURE) {
      throw new InvalidField(field + ".unit", "Give the temperature in degF or degC.");
    }
    return temperature;
  }

  private Uncertain celsius(Quantity said, String field) {
    Uncertain celsius = settings.instruments().read(InstrumentKind.PROBE, required(said, field));
    if (celsius.value() < 0 || celsius.value() > Sucrose.CELSIUS_MAX) {
      throw new InvalidField(field, "Give a temperature from 32 to 212 °F (0 to 100 °C).");
    }
    return celsius;
  }
}
