package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.Reservations;
import org.barreltally.lots.LotHeld;
import org.barreltally.lots.Lots;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;

/** Packs boxes, sends them on their way, and notes that they arrived. */
@ApplicationScoped
public class Sending {

  /**
   * How boxes are sent.
   *
   * @param on today if null
   * @param carrier as ordered if null
   * @param postage of this mailing; as ordered if null
   * @param paidBy the buyer if null
   */
  public record How(LocalDate on, String carrier, Money postage, Payer paidBy) {}

  private final GiftOrders orders;
  private final StepBook book;
  private final Promises promises;
  private final Lots lots;
  private final Ledger ledger;
  private final Days days;

  Sending(
      GiftOrders orders, StepBook book, Promises promises, Lots lots, Ledger ledger, Days days) {
    this.orders = orders;
    this.book = book;
    this.promises = promises;
    this.lots = lots;
    this.ledger = ledger;
    this.days = days;
  }

  /**
   * Packs the boxes of some recipients, or of all who are picked.
   *
   * @param numbers null for all
   * @throws WrongStep if one is not at that step
   * @throws LotHeld if a lot was held since it was picked
   */
  @Transactional
  public void pack(UUID id, Set<String> versions, List<Integer> numbers, LocalDate said) {
    GiftOrder order = orders.opened(id, versions);
    LocalDate on = day(said);
    List<StepBook.Entry> entries = new ArrayList<>();
    for (GiftLine line : book.chosen(order, numbers, RecipientState.PICKED)) {
      requireReady(order, line, RecipientState.PICKED, Step.PACK, "Pick it first.");
      entries.add(
          new StepBook.Entry(
              Done.of(book.id(), line, Step.PACK, RecipientState.PACKED, on),
              List.of(),
              List.of()));
    }
    book.keep(id, entries);
  }

  /**
   * Sends the boxes of some recipients, or of all who are packed. What came back and is whole is
   * sent again from here, at the buyer's cost unless told otherwise.
   *
   * @param numbers null for all
   * @throws WrongStep if one is not at that step
   * @throws LotHeld if a lot was held since it was picked
   */
  @Transactional
  public void send(UUID id, Set<String> versions, List<Integer> numbers, How how) {
    GiftOrder order = orders.opened(id, versions);
    Reason.carrier(how.carrier());
    LocalDate on = day(how.on());
    if (how.postage() != null
        && (how.postage().signum() < 0
            || !how.postage().currency().equals(order.head().currency()))) {
      throw new InvalidField(
          "postage", "Give it in " + order.head().currency() + ", not less than nothing.");
    }
    List<StepBook.Entry> entries = new ArrayList<>();
    for (GiftLine line : book.chosen(order, numbers, RecipientState.PACKED)) {
      requireReady(order, line, RecipientState.PACKED, Step.SEND, "Pick and pack it first.");
      Done done =
          Done.of(book.id(), line, Step.SEND, RecipientState.SENT, on)
              .mailed(
                  how.postage() == null ? line.postage() : how.postage(),
                  how.paidBy() == null ? Payer.BUYER : how.paidBy(),
                  how.carrier() == null ? line.carrier() : how.carrier());
      entries.add(leave(order, line, done));
    }
    book.keep(id, entries);
  }

  /**
   * The boxes arrived, or were collected or handed over.
   *
   * @throws WrongStep if they were not sent, nor are packed to be fetched or carried
   */
  @Transactional
  public void deliver(UUID id, Set<String> versions, List<Integer> numbers, LocalDate said) {
    GiftOrder order = orders.opened(id, versions);
    LocalDate on = day(said);
    List<StepBook.Entry> entries = new ArrayList<>();
    for (GiftLine line : book.chosen(order, numbers, RecipientState.SENT)) {
      Done done = Done.of(book.id(), line, Step.DELIVER, RecipientState.DELIVERED, on);
      if (line.state() == RecipientState.PACKED && line.delivery() != Delivery.POST) {
        requireReady(order, line, RecipientState.PACKED, Step.DELIVER, "");
        entries.add(leave(order, line, done));
      } else if (line.state() == RecipientState.SENT) {
        entries.add(new StepBook.Entry(done, List.of(), List.of()));
      } else {
        throw new WrongStep(line.n(), line.state(), Step.DELIVER, "Send it first.");
      }
    }
    book.keep(id, entries);
  }

  /** The jars leave the book to the recipient, and their promise is kept. */
  private StepBook.Entry leave(GiftOrder order, GiftLine line, Done done) {
    List<GiftJars> shelf = order.jars(line.n(), Stage.SHELF);
    Movement.Builder movement = Movement.of(MovementKind.GIFT, days.during(done.on()));
    List<GiftJars> moved = new ArrayList<>();
    for (GiftJars jars : shelf) {
      movement.move(Stage.SHELF.place(), Stage.SENT.place(), jars.item(), jars.pieces());
      moved.add(jars.times(-1));
      moved.add(jars.at(Stage.SENT));
    }
    UUID posted = ledger.post(movement.build());
    List<Promise> kept = order.promises(line.n());
    promises.end(kept, Reservations.End.TAKEN);
    return new StepBook.Entry(
        done.moving(posted), kept.stream().map(p -> p.times(-1)).toList(), moved);
  }

  private void requireReady(
      GiftOrder order, GiftLine line, RecipientState ready, Step step, String mend) {
    boolean again =
        line.state() == RecipientState.RETURNED
            && order.jars(line.n(), Stage.BACK).isEmpty()
            && Needs.missing(order, line).isEmpty();
    if (line.state() != ready && !again) {
      throw new WrongStep(
          line.n(),
          line.state(),
          step,
          line.state() == RecipientState.RETURNED
              ? "Inspect what came back, and pick what is missing."
              : mend);
    }
    order.jars(line.n(), Stage.SHELF).stream()
        .map(GiftJars::lot)
        .distinct()
        .filter(lot -> lots.at(lot).held())
        .findFirst()
        .ifPresent(
            lot -> {
              throw new LotHeld(lot, null);
            });
  }

  private LocalDate day(LocalDate said) {
    return said == null ? days.today() : days.happened(said, "on");
  }
}
