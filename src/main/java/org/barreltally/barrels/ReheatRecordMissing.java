package org.barreltally.barrels;

import org.barreltally.refusal.Refusal;

/** A barrel was topped up, but nobody said that its contents were heated again. */
public final class ReheatRecordMissing extends Refusal {
  public ReheatRecordMissing() {
    super(
        Kind.RULE,
        "reheat-record-missing",
        "Was it heated again?",
        "A part-filled barrel topped up hot is a common cause of spoilage; extension advice is to repack the whole barrel at 150 to 180 °F (Ohio State Extension). Give reheat: the temperature the whole reached, and by whom it was read. Hot syrup scalds: gloves, apron, closed shoes.",
        "reheat");
  }
}
