package org.barreltally;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "<td>7300</td>; true",
        "value=\"7300\"; true",
        "counted 7,300 pints.; true",
        "It was 7300.; true",
        "{\"count\":7300,\"lot\":\"a\"}; true",
        "[7300,12]; true",
        "/counts/01a21972-7300-792d-b98f-e173e2de8710; false",
        "/counts/01a21972-ea8c-792d-b98f-e17300de8710; false",
        "2026-11-26T20:04:39.7300Z; false",
        "17300; false",
        "73001; false",
        "12,7300; true",
        "token=ab_7300_cd; false",
      })
  void a_figure_is_seen_only_where_it_stands_by_itself(String text, boolean shown) {
    assertEquals(shown, Figures.shows(text, "7300"), text);
  }
}
