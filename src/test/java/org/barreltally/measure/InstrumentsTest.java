package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.barreltally.refusal.InvalidField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InstrumentsTest {
  private static final Instruments USUAL = Instruments.usual();
  private static final double GALLON = 3785.411784;
  private static final double POUND = 453.59237;

  /** Half widths: common practice; color meter Perkins et al., University of Vermont, 2020. */
  @ParameterizedTest
  @CsvSource({
    "platform-scale, 444.5, lb, 201621.808465, 226.796185",
    "dipstick, 40, gal, 151416.47136, 1892.705892",
    "bench-scale, 628, g, 628, 1",
    "hydrometer, 66.9, Brix, 66.9, 0.3",
    "refractometer, 66.9, Brix, 66.9, 0.2",
    "probe, 185, degF, 85, 1.1111111111"
  })
  void readings_carry_the_usual_uncertainty_in_the_base_unit(
      String kind, String value, String unit, double base, double halfWidth) {
    Uncertain read = USUAL.read(InstrumentKind.of(kind), Quantity.of(value, Unit.of(unit)));
    assertEquals(base, read.value(), 1e-9 * base);
    assertEquals(halfWidth / Math.sqrt(3), read.u(), 1e-9 * halfWidth);
  }

  @Test
  void the_color_meter_reads_plain_points() {
    assertEquals(4 / Math.sqrt(3), USUAL.readTransmittance(62).u(), 1e-12);
    Quantity any = Quantity.of(62, Unit.BRIX);
    assertThrows(IllegalArgumentException.class, () -> USUAL.read(InstrumentKind.COLOR_METER, any));
  }

  @Test
  void a_baume_reading_becomes_the_brix_of_the_same_gravity() {
    Uncertain read = USUAL.read(InstrumentKind.HYDROMETER, Quantity.of(36, Unit.BAUME));
    assertEquals(Baume.toBrix(36), read.value());
    assertEquals(66.85, read.value(), 0.06);
  }

  @ParameterizedTest
  @CsvSource({"platform-scale, gal", "dipstick, lb", "probe, Brix", "hydrometer, degF"})
  void an_instrument_refuses_what_it_does_not_measure(String kind, String unit) {
    Quantity reading = Quantity.of(1, Unit.of(unit));
    assertThrows(UnitMismatch.class, () -> USUAL.read(InstrumentKind.of(kind), reading));
  }

  /**
   * Worked by hand with the GUM's rule: ±0.5 lb twice and ±0.5 gal on the stick are 0.58 gal at a
   * coverage of 2; the pack-day barrel is 1.10 gal over by the cold stick, 0.48 by the hot one.
   */
  @Test
  void the_pack_day_gap_between_stick_and_scale_is_judged_by_uncertainty() {
    Uncertain gross = USUAL.read(InstrumentKind.PLATFORM_SCALE, Quantity.of("268.0", Unit.LB));
    Uncertain tare = USUAL.read(InstrumentKind.PLATFORM_SCALE, Quantity.of("41.5", Unit.LB));
    Syrup syrup = new Syrup(67.4);
    Uncertain weighed =
        Uncertain.through(g -> syrup.mLAt20(syrup.massFromWeight(g)), gross.minus(tare));
    Uncertain cold = USUAL.read(InstrumentKind.DIPSTICK, Quantity.of("21.5", Unit.GAL));
    Uncertain hot = Uncertain.through(v -> syrup.mLAt20(syrup.gramsForMLAt(v, 85)), cold);

    assertEquals(1.10, cold.minus(weighed).value() / GALLON, 0.005);
    assertEquals(0.48, hot.minus(weighed).value() / GALLON, 0.005);
    assertEquals(0.58, Uncertain.COVERAGE * cold.minus(weighed).u() / GALLON, 0.005);
    assertTrue(cold.differsFrom(weighed));
    assertFalse(hot.differsFrom(weighed));
    assertEquals(226.5, gross.minus(tare).value() / POUND, 1e-9);
  }

  @Test
  void one_instrument_can_be_set_otherwise() {
    Instruments better = USUAL.with(InstrumentKind.HYDROMETER, 0.1);
    assertEquals(0.1, better.halfWidth(InstrumentKind.HYDROMETER));
    assertEquals(0.2, better.halfWidth(InstrumentKind.REFRACTOMETER));
    assertEquals(0.3, USUAL.halfWidth(InstrumentKind.HYDROMETER));
  }

  @Test
  void every_instrument_needs_a_half_width() {
    assertThrows(IllegalArgumentException.class, () -> new Instruments(Map.of()));
    InvalidField refusal = assertThrows(InvalidField.class, () -> InstrumentKind.of("ruler"));
    assertEquals("instrument", refusal.errors().get(0).field());
  }
}
