package org.barreltally.gifts.pages;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.barreltally.gifts.RecipientState;
import org.barreltally.gifts.rest.OrderView;
import org.barreltally.gifts.rest.OrderView.RecipientView;
import org.barreltally.pricing.Money;

/**
 * A gift order in a list.
 *
 * @param buyer null once the name was removed
 * @param nextSend the earliest day on which one of its boxes has to leave; null where none waits
 * @param states how many recipients are at each state, in the order of their way
 */
public record OrderRow(
    UUID id,
    String buyer,
    LocalDate nextSend,
    boolean late,
    int recipients,
    List<StateCount> states,
    boolean reserved,
    Money total,
    Money balance) {

  /** So many recipients at a state. */
  public record StateCount(RecipientState state, long count) {}

  static OrderRow of(OrderView order, LocalDate today) {
    LocalDate next =
        order.recipients().stream()
            .filter(OrderRow::waits)
            .map(OrderRow::leaves)
            .filter(day -> day != null)
            .min(Comparator.naturalOrder())
            .orElse(null);
    return new OrderRow(
        order.id(),
        order.buyer() == null ? null : order.buyer().name(),
        next,
        next != null && next.isBefore(today),
        order.recipients().size(),
        counts(order),
        order.reserved(),
        order.total(),
        order.balance());
  }

  /** Whether the boxes of a recipient are still to leave. */
  static boolean waits(RecipientView recipient) {
    return recipient.state().compareTo(RecipientState.SENT) < 0
        || recipient.state() == RecipientState.RETURNED;
  }

  /** The day on which they have to leave: the carrier's latest where it is earlier. */
  static LocalDate leaves(RecipientView recipient) {
    LocalDate sendBy = recipient.sendBy();
    LocalDate latest = recipient.latestSend();
    return sendBy == null || latest != null && latest.isBefore(sendBy) ? latest : sendBy;
  }

  static List<StateCount> counts(OrderView order) {
    return Arrays.stream(RecipientState.values())
        .map(
            state ->
                new StateCount(
                    state, order.recipients().stream().filter(r -> r.state() == state).count()))
        .filter(count -> count.count() > 0)
        .toList();
  }

  /** Whether one of its recipients is at a state; the empty text lets every order through. */
  boolean has(String state) {
    return state.isEmpty() || states.stream().anyMatch(one -> one.state().code().equals(state));
  }

  /** Whether the buyer's name holds a text, in whatever case. */
  boolean isBy(String text) {
    return text.isEmpty()
        || buyer != null
            && buyer.toLowerCase(Locale.ROOT).contains(text.strip().toLowerCase(Locale.ROOT));
  }
}
