package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.TransactionSynchronizationRegistry;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.gifts.internal.GoodsRows;
import org.barreltally.gifts.internal.StepRows;
import org.barreltally.ledger.AfterPosting;
import org.barreltally.ledger.CannotBeTakenBack;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Reservations;

/**
 * Takes back the last step of a recipient by a reversal: jars go back where they were, promises
 * that ended are made again, and the mailing no longer counts. Nothing is deleted.
 */
@ApplicationScoped
public class Undoing implements AfterPosting {

  private static final String UNDERWAY = Undoing.class.getName();

  private final GiftOrders orders;
  private final StepBook book;
  private final Promises promises;
  private final StepRows steps;
  private final GoodsRows goods;
  private final Ledger ledger;
  private final Days days;
  private final TransactionSynchronizationRegistry transaction;

  Undoing(
      GiftOrders orders,
      StepBook book,
      Promises promises,
      StepRows steps,
      GoodsRows goods,
      Ledger ledger,
      Days days,
      TransactionSynchronizationRegistry transaction) {
    this.orders = orders;
    this.book = book;
    this.promises = promises;
    this.steps = steps;
    this.goods = goods;
    this.ledger = ledger;
    this.days = days;
    this.transaction = transaction;
  }

  /**
   * @throws NothingToUndo if nothing was done with the recipient
   * @throws CannotPromise if what was let go is promised to others meanwhile
   * @throws org.barreltally.ledger.NotThatMuchThere if the jars have gone elsewhere meanwhile
   */
  @Transactional
  public void undo(UUID id, Set<String> versions, int n, String reason) {
    Reason.require(reason);
    GiftOrder order = orders.opened(id, versions);
    GiftLine line = order.line(n);
    Done last = last(order, n);
    Done undo =
        Done.of(book.id(), line, Step.UNDO, last.was(), days.today())
            .because(reason)
            .undoing(last.id());
    if (last.movement() != null) {
      transaction.putResource(UNDERWAY, last.movement());
      undo = undo.moving(ledger.reverse(last.movement(), reason));
    }
    List<Promise> was = goods.promisesOf(last.id());
    List<Promise> made = was.stream().filter(p -> p.pieces() > 0).toList();
    promises.end(made, Reservations.End.RELEASED);
    List<Promise> now = new ArrayList<>(made.stream().map(p -> p.times(-1)).toList());
    now.addAll(
        promises.reserveAgain(
            was.stream().filter(p -> p.pieces() < 0).map(p -> p.times(-1)).toList()));
    List<GiftJars> back = goods.jarsOf(last.id()).stream().map(j -> j.times(-1)).toList();
    book.keep(id, List.of(new StepBook.Entry(undo, now, back)));
  }

  private static Done last(GiftOrder order, int n) {
    Set<UUID> undone =
        order.done().stream()
            .filter(done -> done.undoes() != null)
            .map(Done::undoes)
            .collect(Collectors.toSet());
    return order.done().stream()
        .filter(done -> done.n() != null && done.n() == n)
        .filter(done -> done.step() != Step.UNDO && !undone.contains(done.id()))
        .max(Comparator.comparing(done -> order.done().indexOf(done)))
        .orElseThrow(() -> new NothingToUndo(n));
  }

  /** A movement of a gift order is taken back by undoing its step, or the two would disagree. */
  @Override
  public void reversed(UUID original) {
    boolean ours = original.equals(transaction.getResource(UNDERWAY));
    if (!ours && steps.standing(original).isPresent()) {
      throw new CannotBeTakenBack(
          original, "it is a step of a gift order; undo that step at its recipient");
    }
  }
}
