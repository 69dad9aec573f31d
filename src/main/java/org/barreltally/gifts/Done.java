package org.barreltally.gifts;

import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * A step that was done.
 *
 * @param n number of the recipient; null for a step of the whole order
 * @param was state before; null for a step of the whole order
 * @param becomes state after it
 * @param movement of the ledger; null where no jars moved
 * @param undoes the step it takes back; null for none
 * @param postage of a mailing; null for none
 * @param paidBy who bears that postage; null for none
 */
public record Done(
    UUID id,
    Integer n,
    Step step,
    RecipientState was,
    RecipientState becomes,
    LocalDate on,
    UUID movement,
    UUID undoes,
    Money postage,
    Payer paidBy,
    String carrier,
    String reason) {

  /** The same with a movement. */
  Done moving(UUID posted) {
    return new Done(
        id, n, step, was, becomes, on, posted, undoes, postage, paidBy, carrier, reason);
  }

  static Done of(UUID id, GiftLine line, Step step, RecipientState becomes, LocalDate on) {
    return new Done(
        id, line.n(), step, line.state(), becomes, on, null, null, null, null, null, null);
  }

  Done because(String why) {
    return new Done(id, n, step, was, becomes, on, movement, undoes, postage, paidBy, carrier, why);
  }

  Done mailed(Money cost, Payer payer, String by) {
    return new Done(id, n, step, was, becomes, on, movement, undoes, cost, payer, by, reason);
  }

  Done undoing(UUID other) {
    return new Done(
        id, n, step, was, becomes, on, movement, other, postage, paidBy, carrier, reason);
  }
}
