package org.barreltally.pricing;

import org.barreltally.refusal.Refusal;

/** A new version is for another audience than the list it replaces. */
public final class AnotherAudience extends Refusal {
  public AnotherAudience(PriceList replaced, Audience said) {
    super(
        Kind.RULE,
        "another-audience",
        "A new version keeps its audience",
        "“%s” is a %s list, this is a %s list. Enter it as a list of its own, without replaces."
            .formatted(replaced.name(), replaced.audience().code(), said.code()),
        "audience");
  }
}
