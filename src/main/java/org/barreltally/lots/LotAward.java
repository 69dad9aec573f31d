package org.barreltally.lots;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * How a lot was judged in a class of a show.
 *
 * @param on the last day of the show
 * @param container the size that was entered; null if that was not said
 * @param score as the judges gave it, in their scale; null if none was given
 * @param ribbon what was won, in the show's words; null if nothing was won, or it is not judged yet
 * @param words as a label or price card may carry it; null while there is no ribbon
 */
public record LotAward(
    String show,
    LocalDate on,
    @JsonProperty("class") String judgedClass,
    String container,
    BigDecimal score,
    String ribbon,
    String words) {}
