package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.shows.internal.ShowLog;
import org.barreltally.shows.internal.ShowRow;
import org.barreltally.shows.internal.ToDoLog;

/**
 * Calls shows off. What was promised is free again, what was paid stays a cost, and jars that are
 * out come home by a count.
 */
@ApplicationScoped
public class CallingOff {

  /**
   * What calling off did.
   *
   * @param freed jars that can be promised again
   * @param kept what was paid and did not come back
   * @param onTable jars that still have to come home
   */
  public record CalledOff(
      UUID show,
      ShowState state,
      String reason,
      List<Promises.Line> freed,
      Money kept,
      long onTable,
      List<ToDo> toDos) {}

  private final Shows shows;
  private final Stepping stepping;
  private final Promises promises;
  private final Payments payments;
  private final TableBook tables;
  private final ShowLog log;
  private final ToDoLog toDos;
  private final Days days;

  CallingOff(
      Shows shows,
      Stepping stepping,
      Promises promises,
      Payments payments,
      TableBook tables,
      ShowLog log,
      ToDoLog toDos,
      Days days) {
    this.shows = shows;
    this.stepping = stepping;
    this.promises = promises;
    this.payments = payments;
    this.tables = tables;
    this.log = log;
    this.toDos = toDos;
    this.days = days;
  }

  /**
   * Calls a show off.
   *
   * @param refund what the organiser gave back; null for nothing
   * @throws StateOutOfOrder if it was declined, is over, or was called off already
   * @throws ShowChangedSince if it changed since it was read
   */
  @Transactional
  public CalledOff callOff(UUID id, Set<String> versions, String reason, Money refund) {
    Stepping.reason(reason, true);
    ShowRow row = shows.locked(id, versions);
    Show before = shows.asShow(row);
    if (!before.state().next().contains(ShowState.CALLED_OFF)) {
      throw new StateOutOfOrder(before, ShowState.CALLED_OFF);
    }
    Money paid = payments.paid(id);
    if (refund != null) {
      refunded(id, refund, paid);
    }
    Show show = stepping.become(row, ShowState.CALLED_OFF, reason);
    List<Promises.Line> freed = promises.releaseAll(show);
    List<TableLine> out = tables.of(show);
    return new CalledOff(
        id,
        show.state(),
        reason,
        freed,
        payments.paid(id),
        out.stream().mapToLong(TableLine::onTable).sum(),
        out.stream().anyMatch(TableLine::cameThere) ? List.of(checkLabels(id)) : List.of());
  }

  private void refunded(UUID id, Money refund, Money paid) {
    if (!refund.currency().equals(paid.currency())) {
      throw new CurrencyMismatch(refund.currency(), paid.currency(), "refund");
    }
    if (refund.signum() < 0 || paid.minus(refund).signum() < 0) {
      throw new InvalidField(
          "refund", "Give what came back, from nothing to the " + paid + " that were paid.");
    }
    if (refund.signum() > 0) {
      log.pay(id, days.today(), Money.none(refund.currency()).minus(refund), "Refund, called off");
    }
  }

  private ToDo checkLabels(UUID id) {
    return toDos.add(
        id,
        ToDo.Kind.CHECK_LABELS,
        null,
        null,
        null,
        "The show was called off with jars packed. Count them home, and look for wet or loose labels before they go on the shelf.");
  }
}
