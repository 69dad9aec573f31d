package org.barreltally.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** The invented season of {@code demo/season.json}: requests in order, each with its own id. */
record SeasonScript(String farm, List<Step> steps) {

  /**
   * @param name under which later steps refer to the answer; null if none does
   * @param path in which {@code {name.id}} stands for the id of an earlier answer
   * @param body JSON in which {@code {name.lot}} and {@code {name.id}} stand for lot and id of one
   */
  record Step(UUID id, String name, String path, String body) {

    String pathWith(Map<String, String> told) {
      return with(path, told);
    }

    String bodyWith(Map<String, String> told) {
      return with(body, told);
    }

    private static String with(String text, Map<String, String> told) {
      String whole = text;
      for (Map.Entry<String, String> one : told.entrySet()) {
        whole = whole.replace("{" + one.getKey() + "}", one.getValue());
      }
      return whole;
    }
  }

  UUID firstId() {
    return steps.get(0).id();
  }

  UUID lastId() {
    return steps.get(steps.size() - 1).id();
  }

  static SeasonScript read(ObjectMapper json) {
    try (InputStream in =
        Thread.currentThread().getContextClassLoader().getResourceAsStream("demo/season.json")) {
      JsonNode script = json.readTree(in);
      List<Step> steps = new ArrayList<>();
      for (JsonNode step : script.get("requests")) {
        steps.add(
            new Step(
                UUID.fromString(step.get("id").asText()),
                step.hasNonNull("name") ? step.get("name").asText() : null,
                step.get("post").asText(),
                json.writeValueAsString(step.get("body"))));
      }
      return new SeasonScript(script.get("farm").asText(), List.copyOf(steps));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
