package org.barreltally.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/**
 * A body that says nothing but why.
 *
 * @param reason 1 to {@value #REASON_MAX} characters
 */
public record Because(
    @NotBlank(message = MEND) @Size(max = REASON_MAX, message = MEND) String reason) {

  /** Characters of a reason. */
  public static final int REASON_MAX = 500;

  /** How to mend a reason that is missing or too long. */
  public static final String MEND = "Say why, in at most 500 characters.";
}
