package org.barreltally.ledger;

import org.barreltally.refusal.Refusal;

/** More would leave a place than the book says is there. */
public final class NotThatMuchThere extends Refusal {

  private final String place;
  private final String lot;
  private final String container;
  private final long there;
  private final long wanted;

  /**
   * @param container null for syrup in bulk
   * @param there pieces, or grams of bulk syrup, on the book
   * @param wanted pieces or grams that were to leave
   */
  public NotThatMuchThere(String place, String lot, String container, long there, long wanted) {
    super(
        Kind.CONFLICT,
        "short-of-stock",
        "Not that much there",
        container == null
            ? "%s holds %d g of lot %s; %d g cannot leave. Weigh again or draw less."
                .formatted(place, there, lot, wanted)
            : "%s holds %d × %s of lot %s; %d cannot leave. Count again or move fewer."
                .formatted(place, there, container, lot, wanted));
    this.place = place;
    this.lot = lot;
    this.container = container;
    this.there = there;
    this.wanted = wanted;
  }

  public String place() {
    return place;
  }

  public String lot() {
    return lot;
  }

  public String container() {
    return container;
  }

  public long there() {
    return there;
  }

  public long wanted() {
    return wanted;
  }
}
