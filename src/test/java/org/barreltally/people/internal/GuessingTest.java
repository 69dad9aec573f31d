package org.barreltally.people.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each is long enough; the easy ones stand in every list of passwords that were found out. */
class GuessingTest {

  @ParameterizedTest
  @CsvSource({
    "aaaaaaaaaaaa, true",
    "123456789012, true",
    "qwertyuiop123, true",
    "password1234, true",
    "iloveyou1234, true",
    "abcdefghijkl, true",
    "marlamarla12, true",
    "barreltally1, true",
    "maplesyrup26, true",
    "20 03 2026 20, true",
    "kettle moss ferry tin, false",
    "7f3kd-0q2zn-vx9ht-c5mwa, false",
    "what somebody chose, false",
  })
  void what_would_be_tried_first_is_easy(String password, boolean easy) {
    assertEquals(easy, Guessing.isEasy(password, List.of("marla", "quince")), password);
  }
}
