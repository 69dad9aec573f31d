package org.barreltally.shows;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Money;

/**
 * What was packed out at once.
 *
 * @param place the code of the table
 * @param cashFloat change money of all pack-outs of the show that stand
 */
public record PackedOut(
    UUID id,
    UUID show,
    String place,
    ShowState state,
    UUID movement,
    List<Line> lines,
    @JsonProperty("float") Money cashFloat) {

  /**
   * Jars of one container and lot.
   *
   * @param count pieces that went out
   */
  public record Line(String container, String lot, ColorClass grade, long count) {}
}
