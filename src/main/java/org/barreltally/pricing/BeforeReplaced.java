package org.barreltally.pricing;

import java.time.LocalDate;
import org.barreltally.refusal.Refusal;

/** A new version begins before the list it replaces. */
public final class BeforeReplaced extends Refusal {
  public BeforeReplaced(PriceList replaced, LocalDate from) {
    super(
        Kind.RULE,
        "before-replaced",
        "A new version begins no earlier",
        "“%s”, version %d, is valid from %s; a version from %s would not replace it. Begin no earlier."
            .formatted(replaced.name(), replaced.version(), replaced.validFrom(), from),
        "validFrom");
  }
}
