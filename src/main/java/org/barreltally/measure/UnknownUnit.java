package org.barreltally.measure;

import org.barreltally.refusal.Refusal;

/** A unit code that is none of ours. */
public final class UnknownUnit extends Refusal {
  private static final int SHOWN = 20;
  private final String given;

  public UnknownUnit(String given) {
    super(
        Kind.INVALID,
        "unknown-unit",
        "Unknown unit",
        "\"%s\" is no unit here. Use one of %s (capitals count)."
            .formatted(shortened(given), String.join(", ", Unit.codes())),
        "unit");
    this.given = given;
  }

  public String given() {
    return given;
  }

  private static String shortened(String text) {
    return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
  }
}
