package org.barreltally.keeping;

import java.util.List;
import org.barreltally.refusal.Refusal;

/** The restored book breaks an invariant of the ledger. */
public final class BookNotSound extends Refusal {

  public BookNotSound(List<String> invariants) {
    super(
        Kind.RULE,
        "book-not-sound",
        "The book in the backup does not add up",
        "The book in the backup does not add up (%s). Take an earlier backup; nothing was restored."
            .formatted(String.join(", ", invariants)));
  }
}
