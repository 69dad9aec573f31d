package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.Reservations;

/** Takes a recipient out of an order: exactly his jars become free. */
@ApplicationScoped
public class Cancelling {

  private final GiftOrders orders;
  private final StepBook book;
  private final Promises promises;
  private final Ledger ledger;
  private final Days days;

  Cancelling(GiftOrders orders, StepBook book, Promises promises, Ledger ledger, Days days) {
    this.orders = orders;
    this.book = book;
    this.promises = promises;
    this.ledger = ledger;
    this.days = days;
  }

  /**
   * Cancels; what was picked goes back to the cool room.
   *
   * @throws WrongStep if it was sent, or came back and was not looked at yet
   */
  @Transactional
  public void cancel(UUID id, Set<String> versions, int n, String reason) {
    Reason.check(reason);
    GiftOrder order = orders.opened(id, versions);
    GiftLine line = order.line(n);
    switch (line.state()) {
      case SENT, DELIVERED ->
          throw new WrongStep(n, line.state(), Step.CANCEL, "If it comes back, say return.");
      case CANCELLED -> throw new WrongStep(n, line.state(), Step.CANCEL, "It is cancelled.");
      default -> requireInspected(order, line);
    }
    List<GiftJars> moved = new ArrayList<>();
    Movement.Builder movement =
        Movement.of(MovementKind.RELOCATION, days.now()).because("Gift recipient cancelled");
    for (GiftJars jars : order.jars(n, Stage.SHELF)) {
      movement.move(Stage.SHELF.place(), PlaceCode.COOL_ROOM, jars.item(), jars.pieces());
      moved.add(jars.times(-1));
    }
    Done done =
        Done.of(book.id(), line, Step.CANCEL, RecipientState.CANCELLED, days.today())
            .because(reason);
    if (!movement.movesNothing()) {
      done = done.moving(ledger.post(movement.build()));
    }
    List<Promise> freed = order.promises(n);
    promises.end(freed, Reservations.End.RELEASED);
    book.keep(
        id,
        List.of(new StepBook.Entry(done, freed.stream().map(p -> p.times(-1)).toList(), moved)));
  }

  private static void requireInspected(GiftOrder order, GiftLine line) {
    if (!order.jars(line.n(), Stage.BACK).isEmpty()) {
      throw new WrongStep(line.n(), line.state(), Step.CANCEL, "Inspect what came back first.");
    }
  }
}
