package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.barreltally.refusal.InvalidField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {

  @Test
  void the_codes_are_the_fixed_ones() {
    assertEquals(
        List.of(
            "lb", "oz", "kg", "g", "gal", "qt", "pt", "floz", "L", "mL", "degF", "degC", "Brix",
            "Baume"),
        Unit.codes());
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void every_code_finds_its_unit(Unit unit) {
    assertSame(unit, Unit.of(unit.code()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "LB", "l", "ml", "brix", "pounds", " lb", "lb "})
  void other_codes_are_refused_with_the_list(String code) {
    UnknownUnit refusal = assertThrows(UnknownUnit.class, () -> Unit.of(code));
    assertEquals("unknown-unit", refusal.code());
    assertEquals(code, refusal.given());
    assertEquals("unit", refusal.errors().get(0).field());
    assertTrue(refusal.detail().contains(String.join(", ", Unit.codes())));
  }

  @Test
  void a_very_long_code_is_not_repeated_in_full() {
    UnknownUnit refusal = assertThrows(UnknownUnit.class, () -> Unit.of("x".repeat(5000)));
    assertTrue(refusal.detail().length() < 200, refusal.detail());
  }

  @Test
  void no_code_is_refused() {
    assertThrows(InvalidField.class, () -> Unit.of(null));
  }
}
