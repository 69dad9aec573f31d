package org.barreltally.sugarbush.boiling;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;

/**
 * What is said of a boil later; the newest of each counts.
 *
 * @param fuel in the maker's own measure
 * @param niter what settled: how much, what it looked like, pans changed
 * @param filterPress papers, filter aid, pressure, when it was changed
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BoilNote(
    Instant endedAt, String fuel, String niter, String filterPress, String note) {

  boolean saysNothing() {
    return endedAt == null && fuel == null && niter == null && filterPress == null && note == null;
  }
}
