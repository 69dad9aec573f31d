package org.barreltally.documents;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** Letters of a recall are asked for, and nobody is known by name who holds something of it. */
public final class NobodyToWrite extends Refusal {
  public NobodyToWrite(UUID recall, Integer holder) {
    super(
        Kind.CONFLICT,
        "nobody-to-write",
        "Nobody to write to",
        holder == null
            ? "Nobody is known by name who holds something of recall %s. See /api/recalls/%s for what the public has."
                .formatted(recall, recall)
            : "Recall %s has no holder %d. See /api/recalls/%s for their numbers."
                .formatted(recall, holder, recall),
        holder == null ? null : "holder");
  }
}
