package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;

/** Picks the jars of recipients, which fixes their lots: the oldest packed first, never held. */
@ApplicationScoped
public class Picking {

  /**
   * How jars are picked.
   *
   * @param on today if null
   * @param place the cool room if null
   */
  public record How(LocalDate on, String place) {}

  private final GiftOrders orders;
  private final Shelves shelves;
  private final Promises promises;
  private final StepBook book;
  private final Ledger ledger;
  private final Days days;

  Picking(
      GiftOrders orders,
      Shelves shelves,
      Promises promises,
      StepBook book,
      Ledger ledger,
      Days days) {
    this.orders = orders;
    this.shelves = shelves;
    this.promises = promises;
    this.book = book;
    this.ledger = ledger;
    this.days = days;
  }

  /**
   * Picks for some recipients, or for all who are confirmed.
   *
   * @param numbers null for all
   * @throws WrongStep if one is past it
   * @throws NotReserved if nothing was promised to one
   * @throws NotOnTheShelf if too few stand there; nothing is picked then
   */
  @Transactional
  public void pick(UUID id, Set<String> versions, List<Integer> numbers, How how) {
    GiftOrder order = orders.opened(id, versions);
    List<GiftLine> lines = book.chosen(order, numbers, RecipientState.CONFIRMED);
    LocalDate on = how.on() == null ? days.today() : days.happened(how.on(), "on");
    Set<Jar> jars = new HashSet<>();
    order.promises().forEach(p -> jars.add(p.jar()));
    for (GiftLine line : lines) {
      check(order, line);
      if (line.state() == RecipientState.RETURNED) {
        Needs.missing(order, line).forEach(need -> jars.addAll(need.choices()));
      }
    }
    Shelf shelf = shelves.open(how.place(), jars);
    List<StepBook.Entry> entries = new ArrayList<>();
    for (GiftLine line : lines) {
      entries.add(pick(order, line, on, shelf));
    }
    book.keep(id, entries);
  }

  private static void check(GiftOrder order, GiftLine line) {
    boolean again =
        line.state() == RecipientState.RETURNED && order.jars(line.n(), Stage.BACK).isEmpty();
    if (line.state() != RecipientState.CONFIRMED && !again) {
      throw new WrongStep(
          line.n(),
          line.state(),
          Step.PICK,
          line.state() == RecipientState.RETURNED
              ? "Inspect what came back first."
              : "Only what is confirmed is picked.");
    }
    if (line.state() == RecipientState.CONFIRMED && order.promises(line.n()).isEmpty()) {
      throw new NotReserved(line.n());
    }
  }

  private StepBook.Entry pick(GiftOrder order, GiftLine line, LocalDate on, Shelf shelf) {
    List<Promise> fresh =
        line.state() == RecipientState.RETURNED
            ? promises.reserve(Needs.missing(order, line))
            : List.of();
    List<Promise> toPick =
        line.state() == RecipientState.RETURNED ? fresh : order.promises(line.n());
    List<GiftJars> taken = shelf.take(toPick);
    Movement.Builder movement =
        Movement.of(MovementKind.RELOCATION, days.during(on)).because("Picked for a gift order");
    taken.forEach(
        jars -> movement.move(shelf.place(), Stage.SHELF.place(), jars.item(), jars.pieces()));
    Done done = Done.of(book.id(), line, Step.PICK, RecipientState.PICKED, on);
    return new StepBook.Entry(
        movement.movesNothing() ? done : done.moving(ledger.post(movement.build())), fresh, taken);
  }
}
