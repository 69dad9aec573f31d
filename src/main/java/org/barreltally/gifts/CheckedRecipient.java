package org.barreltally.gifts;

import java.time.LocalDate;
import org.barreltally.pricing.Money;

/**
 * A recipient whose fields were found right.
 *
 * @param address null where it is not posted and none was said
 * @param count boxes, at least one
 * @param postage for one mailing; null where none was said
 * @param latestSend worked back from the wanted-by date; null without a carrier's zone
 */
public record CheckedRecipient(
    String name,
    Address address,
    GiftBox box,
    int count,
    String card,
    Delivery delivery,
    Money postage,
    LocalDate wantedBy,
    LocalDate sendBy,
    LocalDate latestSend,
    String carrier) {

  /** Goods and, where it is told already, postage. */
  Money price() {
    Money goods = box.price().times(java.math.BigDecimal.valueOf(count));
    return postage == null ? goods : goods.plus(postage);
  }
}
