package org.barreltally.stock;

import org.barreltally.refusal.Refusal;

/** Jars are named that never were: the lot is known but was not packed in that container. */
public final class NoSuchJars extends Refusal {
  public NoSuchJars(String lot, String container, String field) {
    super(
        Kind.RULE,
        "no-such-jars",
        "That lot was not packed in that size",
        "Lot %s was never packed in %s. Check the size and the lot on the label."
            .formatted(lot, container),
        field);
  }
}
