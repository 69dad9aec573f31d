package org.barreltally.web.request;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanonicalJsonTest {

  private final ObjectMapper mapper =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"b\": 1, \"a\": 2}|{\"a\":2,\"b\":1}",
        "{\"a\": null, \"b\": [null, {}]}|{\"b\":[null,{}]}",
        "{\"a\": null}|{}",
        "[]|[]",
        "[2, 1]|[2,1]",
        "[1.0, 1.00, 1, 10e-1]|[1,1,1,1]",
        "[0, 0.00, -0.0]|[0,0,0]",
        "[100, 1e2]|[1E+2,1E+2]",
        "[\"a\\u0062\\n\\\"\", true]|[\"ab\\n\\\"\",true]",
        "\"1.0\"|\"1.0\""
      })
  void what_means_the_same_is_written_the_same(String json, String canonical)
      throws JsonProcessingException {
    assertEquals(canonical, new CanonicalJson(mapper).text(mapper.readTree(json)));
  }
}
