package org.barreltally.sales;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Ledger;
import org.barreltally.sales.internal.SaleQuery;

/** The sales of the book, to be read and undone. */
@ApplicationScoped
public class Sales {

  private final SaleQuery query;
  private final Ledger ledger;

  Sales(SaleQuery query, Ledger ledger) {
    this.query = query;
    this.ledger = ledger;
  }

  /**
   * The sale an address names.
   *
   * @throws UnknownSale if there is none of that id
   */
  @Transactional
  public Sale at(UUID id) {
    return all(List.of(id)).stream().findFirst().orElseThrow(() -> new UnknownSale(id));
  }

  /** The sales of some ids. */
  @Transactional
  public List<Sale> all(Collection<UUID> ids) {
    return query.all(ids);
  }

  /**
   * Sales in the order of their ids, which sort by when their devices made them if they are UUIDs
   * of version 7.
   *
   * @param place null for every place
   * @param toLookAt whether only those are wanted about which something is noted
   * @param after null to begin
   */
  @Transactional
  public List<Sale> list(String place, boolean toLookAt, UUID after, int limit) {
    return query.list(place, toLookAt, after, limit);
  }

  /** Tellings that clash with an earlier one of the same id, in the order they were recorded. */
  @Transactional
  public List<Conflict> conflicts(String place, UUID after, int limit) {
    return query.conflicts(place, after, limit);
  }

  /**
   * Takes a sale back: its movement is reversed, dated when the sale happened. A sale that was
   * taken back already stays so.
   *
   * @throws UnknownSale if there is none of that id
   */
  @Transactional
  public Sale undo(UUID id, String reason) {
    Sale sale = at(id);
    if (sale.undone()) {
      return sale;
    }
    ledger.reverse(sale.movement(), reason);
    return at(id);
  }
}
