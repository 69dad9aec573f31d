package org.barreltally.shows.rest;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.barreltally.refusal.InvalidField;
import org.barreltally.shows.Booking;
import org.barreltally.shows.ShowState;

/**
 * Reads a booking and what stands beside it in one JSON object, and merges changes into a booking
 * (JSON Merge Patch, RFC 7396): null takes a field away, what is not named stays.
 */
@ApplicationScoped
class BookingJson {

  private static final List<String> BESIDE = List.of("state", "allowOverlap");

  /** What is said beside the booking; either may be null. */
  record Beside(ShowState state, Boolean allowOverlap) {

    boolean overlapAllowed() {
      return Boolean.TRUE.equals(allowOverlap);
    }
  }

  /** A booking and what was said beside it. */
  record Told(Booking booking, Beside beside) {}

  private final ObjectMapper mapper;

  BookingJson(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  Told read(JsonNode said) throws JsonProcessingException {
    ObjectNode booking = object(said).deepCopy();
    Beside beside = beside(booking);
    return new Told(mapper.treeToValue(booking, Booking.class), beside);
  }

  Told merged(Booking before, JsonNode patch) throws JsonProcessingException {
    ObjectNode changes = object(patch).deepCopy();
    Beside beside = beside(changes);
    ObjectNode whole = mapper.valueToTree(before);
    merge(whole, changes);
    return new Told(mapper.treeToValue(whole, Booking.class), beside);
  }

  private Beside beside(ObjectNode said) throws JsonProcessingException {
    ObjectNode beside = mapper.createObjectNode();
    BESIDE.stream().filter(said::has).forEach(name -> beside.set(name, said.remove(name)));
    return mapper.treeToValue(beside, Beside.class);
  }

  private static ObjectNode object(JsonNode said) {
    if (said instanceof ObjectNode object) {
      return object;
    }
    throw new InvalidField("", "Send an object in { }.");
  }

  private static void merge(ObjectNode whole, ObjectNode changes) {
    changes
        .properties()
        .forEach(
            change -> {
              String name = change.getKey();
              JsonNode to = change.getValue();
              if (to.isNull()) {
                whole.remove(name);
              } else if (to instanceof ObjectNode parts
                  && whole.get(name) instanceof ObjectNode in) {
                merge(in, parts);
              } else {
                whole.set(name, to);
              }
            });
  }
}
