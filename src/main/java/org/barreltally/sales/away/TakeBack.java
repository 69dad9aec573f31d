package org.barreltally.sales.away;

import java.time.Instant;
import java.util.List;
import org.barreltally.pricing.Money;

/**
 * Jars that a buyer brought or sent back.
 *
 * @param refund what was paid back; null for nothing
 * @param at when; null for now
 */
public record TakeBack(List<Line> lines, String reason, Money refund, Instant at) {

  /** Jars of one size and lot, as the label says. */
  public record Line(String container, String lot, Long count) {}
}
