package org.barreltally.sugarbush.boiling;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** The sugarhouse's log has no such entry. */
public final class UnknownEntry extends Refusal {
  UnknownEntry(String what, UUID id, String where) {
    super(
        Kind.NOT_FOUND,
        "unknown-sugarhouse-entry",
        "No such entry",
        "There is no %s %s. List them at %s.".formatted(what, id, where));
  }
}
