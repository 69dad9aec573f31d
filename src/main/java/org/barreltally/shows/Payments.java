package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;
import org.barreltally.shows.internal.ShowLog;
import org.barreltally.shows.internal.ShowRow;

/** What was paid to the organisers of shows. */
@ApplicationScoped
public class Payments {

  private static final int NOTE_MAX = 500;

  private final Shows shows;
  private final ShowLog log;
  private final FarmSettings settings;
  private final Days days;

  Payments(Shows shows, ShowLog log, FarmSettings settings, Days days) {
    this.shows = shows;
    this.log = log;
    this.settings = settings;
    this.days = days;
  }

  /**
   * Notes a payment, or (below zero) what came back. An accepted show whose flat fee is paid in
   * full becomes paid.
   *
   * @param on the day, null for today
   * @throws ShowChangedSince if the show changed since it was read
   */
  @Transactional
  public Payment pay(UUID show, Set<String> versions, Money amount, LocalDate on, String note) {
    if (amount == null || amount.signum() == 0) {
      throw new InvalidField("amount", "Give what was paid; below zero for what came back.");
    }
    if (!amount.currency().equals(currency())) {
      throw new CurrencyMismatch(amount.currency(), currency(), "amount");
    }
    if (note != null && note.length() > NOTE_MAX) {
      throw new InvalidField("note", "Keep it within " + NOTE_MAX + " characters.");
    }
    LocalDate day = on == null ? days.today() : days.happened(on, "on");
    ShowRow row = shows.locked(show, versions);
    Payment payment = log.pay(show, day, amount, note);
    boolean inFull = outstanding(shows.asShow(row)).signum() <= 0;
    boolean becomes = row.state() == ShowState.ACCEPTED && inFull && amount.signum() > 0;
    if (becomes) {
      row.become(ShowState.PAID);
      log.step(show, ShowState.PAID, null);
    }
    row.touched(days.now(), becomes);
    return payment;
  }

  /** What was paid so far, less what came back. */
  @Transactional
  public Money paid(UUID show) {
    return log.payments(show).stream()
        .map(Payment::amount)
        .reduce(Money::plus)
        .orElse(Money.none(currency()));
  }

  /** All payments for a show, in the order they were recorded. */
  @Transactional
  public List<Payment> of(UUID show) {
    return log.payments(show);
  }

  /** What of the flat fee is not paid yet; nothing or less if it is. */
  Money outstanding(Show show) {
    Booth booth = show.booking().booth();
    Money fee = booth == null || booth.fee() == null ? Money.none(currency()) : booth.fee();
    return fee.minus(paid(show.id()));
  }

  /** Notes that the rest of the flat fee was paid today. */
  void settleFee(Show show) {
    Money rest = outstanding(show);
    if (rest.signum() > 0) {
      log.pay(show.id(), days.today(), rest, "Rest of the fee, when the show was marked as paid");
    }
  }

  private String currency() {
    return settings.now().said().currency();
  }
}
