package org.barreltally.netcontents.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;

/** Records as they are kept: by the same rules as they were answered. */
@ApplicationScoped
class Json {

  private final ObjectMapper mapper;

  Json(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  String write(Object kept) {
    try {
      return mapper.writeValueAsString(kept);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a record of net contents cannot be written", e);
    }
  }

  <T> T read(Object json, Class<T> type) {
    try {
      return mapper.readValue(json.toString(), type);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a record of net contents cannot be read", e);
    }
  }
}
