package org.barreltally.netcontents;

import java.util.Collection;
import org.barreltally.refusal.Refusal;

/** A size was weighed that the run did not fill. */
public final class ContainerNotInRun extends Refusal {
  public ContainerNotInRun(String lot, String container, Collection<String> filled) {
    super(
        Kind.RULE,
        "container-not-in-run",
        "That size was not filled",
        "Lot %s was not packed in %s, but in %s. Check the label of what was weighed."
            .formatted(lot, container, String.join(", ", filled)),
        "container");
  }
}
