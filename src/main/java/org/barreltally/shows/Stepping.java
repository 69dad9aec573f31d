package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.refusal.InvalidField;
import org.barreltally.shows.internal.ShowLog;
import org.barreltally.shows.internal.ShowRow;

/** Brings shows from one state to the next. */
@ApplicationScoped
public class Stepping {

  private static final int REASON_MAX = 500;

  private final Shows shows;
  private final ShowLog log;
  private final Clashes clashes;
  private final Payments payments;
  private final Promises promises;
  private final Days days;

  Stepping(
      Shows shows, ShowLog log, Clashes clashes, Payments payments, Promises promises, Days days) {
    this.shows = shows;
    this.log = log;
    this.clashes = clashes;
    this.payments = payments;
    this.promises = promises;
    this.days = days;
  }

  /**
   * Brings a show into a state that follows its own. Called off and settled have ways of their own.
   *
   * @param reason may be null
   * @throws ShowChangedSince if the show changed since it was read
   * @throws StateOutOfOrder if the state does not come next
   * @throws ShowClash if a declined show is taken up again while its helper, vehicle or kit is away
   */
  @Transactional
  public Show step(
      UUID id, Set<String> versions, ShowState to, String reason, boolean allowOverlap) {
    if (to == null || to == ShowState.CALLED_OFF || to == ShowState.SETTLED) {
      throw new InvalidField(
          "state",
          "Give one of accepted, declined, paid, packed, running, closed; call-off and settlement have addresses of their own.");
    }
    reason(reason, false);
    clashes.queue();
    ShowRow row = shows.locked(id, versions);
    Show before = shows.asShow(row);
    if (before.state() == to) {
      return before;
    }
    if (!before.state().next().contains(to)) {
      throw new StateOutOfOrder(before, to);
    }
    Show after = become(row, to, reason);
    if (!allowOverlap && Clashes.bindsMore(before, after)) {
      clashes.refuse(after);
    }
    if (to == ShowState.PAID) {
      payments.settleFee(after);
    }
    if (to == ShowState.DECLINED || to == ShowState.CLOSED) {
      promises.releaseAll(after);
    }
    return after;
  }

  /**
   * Notes that a show sells: an accepted, paid or packed one is running from now on. In any other
   * state nothing changes, for a sale told late is no less true.
   */
  @Transactional
  public void selling(UUID id) {
    ShowState seen = shows.at(id).state();
    if (seen.takesJars() && seen != ShowState.RUNNING) {
      ShowRow row = shows.locked(id, null);
      if (row.state().takesJars() && row.state() != ShowState.RUNNING) {
        become(row, ShowState.RUNNING, null);
      }
    }
  }

  /**
   * Notes that a closed show was settled; one that is settled stays so.
   *
   * @throws StateOutOfOrder if it was not counted back
   */
  @Transactional
  public Show settled(UUID id) {
    ShowRow row = shows.locked(id, null);
    if (row.state() == ShowState.SETTLED) {
      return shows.asShow(row);
    }
    if (row.state() != ShowState.CLOSED) {
      throw new StateOutOfOrder(shows.asShow(row), ShowState.SETTLED);
    }
    return become(row, ShowState.SETTLED, null);
  }

  /** Writes the state, whoever decided that it is right. */
  Show become(ShowRow row, ShowState state, String reason) {
    row.become(state);
    row.touched(days.now(), true);
    log.step(row.id(), state, reason);
    return shows.asShow(row);
  }

  static void reason(String reason, boolean needed) {
    if (needed && (reason == null || reason.isBlank())) {
      throw new InvalidField("reason", "Say why.");
    }
    if (reason != null && reason.length() > REASON_MAX) {
      throw new InvalidField("reason", "Say it in at most " + REASON_MAX + " characters.");
    }
  }
}
