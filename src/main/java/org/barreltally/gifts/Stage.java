package org.barreltally.gifts;

import java.util.Locale;
import org.barreltally.ledger.PlaceCode;

/** Where the jars of a recipient stand. */
public enum Stage {
  /** Picked, at home. */
  SHELF("gift-shelf"),
  /** Gone to the recipient. */
  SENT(PlaceCode.CUSTOMER),
  /** Come back and not inspected yet. */
  BACK("gift-returns");

  private final String place;

  Stage(String place) {
    this.place = place;
  }

  /** {@code shelf, sent, back}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The place of the ledger. */
  public String place() {
    return place;
  }

  /** The stage with this code, which the database guarantees to exist. */
  public static Stage of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT));
  }
}
