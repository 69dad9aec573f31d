package org.barreltally;

import static io.restassured.RestAssured.given;

import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.util.Locale;
import java.util.UUID;

/** The owner at the interface: signs in and sends JSON, each request with an id of its own. */
public final class Owner {

  private static final String PASSWORD = "only for the tests";

  private Owner() {}

  public static RequestSpecification asks() {
    return given().auth().preemptive().basic("owner", PASSWORD);
  }

  /** Reads an address that must be there. */
  public static ValidatableResponse reads(String path) {
    return asks().get(path).then().statusCode(200);
  }

  /** Posts JSON under a new request id; single quotes stand for double ones. */
  public static ValidatableResponse posts(String path, String json) {
    return posts(path, json, UUID.randomUUID());
  }

  public static ValidatableResponse posts(String path, String json, UUID id) {
    return asks()
        .contentType("application/json")
        .header("Idempotency-Key", id.toString())
        .body(json.replace('\'', '"'))
        .post(path)
        .then();
  }

  /** A tag no other test uses. */
  public static String newTag(String prefix) {
    return prefix + UUID.randomUUID().toString().substring(24);
  }

  /** A jar size no other test uses, so its pools are this test's alone; of so many fluid ounces. */
  public static String newSize(int flOz) {
    String code = "S" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
    posts(
            "/api/containers",
            "{'code': '%s', 'name': 'Tried jar', 'netContents': {'value': %d, 'unit': 'floz'}, 'material': 'glass', 'emptyWeight': {'value': 300, 'unit': 'g'}}"
                .formatted(code, flOz))
        .statusCode(201);
    return code;
  }

  /** JSON of a barrel weighed and read with a refractometer at 68 °F. */
  public static String barrel(
      String tag, int season, String on, double gross, double tare, double brix, double tc) {
    return """
        {'tag': '%s', 'season': %d, 'filledOn': '%s', 'material': 'stainless',
         'weighing': {'gross': {'value': %s, 'unit': 'lb'}, 'tare': {'value': %s, 'unit': 'lb'}},
         'density': {'reading': {'value': %s, 'unit': 'Brix'},
                     'temperature': {'value': 68, 'unit': 'degF'},
                     'instrument': 'refractometer', 'reference': {'value': 68, 'unit': 'degF'}},
         'transmittance': %s, 'taste': 'clean'}
        """
        .formatted(tag, season, on, gross, tare, brix, tc);
  }
}
