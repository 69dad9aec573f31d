package org.barreltally.measure;

import java.util.Collection;
import org.barreltally.refusal.Refusal;

/** A jurisdiction whose limits are not in the tables. */
public final class UnknownJurisdiction extends Refusal {

  public UnknownJurisdiction(Collection<String> known) {
    super(
        Kind.INVALID,
        "unknown-jurisdiction",
        "Unknown jurisdiction",
        "The limits there are not known here. Give one of " + String.join(", ", known) + ".",
        "jurisdiction");
  }
}
