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
import org.barreltally.ledger.PlaceCode;
import org.barreltally.lots.LotHeld;
import org.barreltally.lots.Lots;
import org.barreltally.refusal.InvalidField;

/**
 * Takes back parcels. What came back is own again but no stock: it can be neither promised nor sold
 * until somebody has looked at it.
 */
@ApplicationScoped
public class Returning {

  private final GiftOrders orders;
  private final StepBook book;
  private final Promises promises;
  private final Lots lots;
  private final Ledger ledger;
  private final Days days;

  Returning(
      GiftOrders orders, StepBook book, Promises promises, Lots lots, Ledger ledger, Days days) {
    this.orders = orders;
    this.book = book;
    this.promises = promises;
    this.lots = lots;
    this.ledger = ledger;
    this.days = days;
  }

  /**
   * A parcel came back.
   *
   * @param said null for today
   * @throws WrongStep if it was not sent
   */
  @Transactional
  public void takeBack(UUID id, Set<String> versions, int n, LocalDate said, String reason) {
    GiftOrder order = orders.opened(id, versions);
    GiftLine line = order.line(n);
    if (line.state() != RecipientState.SENT && line.state() != RecipientState.DELIVERED) {
      throw new WrongStep(n, line.state(), Step.RETURN, "Only what was sent comes back.");
    }
    Reason.check(reason);
    LocalDate on = said == null ? days.today() : days.happened(said, "on");
    Movement.Builder movement = Movement.of(MovementKind.GIFT_RETURN, days.during(on));
    List<GiftJars> moved = new ArrayList<>();
    for (GiftJars jars : order.jars(n, Stage.SENT)) {
      movement.move(Stage.SENT.place(), Stage.BACK.place(), jars.item(), jars.pieces());
      moved.add(jars.times(-1));
      moved.add(jars.at(Stage.BACK));
    }
    Done done =
        Done.of(book.id(), line, Step.RETURN, RecipientState.RETURNED, on)
            .because(reason)
            .moving(ledger.post(movement.build()));
    book.keep(id, List.of(new StepBook.Entry(done, List.of(), moved)));
  }

  /**
   * What came back was looked at: good jars wait to be sent again, or go to stock; broken ones are
   * written off.
   *
   * @throws WrongStep if nothing waits to be looked at
   * @throws InvalidField if good and broken do not add up to what came back
   * @throws LotHeld if a kept lot is held: put it to stock, where it stays held
   */
  @Transactional
  public void inspect(UUID id, Set<String> versions, int n, LocalDate said, Inspected found) {
    GiftOrder order = orders.opened(id, versions);
    GiftLine line = order.line(n);
    List<GiftJars> back = order.jars(n, Stage.BACK);
    if (line.state() != RecipientState.RETURNED || back.isEmpty()) {
      throw new WrongStep(n, line.state(), Step.INSPECT, "Nothing waits to be looked at.");
    }
    List<GiftJars> good = Inspection.good(back, found);
    LocalDate on = said == null ? days.today() : days.happened(said, "on");
    if (found.kept()) {
      requireNotHeld(good);
    }
    String to = found.kept() ? Stage.SHELF.place() : PlaceCode.COOL_ROOM;
    Movement.Builder movement =
        Movement.of(MovementKind.GIFT_RETURN, days.during(on)).because("Returned parcel inspected");
    List<GiftJars> moved = new ArrayList<>();
    for (int i = 0; i < back.size(); i++) {
      GiftJars jars = back.get(i);
      long whole = good.get(i).pieces();
      movement.move(Stage.BACK.place(), to, jars.item(), whole);
      movement.move(Stage.BACK.place(), PlaceCode.BROKEN, jars.item(), jars.pieces() - whole);
      moved.add(jars.times(-1));
      if (found.kept() && whole > 0) {
        moved.add(good.get(i).at(Stage.SHELF));
      }
    }
    UUID posted = ledger.post(movement.build());
    List<Promise> kept = found.kept() ? promises.reserveAgain(promised(good)) : List.of();
    Done done = Done.of(book.id(), line, Step.INSPECT, RecipientState.RETURNED, on).moving(posted);
    book.keep(id, List.of(new StepBook.Entry(done, kept, moved)));
  }

  private static List<Promise> promised(List<GiftJars> good) {
    return good.stream()
        .filter(jars -> jars.pieces() > 0)
        .map(jars -> new Promise(jars.n(), null, jars.jar(), jars.wanted(), jars.pieces()))
        .toList();
  }

  private void requireNotHeld(List<GiftJars> good) {
    good.stream()
        .map(GiftJars::lot)
        .distinct()
        .filter(lot -> lots.at(lot).held())
        .findFirst()
        .ifPresent(
            lot -> {
              throw new LotHeld(lot, "keep");
            });
  }
}
