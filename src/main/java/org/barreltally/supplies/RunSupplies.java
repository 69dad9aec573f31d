package org.barreltally.supplies;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.barreltally.canning.UsesSupplies;
import org.barreltally.ledger.AfterPosting;
import org.barreltally.supplies.SupplyMovement.Kind;
import org.barreltally.supplies.internal.SupplyBook;
import org.barreltally.supplies.internal.SupplyBook.Balance;
import org.barreltally.supplies.internal.SupplyHistory;
import org.barreltally.supplies.internal.SupplyRows;

/**
 * What canning runs use up, broken jars included, and give back when they are taken back. What is
 * not counted yet is warned about and left alone: there is nothing to take it from.
 */
@ApplicationScoped
class RunSupplies implements UsesSupplies, AfterPosting {

  private final SupplyRows rows;
  private final SupplyBook book;
  private final SupplyHistory history;
  private final SuppliesRule rule;

  RunSupplies(SupplyRows rows, SupplyBook book, SupplyHistory history, SuppliesRule rule) {
    this.rows = rows;
    this.book = book;
    this.history = history;
    this.rule = rule;
  }

  @Override
  @Transactional
  public List<String> use(UUID movement, LocalDate on, List<Jars> jars) {
    Map<String, Supply> supplies = usedBy(jars);
    if (supplies.isEmpty()) {
      return List.of();
    }
    Map<String, Balance> balances = book.locked(supplies.keySet());
    List<String> cautions = new ArrayList<>();
    for (Supply supply : supplies.values()) {
      RunNeed need = RunNeed.of(supply, jars);
      Balance balance = balances.get(supply.code());
      if (balance == null) {
        cautions.add(need.notCounted());
        continue;
      }
      boolean inCount = book.countedAfter(supply.code(), on);
      if (!inCount && need.shortOf(balance.onHand())) {
        if (rule.refuses(on)) {
          throw new SuppliesShort(
              supply, balance.onHand(), need.pieces(), need.shortField(balance.onHand()));
        }
        cautions.add(SuppliesShort.words(supply, balance.onHand(), need.pieces()));
      }
      long change = inCount ? 0 : -need.pieces();
      book.write(supply.code(), balance, Kind.RUN, on, need.pieces(), change, movement, null);
    }
    return cautions;
  }

  @Override
  @Transactional
  public List<String> lookAt(LocalDate on, List<Jars> jars) {
    List<String> cautions = new ArrayList<>();
    for (SupplyStanding standing : standing(jars)) {
      RunNeed need = RunNeed.of(standing.supply(), jars);
      if (need.pieces() == 0) {
        continue;
      }
      if (standing.onHand() == null) {
        cautions.add(need.notCounted());
      } else if (need.shortOf(standing.onHand())
          && !book.countedAfter(standing.supply().code(), on)) {
        cautions.add(SuppliesShort.words(standing.supply(), standing.onHand(), need.pieces()));
      }
    }
    return cautions;
  }

  /** A count made since the run found the shelf as it is: then nothing comes back. */
  @Override
  public void reversed(UUID original) {
    List<SupplyMovement> used = history.usedIn(original);
    if (used.isEmpty()) {
      return;
    }
    Map<String, Balance> balances = book.locked(used.stream().map(SupplyMovement::supply).toList());
    Set<String> notCounted = Set.copyOf(history.notCountedSince(original));
    for (SupplyMovement use : used) {
      long change = notCounted.contains(use.supply()) ? -use.change() : 0;
      book.write(
          use.supply(),
          balances.get(use.supply()),
          Kind.TAKEN_BACK,
          use.on(),
          use.pieces(),
          change,
          original,
          null);
    }
  }

  private Map<String, Supply> usedBy(List<Jars> jars) {
    Map<String, Supply> supplies = new LinkedHashMap<>();
    for (SupplyStanding standing : standing(jars)) {
      if (RunNeed.of(standing.supply(), jars).pieces() > 0) {
        supplies.put(standing.supply().code(), standing.supply());
      }
    }
    return supplies;
  }

  private List<SupplyStanding> standing(List<Jars> jars) {
    return rows.usedBy(jars.stream().map(Jars::container).toList());
  }
}
