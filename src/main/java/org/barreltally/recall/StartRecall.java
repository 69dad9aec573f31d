package org.barreltally.recall;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/**
 * A lot is called back. Name the lot, or the barrel it is in or was last in.
 *
 * @param rehearsal true to find everything and hold nothing; null for false
 */
public record StartRecall(
    @Size(max = 20, message = "Give the lot's code, at most 20 characters.") String lot,
    @Size(max = 16, message = "Give the barrel's tag, at most 16 characters.") String barrel,
    @NotBlank(message = StartRecall.REASON) @Size(max = 500, message = StartRecall.REASON)
        String reason,
    Boolean rehearsal) {

  static final String REASON = "Say why, in at most 500 characters.";
}
