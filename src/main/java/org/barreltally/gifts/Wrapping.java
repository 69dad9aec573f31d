package org.barreltally.gifts;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import org.barreltally.measure.Quantity;

/**
 * A carton, ribbon or card of a box. In JSON its name alone will do.
 *
 * @param name as the pick list counts it: {@code Two-jar carton}
 * @param weight of one with its cushioning; null where nobody weighed it
 */
public record Wrapping(String name, Quantity weight) {

  /** From its name alone. */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static Wrapping named(String name) {
    return new Wrapping(name, null);
  }

  /** From its fields. */
  @JsonCreator(mode = JsonCreator.Mode.PROPERTIES)
  public static Wrapping of(
      @JsonProperty("name") String name, @JsonProperty("weight") Quantity weight) {
    return new Wrapping(name, weight);
  }
}
