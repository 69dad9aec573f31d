package org.barreltally.pricing;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** A price list is named that there is none of. */
public final class UnknownPriceList extends Refusal {

  /** The address names the list. */
  public UnknownPriceList(UUID id) {
    super(Kind.NOT_FOUND, "unknown-price-list", "No such price list", detail(id));
  }

  /** A field of the request names the list. */
  public UnknownPriceList(UUID id, String field) {
    super(Kind.INVALID, "unknown-price-list", "No such price list", detail(id), field);
  }

  private static String detail(UUID id) {
    return "There is no price list " + id + ". List them at /api/price-lists, or enter it there.";
  }
}
