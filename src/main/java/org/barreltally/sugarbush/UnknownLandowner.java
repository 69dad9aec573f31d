package org.barreltally.sugarbush;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No landowner has that id. */
public final class UnknownLandowner extends Refusal {
  public UnknownLandowner(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-landowner",
        "No such landowner",
        "There is no landowner %s. List them at /api/landowners.".formatted(id));
  }
}
