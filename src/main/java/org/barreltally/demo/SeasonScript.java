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
   * @param body JSON in which {@code {name.lot}} stands for the lot of an earlier answer
   */
  record Step(UUID id, String name, String path, String body) {

    String bodyWith(Map<String, String> lots) {
      String text = body;
      for (Map.Entry<String, String> lot : lots.entrySet()) {
        text = text.replace("{" + lot.getKey() + ".lot}", lot.getValue());
      }
      return text;
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
