package org.barreltally.sugarbush.boiling;

import org.barreltally.refusal.Refusal;

/** An entry was taken back before. */
public final class EntryReversed extends Refusal {
  EntryReversed(Reversed reversed) {
    super(
        Kind.CONFLICT,
        "entry-reversed",
        "That was taken back",
        "It was taken back before (\"%s\") and counts for nothing. Enter what is right anew."
            .formatted(reversed.reason()));
  }
}
