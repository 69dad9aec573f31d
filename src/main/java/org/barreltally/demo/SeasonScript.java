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
   * @param body JSON in which {@code {name.lot}} and {@code {name.id}} do alike
   */
  record Step(UUID id, String name, String path, String body) {

    /** The step with what earlier answers said, by name and field. */
    Step with(Map<String, String> said) {
      String knownPath = path;
      String knownBody = body;
      for (Map.Entry<String, String> word : said.entrySet()) {
        knownPath = knownPath.replace("{" + word.getKey() + "}", word.getValue());
        knownBody = knownBody.replace("{" + word.getKey() + "}", word.getValue());
      }
      return new Step(id, name, knownPath, knownBody);
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
