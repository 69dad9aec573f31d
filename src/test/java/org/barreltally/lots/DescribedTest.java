package org.barreltally.lots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.barreltally.Owner;
import org.junit.jupiter.api.Test;

/** Every operation on barrels and lots is described with a summary and an example. */
@QuarkusTest
class DescribedTest {

  private static final List<String> PATHS =
      List.of("/api/barrels", "/api/vessels", "/api/purchases", "/api/lots");

  @Test
  void every_operation_has_a_summary_and_an_example() {
    Map<String, Map<String, Map<String, Object>>> paths =
        Owner.asks()
            .get("/openapi?format=json")
            .then()
            .statusCode(200)
            .extract()
            .jsonPath()
            .getMap("paths");
    List<String> found = new ArrayList<>();
    List<String> lacking = new ArrayList<>();
    paths.forEach(
        (path, operations) -> {
          if (PATHS.stream().anyMatch(path::startsWith)) {
            operations.forEach(
                (method, operation) -> {
                  found.add(method + " " + path);
                  if (operation.get("summary") == null
                      || !operation.toString().contains("examples=")) {
                    lacking.add(method + " " + path);
                  }
                });
          }
        });
    assertEquals(List.of(), lacking);
    assertTrue(found.size() >= 20, found.toString());
  }
}
