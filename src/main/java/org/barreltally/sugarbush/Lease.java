package org.barreltally.sugarbush;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A landowner's trees for a season, paid for in syrup.
 *
 * @param bush the maker's name for the piece of wood
 * @param season the year of the sap
 * @param taps counts by date, in the order of their days; of the same day in that of their entry
 * @param closedOn null while it is open
 */
public record Lease(
    UUID id,
    Landowner landowner,
    String bush,
    int season,
    LeaseTerms terms,
    List<TapCount> taps,
    LocalDate closedOn) {

  public Lease {
    taps = List.copyOf(taps);
  }

  /**
   * The count that is paid for: the newest of the kind that governs. A season's rent is not parted
   * by days: what changed within it holds for all of it.
   */
  public Optional<TapCount> governing() {
    return taps(terms.governs());
  }

  /** The newest count of a kind. */
  public Optional<TapCount> taps(TapKind kind) {
    return taps.stream()
        .filter(count -> count.kind() == kind)
        .reduce((one, later) -> later.from().isBefore(one.from()) ? one : later);
  }
}
