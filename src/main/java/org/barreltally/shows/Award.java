package org.barreltally.shows;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.lots.LotAward;

/**
 * How a lot was judged in a class of a show; without score and ribbon it was entered only.
 *
 * @param showName as it is called now
 * @param on the last day of the show
 */
public record Award(
    UUID id,
    UUID show,
    String showName,
    LocalDate on,
    @JsonProperty("class") String judgedClass,
    String lot,
    String container,
    BigDecimal score,
    String ribbon,
    Instant recordedAt) {

  /** As a label or price card may carry it; null while nothing is won. */
  public String words() {
    return ribbon == null
        ? null
        : "%s, %s, %s %d".formatted(ribbon, judgedClass, showName, on.getYear());
  }

  LotAward asLotAward() {
    return new LotAward(showName, on, judgedClass, container, score, ribbon, words());
  }
}
