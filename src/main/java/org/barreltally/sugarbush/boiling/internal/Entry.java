package org.barreltally.sugarbush.boiling.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.sugarbush.boiling.Amount;
import org.barreltally.sugarbush.boiling.EntryKind;
import org.barreltally.sugarbush.boiling.Reversed;
import org.barreltally.sugarbush.boiling.Role;

/**
 * A row of the log with what it came to.
 *
 * @param boil it is part of; null where it stands alone
 * @param entered as JSON
 * @param reversed null while it counts; a part goes with its boil
 */
public record Entry(
    UUID id,
    EntryKind kind,
    UUID boil,
    int season,
    LocalDate on,
    String bush,
    String entered,
    List<Amount> amounts,
    Reversed reversed) {

  /** Its amount of that role; none is a defect. */
  public Amount amount(Role role) {
    Optional<Amount> found = amounts.stream().filter(a -> a.role() == role).findFirst();
    return found.orElseThrow(() -> new IllegalStateException(kind + " without " + role));
  }
}
