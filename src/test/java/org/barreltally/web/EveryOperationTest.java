package org.barreltally.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.Owner;
import org.junit.jupiter.api.Test;

/** The description of the interface leaves no operation without words and an example. */
@QuarkusTest
class EveryOperationTest {

  @Test
  void has_a_summary_and_an_example_of_what_is_sent_or_answered() throws Exception {
    String text = Owner.asks().get("/openapi?format=json").asString();
    JsonNode paths = new ObjectMapper().readTree(text).get("paths");
    List<String> bare = new ArrayList<>();
    int[] seen = {0};
    paths
        .fields()
        .forEachRemaining(
            path ->
                path.getValue()
                    .fields()
                    .forEachRemaining(
                        operation -> {
                          if (path.getKey().startsWith("/api/tried")) {
                            return; // a resource of the tests
                          }
                          seen[0]++;
                          JsonNode said = operation.getValue();
                          boolean deletes =
                              operation.getKey().equals("delete"); // sends and answers nothing
                          if (!said.hasNonNull("summary")
                              || !(deletes || said.toString().contains("\"example"))) {
                            bare.add(operation.getKey() + " " + path.getKey());
                          }
                        }));
    assertTrue(seen[0] > 40, "operations seen: " + seen[0]);
    assertEquals(List.of(), bare);
  }
}
