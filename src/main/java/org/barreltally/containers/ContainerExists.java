package org.barreltally.containers;

import org.barreltally.refusal.Refusal;

/** A container was to be added under a code that is taken. */
public final class ContainerExists extends Refusal {
  public ContainerExists(String code) {
    super(
        Kind.CONFLICT,
        "container-exists",
        "This code is taken",
        "There is a container "
            + code
            + " already. Its contents stay as they are; choose another"
            + " code for another size.",
        "code");
  }
}
