package org.barreltally.shows.settling;

import java.math.BigDecimal;
import org.barreltally.pricing.Money;

/**
 * What is said when a show is settled; each null for what is booked, or nothing.
 *
 * @param payouts cash paid out of the drawer
 * @param travel the cost of going there and back
 * @param helper pay for all hours
 * @param hours in which the table sold
 * @param note may be null
 */
public record SettleShow(Money payouts, Money travel, Money helper, BigDecimal hours, String note) {

  public static final SettleShow NOTHING = new SettleShow(null, null, null, null, null);
}
