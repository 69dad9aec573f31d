package org.barreltally.web.problem;

import com.fasterxml.jackson.databind.JsonMappingException;

/** Where in the JSON something stands: {@code draws[0].weight.unit}; empty for the whole. */
final class JsonPath {

  private static final int NAME_SHOWN = 60;

  private JsonPath() {}

  static String of(JsonMappingException thrown) {
    StringBuilder path = new StringBuilder();
    for (JsonMappingException.Reference step : thrown.getPath()) {
      if (step.getFieldName() == null) {
        path.append('[').append(step.getIndex()).append(']');
      } else {
        String name = step.getFieldName();
        path.append(path.isEmpty() ? "" : ".")
            .append(name.length() > NAME_SHOWN ? name.substring(0, NAME_SHOWN) + "…" : name);
      }
    }
    return path.toString();
  }
}
