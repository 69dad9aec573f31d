package org.barreltally.shops;

import java.time.LocalDate;
import org.barreltally.refusal.Refusal;

/** Terms with a shop do not reach back to that day. */
public final class NoTermsYet extends Refusal {
  public NoTermsYet(String shop, LocalDate on) {
    super(
        Kind.RULE,
        "no-terms-yet",
        "No terms on that day",
        "Nothing was agreed with %s for %s. Agree terms that begin on that day or before."
            .formatted(shop, on),
        "on");
  }
}
