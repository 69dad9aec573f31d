package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.barreltally.measure.Blend.Part;
import org.barreltally.refusal.InvalidField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BlendTest {
  private static final double POUND = 453.59237;
  private static final long SEED = 2407;

  private static Part barrel(double pounds, double brix, Double transmittance) {
    double grams = new Syrup(brix).massFromWeight(pounds * POUND);
    return new Part(grams, brix, transmittance);
  }

  private static List<Part> packDay() {
    return List.of(barrel(444.5, 66.9, 62.0), barrel(226.5, 67.4, 55.0), barrel(130, 66.2, 48.0));
  }

  /** Pack-day scenario, worked by hand: Σ lb·Bx 53,609.15 over 801.0 lb. */
  @Test
  void the_pack_day_blend_is_66_93_brix() {
    assertEquals(53_609.15 / 801.0, Blend.brix(packDay()), 0.0005);
  }

  /** Pack-day scenario, worked by hand: 72.31 gal at 68 °F. */
  @Test
  void the_pack_day_blend_is_72_31_gallons() {
    double grams = packDay().stream().mapToDouble(Part::grams).sum();
    double mL = new Syrup(Blend.brix(packDay())).mLAt20(grams);
    assertEquals(72.31, mL / 3785.411784, 0.005);
  }

  /**
   * Pack-day scenario: 57.5 through absorbance (Beer–Lambert law), 57.7 would be the plain mean.
   */
  @Test
  void the_pack_day_colour_is_estimated_at_57_5() {
    assertEquals(57.5, Blend.transmittanceEstimate(packDay()).orElseThrow(), 0.05);
  }

  /**
   * Beer–Lambert law, IUPAC Gold Book: twice the volume, half the absorbance, 25 % becomes 50 %.
   */
  @Test
  void equal_volumes_of_25_percent_and_clear_make_50_percent() {
    Part dark = new Part(1000, 66.9, 25.0);
    Part clear = new Part(1000, 66.9, 100.0);
    assertEquals(50, Blend.transmittanceEstimate(List.of(dark, clear)).orElseThrow(), 1e-9);
  }

  @Test
  void there_is_no_colour_estimate_when_a_part_was_not_measured() {
    List<Part> parts = List.of(barrel(100, 66.9, 62.0), barrel(100, 66.9, null));
    assertFalse(Blend.transmittanceEstimate(parts).isPresent());
  }

  @Test
  void water_brings_the_blend_to_its_target_and_lightens_it() {
    Random random = new Random(SEED);
    for (int i = 0; i < 1000; i++) {
      double target = 60 + random.nextDouble() * 6;
      double brix = target + random.nextDouble() * 4;
      Part syrup = new Part(1 + random.nextDouble() * 200_000, brix, 50.0);
      double water = Blend.waterFor(syrup.grams(), brix, target);
      List<Part> thinned = List.of(syrup, Part.water(water));
      assertTrue(water >= 0);
      assertEquals(target, Blend.brix(thinned), 1e-9, () -> "seed " + SEED);
      assertTrue(Blend.transmittanceEstimate(thinned).orElseThrow() >= 50 - 1e-9);
    }
  }

  /** Sugar kept: 1000 g of 70 °Bx hold 700 g, which is 50 % of 1400 g. */
  @Test
  void water_is_counted_by_sugar() {
    assertEquals(400, Blend.waterFor(1000, 70, 50), 1e-9);
    assertEquals(0, Blend.waterFor(1000, 66.9, 66.9));
  }

  @Test
  void a_blend_that_only_misses_its_target_by_arithmetic_noise_is_there() {
    List<Part> parts = new ArrayList<>();
    for (int i = 1; i < 50; i++) {
      parts.add(new Part(i * 0.1, 66.9, null));
    }
    assertEquals(0, Blend.waterFor(1000, Blend.brix(parts), 66.9), 1e-6);
  }

  @Test
  void a_light_blend_is_refused_with_both_figures() {
    BlendTooLight refusal =
        assertThrows(BlendTooLight.class, () -> Blend.waterFor(1000, 65.8, 66.9));
    assertEquals("blend-too-light", refusal.code());
    assertEquals(65.8, refusal.brix());
    assertEquals(66.9, refusal.targetBrix());
    assertEquals("targetBrix", refusal.errors().get(0).field());
    assertTrue(refusal.detail().contains("65.80") && refusal.detail().contains("66.90"));
  }

  @Test
  void a_target_of_nothing_is_refused() {
    assertThrows(InvalidField.class, () -> Blend.waterFor(1000, 66.9, 0));
    assertThrows(InvalidField.class, () -> Blend.waterFor(1000, 66.9, Double.NaN));
  }

  @Test
  void nothing_is_no_blend() {
    assertThrows(InvalidField.class, () -> Blend.brix(List.of()));
    List<Part> empty = List.of(new Part(0, 66, 50.0));
    assertThrows(InvalidField.class, () -> Blend.brix(empty));
    assertThrows(InvalidField.class, () -> Blend.transmittanceEstimate(List.of()));
  }

  @ParameterizedTest
  @CsvSource({"-1, 66", "NaN, 66", "Infinity, 66"})
  void a_part_without_a_mass_is_refused(double grams, double brix) {
    assertThrows(InvalidField.class, () -> new Part(grams, brix, null));
  }

  @ParameterizedTest
  @CsvSource({"0", "-1", "100.1", "NaN"})
  void a_part_with_an_impossible_transmittance_is_refused(double transmittance) {
    assertThrows(InvalidField.class, () -> new Part(1, 66, transmittance));
    assertThrows(OutsideDensityRange.class, () -> new Part(1, 71, null));
  }
}
