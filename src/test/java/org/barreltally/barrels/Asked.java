package org.barreltally.barrels;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.ValidatableResponse;

/** Requests of the barrel tests, said in JSON where single quotes stand for double ones. */
final class Asked {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private Asked() {}

  /** A half barrel at 67.4 °Bx: 226.5 lb net of 41.5 lb tare, graded amber. */
  static String halfBarrel(String tag) {
    return barrel(tag, 2024, "2024-03-20", 268.0, 41.5, 67.4, 55);
  }

  /** Fills a half barrel and gives its tag. */
  static String filled() {
    String tag = newTag("B");
    fill(halfBarrel(tag));
    return tag;
  }

  static ValidatableResponse fill(String barrel) {
    return posts("/api/barrels", barrel).statusCode(201);
  }

  static ValidatableResponse topUp(String tag, String body) {
    return posts("/api/barrels/" + tag + "/top-ups", body);
  }

  /** The half barrel filled up to 444.5 lb net, read at so many Brix as a whole. */
  static String topUpTo(double brix) {
    return """
        {'on': '2024-03-27', 'weighing': {'gross': {'value': 486.0, 'unit': 'lb'}},
         'density': {'reading': {'value': %s, 'unit': 'Brix'},
                     'temperature': {'value': 68, 'unit': 'degF'}, 'instrument': 'refractometer'},
         'transmittance': 58, 'taste': 'clean',
         'reheat': {'temperature': {'value': 180, 'unit': 'degF'}, 'by': 'Orla'}}
        """
        .formatted(brix);
  }

  /**
   * JSON with the value at a path, such as {@code weighing.gross.unit}, put in place.
   *
   * @param value JSON; null takes the field away
   */
  static String with(String json, String path, String value) {
    try {
      ObjectNode whole = (ObjectNode) MAPPER.readTree(json.replace('\'', '"'));
      String[] steps = path.split("\\.");
      ObjectNode at = whole;
      for (int i = 0; i < steps.length - 1; i++) {
        at = (ObjectNode) at.get(steps[i]);
      }
      String last = steps[steps.length - 1];
      if (value == null) {
        at.remove(last);
      } else {
        JsonNode node = MAPPER.readTree(value.replace('\'', '"'));
        at.set(last, node);
      }
      return MAPPER.writeValueAsString(whole);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(value, e);
    }
  }
}
