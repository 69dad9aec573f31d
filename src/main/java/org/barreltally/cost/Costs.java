package org.barreltally.cost;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.cost.internal.CostRows;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.lots.Lots;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;
import org.barreltally.shows.Shows;

/** What was spent. Nothing is changed; a slip of the pen is taken back and entered anew. */
@ApplicationScoped
public class Costs {

  private final CostRows rows;
  private final Lots lots;
  private final Containers containers;
  private final Shows shows;
  private final FarmSettings settings;
  private final Days days;
  private final Ids ids;

  Costs(
      CostRows rows,
      Lots lots,
      Containers containers,
      Shows shows,
      FarmSettings settings,
      Days days,
      Ids ids) {
    this.rows = rows;
    this.lots = lots;
    this.containers = containers;
    this.shows = shows;
    this.settings = settings;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Enters a cost. Of a year that is closed it is booked in the open one, and marked late.
   *
   * @throws InvalidField naming every field that needs mending
   * @throws UnknownBearer if what it belongs to is not known
   * @throws org.barreltally.pricing.CurrencyMismatch if it is of another currency than the farm's
   */
  @Transactional
  public Cost enter(EnterCost said) {
    Money amount = CostRules.amount(said, settings.now().said().currency());
    days.happened(said.on(), "on");
    bearerIsKnown(said);
    rows.waitForClosing();
    boolean packing = said.container() != null || said.supply() != null;
    UUID id = ids.next();
    rows.add(id, said, amount, packing && said.per() == null ? Integer.valueOf(1) : said.per());
    return at(id);
  }

  private void bearerIsKnown(EnterCost said) {
    if (said.lot() != null) {
      lots.named(said.lot(), "lot");
      if (!rows.cameFromOutside(said.lot())) {
        throw new LotMadeHere(said.lot());
      }
    }
    if (said.run() != null && !rows.isRun(said.run())) {
      throw new UnknownBearer("run", said.run(), "/api/canning/runs");
    }
    if (said.container() != null) {
      containers.named(said.container(), "container");
    }
    if (said.supply() != null && !rows.isSupply(said.supply())) {
      throw new UnknownBearer("supply", said.supply(), "/api/supplies");
    }
    if (said.show() != null) {
      shows.named(said.show(), "show");
    }
  }

  /**
   * Takes a cost back.
   *
   * @throws UnknownCost if there is none of that id
   * @throws CostTakenBack if it was taken back before
   * @throws InvalidField if nobody says why
   */
  @Transactional
  public Cost reverse(UUID id, String reason) {
    String why = CostRules.reason(reason);
    at(id);
    rows.waitForClosing();
    if (!rows.reverse(id, why)) {
      throw new CostTakenBack(id);
    }
    return at(id);
  }

  /**
   * @throws UnknownCost if there is none of that id
   */
  @Transactional
  public Cost at(UUID id) {
    return rows.find(id).orElseThrow(() -> new UnknownCost(id));
  }

  /**
   * Costs in the order they were entered, after one of them (or null), at most so many.
   *
   * @param year they are booked in; null for all
   */
  @Transactional
  public List<Cost> list(Integer year, UUID after, int limit) {
    return rows.list(year, after, limit);
  }
}
