package org.barreltally.web.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AllowedMethodsTest {

  @ParameterizedTest
  @CsvSource({
    "/api/tokens/{id},/api/tokens/7,true",
    "/api/tokens/{id},/api/tokens,false",
    "/api/tokens,/api/tokens/7,false",
    "/api/lots/{lot}/labels.pdf,/api/lots/PL-1/labels.pdf,true",
    "/api/lots/{lot}/labels.pdf,/api/lots/PL-1/trace,false",
    "/,/,true"
  })
  void an_address_fits_the_form_of_its_resource(String template, String path, boolean fits) {
    assertEquals(fits, AllowedMethods.fits(template, path));
  }
}
