package org.barreltally.shows.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;

/** What is kept as it was said, as JSON. */
@ApplicationScoped
public class ShowJson {

  private final ObjectMapper mapper;

  ShowJson(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  public String written(Object said) {
    try {
      return mapper.writeValueAsString(said);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("what was said of a show cannot be written", e);
    }
  }

  public <T> T read(String json, Class<T> type) {
    try {
      return mapper.readValue(json, type);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("what was said of a show cannot be read", e);
    }
  }
}
