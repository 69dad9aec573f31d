package org.barreltally.supplies;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.supplies.SupplyMovement.Kind;
import org.barreltally.supplies.internal.SupplyBook;
import org.barreltally.supplies.internal.SupplyBook.Balance;
import org.barreltally.supplies.internal.SupplyHistory;
import org.barreltally.supplies.internal.SupplyRows;

/**
 * What packing uses up. A count stands for the end of its day: what is entered later but happened
 * on an earlier day was in it already and changes nothing; on the same day, what is entered after
 * it happened after it.
 */
@ApplicationScoped
public class Supplies {

  private final Containers containers;
  private final SupplyRows rows;
  private final SupplyBook book;
  private final SupplyHistory history;
  private final Days days;

  Supplies(
      Containers containers, SupplyRows rows, SupplyBook book, SupplyHistory history, Days days) {
    this.containers = containers;
    this.rows = rows;
    this.book = book;
    this.history = history;
    this.days = days;
  }

  /**
   * Adds a supply; it is not counted yet.
   *
   * @throws org.barreltally.refusal.InvalidField naming every field that needs mending
   * @throws SupplyExists if the code is taken
   */
  @Transactional
  public SupplyStanding add(Supply said) {
    Supply supply = SupplyRules.checked(said);
    if (supply.container() != null) {
      containers.named(supply.container(), "container");
    }
    if (!rows.add(supply)) {
      throw new SupplyExists(supply.code());
    }
    return new SupplyStanding(supply, null);
  }

  /**
   * @throws UnknownSupply if there is none of that code
   */
  @Transactional
  public SupplyStanding at(String code) {
    return rows.find(code).orElseThrow(() -> new UnknownSupply(code));
  }

  /** Supplies by code, after a code (or null), at most so many. */
  @Transactional
  public List<SupplyStanding> list(String after, int limit) {
    return rows.list(after, limit);
  }

  /** What happened to a supply, in order, after a number (0 to begin), at most so many. */
  @Transactional
  public List<SupplyMovement> history(String code, long after, int limit) {
    at(code);
    return history.of(code, after, limit);
  }

  /**
   * Some came.
   *
   * @param count pieces, 1 to 10,000,000
   */
  @Transactional
  public SupplyMovement receive(String code, LocalDate on, Long count, String note) {
    long pieces = SupplyRules.pieces(count, 1);
    SupplyRules.note(note);
    Balance balance = opened(code, on);
    long change = book.countedAfter(code, on) ? 0 : pieces;
    return book.write(code, balance, Kind.RECEIPT, on, pieces, change, null, note);
  }

  /**
   * It was counted: the book follows, and keeps the difference.
   *
   * @param count pieces, 0 to 10,000,000
   */
  @Transactional
  public SupplyMovement count(String code, LocalDate on, Long count) {
    long pieces = SupplyRules.pieces(count, 0);
    Balance balance = opened(code, on);
    long then = balance.onHand() - book.changedAfter(code, on);
    long change = book.countedAfter(code, on) ? 0 : pieces - then;
    return book.write(code, balance, Kind.COUNT, on, pieces, change, null, null);
  }

  private Balance opened(String code, LocalDate on) {
    days.happened(on, "on");
    at(code);
    book.begin(code);
    return book.locked(Set.of(code)).get(code);
  }
}
