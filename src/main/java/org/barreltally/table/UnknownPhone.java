package org.barreltally.table;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No phone has that id. */
public final class UnknownPhone extends Refusal {

  public UnknownPhone(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-phone",
        "No such phone",
        "No phone " + id + " was paired. List them at /api/table/phones.");
  }
}
