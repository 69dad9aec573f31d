package org.barreltally.supplies;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.barreltally.canning.UsesSupplies;
import org.barreltally.ledger.AfterPosting;
import org.barreltally.ledger.Bundle;
import org.barreltally.supplies.SupplyMovement.Kind;
import org.barreltally.supplies.internal.RunQuestions;
import org.barreltally.supplies.internal.SupplyBook;
import org.barreltally.supplies.internal.SupplyBook.Balance;
import org.barreltally.supplies.internal.SupplyHistory;

/**
 * What canning runs use up, broken jars included, and give back when they are taken back. What is
 * not counted yet is warned about and left alone: there is nothing to take it from.
 */
@ApplicationScoped
@Priority(1)
class RunSupplies implements UsesSupplies, AfterPosting {

  private final SupplyBook book;
  private final SupplyHistory history;
  private final SuppliesRule rule;
  private final EntityManager entities;

  RunSupplies(SupplyBook book, SupplyHistory history, SuppliesRule rule, EntityManager entities) {
    this.book = book;
    this.history = history;
    this.rule = rule;
    this.entities = entities;
  }

  @Override
  public Use begin(LocalDate on, List<Jars> jars, Bundle ask) {
    RunQuestions known = questions(on, jars, true, ask);
    return (movement, write) -> use(known, movement, on, jars, write);
  }

  @Override
  @Transactional
  public List<String> lookAt(LocalDate on, List<Jars> jars) {
    Bundle ask = Bundle.byKeys();
    RunQuestions known = questions(on, jars, false, ask);
    ask.send(entities);
    return needs(known, jars).flatMap(need -> caution(known, need).stream()).toList();
  }

  private static RunQuestions questions(LocalDate on, List<Jars> jars, boolean lock, Bundle ask) {
    return new RunQuestions(on, jars.stream().map(Jars::container).toList(), lock, ask);
  }

  private List<String> use(
      RunQuestions known, UUID movement, LocalDate on, List<Jars> jars, Bundle write) {
    List<String> cautions = new ArrayList<>();
    for (RunNeed need : needs(known, jars).toList()) {
      Supply supply = need.supply();
      Balance balance = known.balance(supply);
      Optional<String> caution = caution(known, need);
      if (balance != null && caution.isPresent() && rule.refuses(on)) {
        throw new SuppliesShort(
            supply, balance.onHand(), need.pieces(), need.shortField(balance.onHand()));
      }
      caution.ifPresent(cautions::add);
      if (balance != null) {
        long change = known.countedAfter(supply) ? 0 : -need.pieces();
        book.writeUse(supply.code(), balance, on, need.pieces(), change, movement, write);
      }
    }
    return cautions;
  }

  private static Stream<RunNeed> needs(RunQuestions known, List<Jars> jars) {
    return known.supplies().stream()
        .map(supply -> RunNeed.of(supply, jars))
        .filter(need -> need.pieces() > 0);
  }

  private static Optional<String> caution(RunQuestions known, RunNeed need) {
    Balance balance = known.balance(need.supply());
    if (balance == null) {
      return Optional.of(need.notCounted());
    }
    return need.shortOf(balance.onHand()) && !known.countedAfter(need.supply())
        ? Optional.of(SuppliesShort.words(need.supply(), balance.onHand(), need.pieces()))
        : Optional.empty();
  }

  /** In the order in which a run locks: supplies before the balances of the book. */
  @Override
  public void reversing(UUID original) {
    List<SupplyMovement> used = history.usedIn(original);
    if (!used.isEmpty()) {
      book.locked(used.stream().map(SupplyMovement::supply).toList());
    }
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
}
