package org.barreltally.supplies;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.barreltally.canning.UsesSupplies.Jars;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A run of 163 pints and 25 half-pints, broken ones included. */
class RunNeedTest {

  private static final List<Jars> RUN = List.of(new Jars("PT", 163), new Jars("HP", 25));

  @ParameterizedTest(name = "{0} per jar, or 1 for {1}, of {2}")
  @CsvSource({
    "1, , PT, 163",
    "2, , PT, 326",
    "1, , HP, 25",
    "1, , , 188",
    "1, , QT, 0",
    " , 12, PT, 14",
    " , 12, HP, 3",
    " , 12, , 16",
    " , , PT, 0"
  })
  void what_it_uses_of_a_supply(Integer perJar, Integer jarsEach, String size, long expected) {
    assertEquals(expected, RunNeed.of(supply(perJar, jarsEach, size), RUN).pieces());
  }

  @ParameterizedTest(name = "with {0} on hand")
  @CsvSource({"187, fills[1]", "163, fills[1]", "162, fills[0]", "0, fills[0]", "-5, fills[0]"})
  void it_runs_out_with_the_fill_that_takes_the_last(long onHand, String field) {
    assertEquals(field, RunNeed.of(supply(1, null, null), RUN).shortField(onHand));
  }

  private static Supply supply(Integer perJar, Integer jarsEach, String size) {
    return new Supply("X", "Things", Supply.Kind.CAP, size, perJar, jarsEach, null);
  }
}
