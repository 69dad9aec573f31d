package org.barreltally.shows;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;

/**
 * A lot was entered in a class, or judged there. Said again for the same class, lot and size, the
 * newest holds.
 *
 * @param judgedClass in the show's words
 * @param container the size that was entered; may be null
 * @param score in the judges' scale, 0 to 1000 with at most 3 decimals; null if none was given
 * @param ribbon what was won, in the show's words; null if nothing was, or not yet
 */
public record EnterAward(
    @JsonProperty("class") String judgedClass,
    String lot,
    String container,
    BigDecimal score,
    String ribbon) {}
