package org.barreltally.measure;

import java.util.List;
import org.apache.commons.csv.CSVRecord;

/**
 * A refractometer with a Brix scale that reads true at its reference temperature. Readings made at
 * 10 to 30 °C are corrected with the International Temperature Correction Table of ICUMSA (1936),
 * straight lines between its entries; its sources, and what of it is from memory, stand in {@code
 * db/reference/refractometer_temperature_correction.csv}. Newer measurements differ by up to 0.05
 * °Bx.
 *
 * <p>An instrument with automatic compensation is one read at its reference: no correction.
 */
public final class Refractometer {
  private static final double[] READINGS = readings();
  private static final double[][] CORRECTIONS = corrections();
  private static final double CELSIUS_MIN = 10;
  private static final double CELSIUS_MAX = CELSIUS_MIN + CORRECTIONS.length - 1;
  private static final double SLACK = 1e-9;
  private static final int STEPS = 20;

  private Refractometer() {}

  /**
   * True °Brix of a reading, both uncertainties carried through.
   *
   * @param readingBrix what the scale shows
   * @param celsius temperature of prism and sample; the reference for an automatic instrument
   * @param referenceCelsius temperature at which the scale is true
   * @throws OutsideInstrumentRange when a correction is needed and either temperature is not 10..30
   * @throws OutsideDensityRange when the result is not 0..70 °Bx
   */
  public static Uncertain trueBrix(
      Uncertain readingBrix, Uncertain celsius, double referenceCelsius) {
    return Uncertain.through(
        (reading, t) -> trueBrix(reading, t, referenceCelsius), readingBrix, celsius);
  }

  /** As {@link #trueBrix(Uncertain, Uncertain, double)}, for plain numbers. */
  public static double trueBrix(double readingBrix, double celsius, double referenceCelsius) {
    double trueBrix = readingBrix;
    if (Math.abs(celsius - referenceCelsius) > SLACK || Double.isNaN(celsius)) {
      double on20 = onScaleOf20(readingBrix, referenceCelsius);
      trueBrix = on20 + correction(on20, celsius);
    }
    Sucrose.checkBrix(trueBrix);
    return trueBrix;
  }

  /** What an instrument true at 20 °C would show where one true at the reference shows this. */
  private static double onScaleOf20(double reading, double referenceCelsius) {
    double on20 = reading;
    for (int step = 0; step < STEPS; step++) {
      on20 = reading - correction(on20, referenceCelsius);
    }
    return on20;
  }

  private static double correction(double reading, double celsius) {
    if (!(celsius >= CELSIUS_MIN - SLACK && celsius <= CELSIUS_MAX + SLACK)) {
      throw new OutsideInstrumentRange(
          "A refractometer",
          celsius,
          CELSIUS_MIN,
          CELSIUS_MAX,
          "Let sample and prism come to room temperature and read again.");
    }
    double position = Math.max(0, celsius - CELSIUS_MIN);
    int row = Math.min((int) position, CORRECTIONS.length - 2);
    double colder = inRow(CORRECTIONS[row], reading);
    double warmer = inRow(CORRECTIONS[row + 1], reading);
    return colder + (warmer - colder) * (position - row);
  }

  /** Beyond the first and last column their values hold: the table ends "70 and more". */
  private static double inRow(double[] row, double reading) {
    int last = READINGS.length - 1;
    double within = Math.max(READINGS[0], Math.min(READINGS[last], reading));
    int column = 0;
    while (column < last - 1 && within > READINGS[column + 1]) {
      column++;
    }
    double share = (within - READINGS[column]) / (READINGS[column + 1] - READINGS[column]);
    return row[column] + (row[column + 1] - row[column]) * share;
  }

  private static List<CSVRecord> table() {
    return ReferenceTable.rows("refractometer_temperature_correction.csv");
  }

  private static double[] readings() {
    List<String> columns = table().get(0).getParser().getHeaderNames();
    return columns.stream().skip(1).mapToDouble(Double::parseDouble).toArray();
  }

  private static double[][] corrections() {
    return table().stream()
        .map(row -> row.stream().skip(1).mapToDouble(Double::parseDouble).toArray())
        .toArray(double[][]::new);
  }
}
