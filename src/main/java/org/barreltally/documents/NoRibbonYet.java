package org.barreltally.documents;

import org.barreltally.refusal.Refusal;

/** A ribbon was to stand on the labels of a lot that has none. */
public final class NoRibbonYet extends Refusal {
  public NoRibbonYet(String lot, String container) {
    super(
        Kind.RULE,
        "no-ribbon-yet",
        "No ribbon to print",
        "No show is known to have given lot %s in %s a ribbon. Enter the award first, or leave it out."
            .formatted(lot, container),
        "award");
  }
}
