package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LooksLikeBaumeTest {

  private static LooksLikeBaume refused(String brix) {
    Quantity reading = Quantity.of(brix, Unit.BRIX);
    return assertThrows(
        LooksLikeBaume.class, () -> LooksLikeBaume.check(reading, "density.reading"));
  }

  /**
   * Vermont's pairs 36 °Bé = 66.9 °Bx and 37 °Bé = 68.9 °Bx give 67.3 by a straight line, as do the
   * older handbook densities; the densities used here give 67.25, which is printed as 67.2.
   */
  @Test
  void offers_the_conversion() {
    LooksLikeBaume refusal = refused("36.2");
    assertEquals("looks-like-baume", refusal.code());
    assertTrue(
        refusal.detail().startsWith("Looks like Baumé: 36.2 °Bé ≈ 67.2 °Bx. Convert?"),
        refusal.detail());
    assertEquals(67.3, refusal.brix().orElseThrow(), 0.06);
    assertEquals(Quantity.of("36.2", Unit.BRIX), refusal.reading());
    assertEquals("density.reading", refusal.errors().get(0).field());
  }

  @ParameterizedTest
  @ValueSource(strings = {"30", "30.0", "33", "37.5"})
  void refuses_the_whole_range(String brix) {
    assertTrue(refused(brix).brix().isPresent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"37.6", "38", "40"})
  void says_so_when_the_converted_value_is_beyond_the_table(String brix) {
    LooksLikeBaume refusal = refused(brix);
    assertFalse(refusal.brix().isPresent());
    assertTrue(refusal.detail().contains("over 70 °Bx"), refusal.detail());
  }

  @ParameterizedTest
  @CsvSource({"29.99, Brix", "40.01, Brix", "66.9, Brix", "2, Brix", "36.2, Baume", "36, lb"})
  void lets_everything_else_pass(String value, String unit) {
    Quantity reading = Quantity.of(value, Unit.of(unit));
    assertDoesNotThrow(() -> LooksLikeBaume.check(reading, "density.reading"));
  }
}
