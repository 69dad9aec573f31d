package org.barreltally.sales;

import java.util.Locale;
import org.barreltally.pricing.Audience;

/** By which way jars are sold. */
public enum Channel {
  /** At a show's table. */
  TABLE,
  /** At the farm gate. */
  FARM,
  POST,
  WHOLESALE;

  /** {@code table, farm, post, wholesale}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The channel with that code, which the database guarantees to exist. */
  public static Channel of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT));
  }

  /** Whose price list holds where no other was named. */
  public Audience audience() {
    return switch (this) {
      case TABLE -> Audience.SHOW;
      case FARM, POST -> Audience.RETAIL;
      case WHOLESALE -> Audience.WHOLESALE;
    };
  }
}
