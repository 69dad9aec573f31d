package org.barreltally.netcontents;

import org.barreltally.containers.Container;
import org.barreltally.refusal.Refusal;

/** The container is larger than the table of tolerable deficiencies reaches. */
public final class NoToleranceKnown extends Refusal {
  public NoToleranceKnown(Container container) {
    super(
        Kind.RULE,
        "no-tolerance-known",
        "No tolerance is known for this size",
        "%s holds %s; the European table of tolerable deficiencies ends at 50 L. Ask the weights-and-measures office."
            .formatted(container.code(), container.netContents()),
        "container");
  }
}
