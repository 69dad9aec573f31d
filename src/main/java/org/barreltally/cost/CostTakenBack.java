package org.barreltally.cost;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** A cost was to be taken back that was taken back before. */
public final class CostTakenBack extends Refusal {
  public CostTakenBack(UUID id) {
    super(
        Kind.CONFLICT,
        "cost-taken-back",
        "It was taken back before",
        "The cost " + id + " was taken back before. Enter the right one anew.");
  }
}
