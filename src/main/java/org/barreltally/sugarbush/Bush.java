package org.barreltally.sugarbush;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * A piece of wood in a season.
 *
 * @param own whether it is known as the maker's own
 * @param leased whether trees in it are leased that season
 * @param taps set in it, by the newest counts; null before there is one
 * @param agreed whether part of them was not counted in the trees but only agreed
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Bush(String name, boolean own, boolean leased, Integer taps, boolean agreed) {

  /** The two as one: the same wood may be partly own, or on the land of two. */
  Bush and(Bush other) {
    Integer both =
        taps == null ? other.taps : Integer.valueOf(taps + (other.taps == null ? 0 : other.taps));
    return new Bush(name, own || other.own, leased || other.leased, both, agreed || other.agreed);
  }
}
