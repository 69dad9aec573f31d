package org.barreltally.gifts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The order of address lines by country: the Universal Postal Union's public guide ("Addressing the
 * world", S42), from memory, as are the national forms below. The people and streets are invented.
 */
class PostalLinesTest {

  private static List<String> lines(String country, String region, String town, String postcode) {
    return PostalLines.of(
        "Ottilie Quillfeather",
        new Address(List.of("4 Tarn Lane"), town, region, postcode, country),
        "US");
  }

  @Test
  void at_home_town_state_and_code_stand_on_one_line_and_no_country_under_it() {
    assertEquals(
        List.of("Ottilie Quillfeather", "4 Tarn Lane", "Fernby VT 05999"),
        lines("US", "VT", "Fernby", "05999"));
  }

  @Test
  void canada_has_two_blanks_before_the_code_and_its_name_last() {
    assertEquals(
        List.of("Ottilie Quillfeather", "4 Tarn Lane", "FERNBY ON  K1A 0B1", "CANADA"),
        lines("CA", "ON", "Fernby", "K1A 0B1"));
  }

  @Test
  void britain_has_town_and_code_on_lines_of_their_own() {
    assertEquals(
        List.of("Ottilie Quillfeather", "4 Tarn Lane", "FERNBY", "AB1 2CD", "UNITED KINGDOM"),
        lines("GB", null, "Fernby", "AB1 2CD"));
  }

  @ParameterizedTest
  @CsvSource({
    "DE, 12345 Fernby, GERMANY",
    "FR, 12345 FERNBY, FRANCE",
    "CH, 12345 Fernby, SWITZERLAND"
  })
  void on_the_continent_the_code_stands_before_the_town(String country, String line, String name) {
    List<String> lines = lines(country, null, "Fernby", "12345");
    assertEquals(line, lines.get(2));
    assertEquals(name, lines.get(3));
  }

  @Test
  void another_country_gets_code_town_region_and_its_name() {
    assertEquals(
        List.of("Ottilie Quillfeather", "4 Tarn Lane", "1000 Fernby", "Northshire", "ICELAND"),
        lines("IS", "Northshire", "Fernby", "1000"));
  }

  @ParameterizedTest
  @CsvSource({"us, US", "USA, US", "United States, US", "uk, GB", "DEU, DE", "canada, CA"})
  void countries_are_known_by_letters_or_english_name(String said, String code) {
    assertEquals(code, Countries.code(said).orElseThrow());
  }
}
