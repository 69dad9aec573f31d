package org.barreltally.hostile;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * An operation of the interface, as its description tells.
 *
 * @param query the names of its query parameters
 * @param mediaType of what it is sent; empty for nothing
 * @param examples of what it is sent
 */
record Operation(
    String method, String path, List<String> query, String mediaType, List<JsonNode> examples) {

  static List<Operation> of(JsonNode description) {
    List<Operation> all = new ArrayList<>();
    description
        .get("paths")
        .fields()
        .forEachRemaining(
            path ->
                path.getValue()
                    .fields()
                    .forEachRemaining(said -> all.add(of(path.getKey(), said))));
    return all;
  }

  private static Operation of(String path, Map.Entry<String, JsonNode> said) {
    List<String> query = new ArrayList<>();
    for (JsonNode parameter : said.getValue().path("parameters")) {
      if (parameter.path("in").asText().equals("query")) {
        query.add(parameter.get("name").asText());
      }
    }
    JsonNode content = said.getValue().path("requestBody").path("content");
    Iterator<String> types = content.fieldNames();
    String type = types.hasNext() ? types.next() : "";
    List<JsonNode> examples = new ArrayList<>();
    content.path(type).path("examples").forEach(example -> examples.add(example.get("value")));
    if (content.path(type).has("example")) {
      examples.add(content.path(type).get("example"));
    }
    return new Operation(said.getKey().toUpperCase(Locale.ROOT), path, query, type, examples);
  }

  boolean writes() {
    return !method.equals("GET");
  }
}
