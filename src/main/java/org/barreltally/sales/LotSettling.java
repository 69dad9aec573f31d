package org.barreltally.sales;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.sales.internal.TableFacts;
import org.barreltally.sales.internal.TableFacts.Standing;

/**
 * Lets the book follow once tables that exchanged jars are all counted: what is left of each lot
 * went to buyers, and what was sold without lot is no longer open. Sizes that do not fit together
 * are left to be looked at. Told again after another count, only the difference is posted.
 */
@ApplicationScoped
public class LotSettling {

  private final TableFacts facts;
  private final TableReckoning reckoning;
  private final Ledger ledger;
  private final Days days;

  LotSettling(TableFacts facts, TableReckoning reckoning, Ledger ledger, Days days) {
    this.facts = facts;
    this.reckoning = reckoning;
    this.ledger = ledger;
    this.days = days;
  }

  /**
   * Posts what the counts tell.
   *
   * @param counted by place; nothing is posted unless all are
   * @param why stands in the book as the reason
   * @return the movement; empty if the book agreed already
   */
  @Transactional
  public Optional<UUID> follow(Map<String, Boolean> counted, String why) {
    if (counted.containsValue(false)) {
      return Optional.empty();
    }
    Map<String, SizeReckoning> sizes = reckoning.of(counted);
    Movement.Builder movement = Movement.of(MovementKind.SETTLEMENT, days.now()).because(why);
    facts.standing(counted.keySet()).stream()
        .collect(Collectors.groupingBy(Standing::container, TreeMap::new, Collectors.toList()))
        .forEach(
            (container, standing) ->
                settle(
                    movement, standing, sizes.get(container).byLot().contradictions().isEmpty()));
    return movement.movesNothing() ? Optional.empty() : Optional.of(ledger.post(movement.build()));
  }

  /** What is to leave each place by settlements, less what left already. */
  private static void settle(Movement.Builder movement, List<Standing> standing, boolean fits) {
    long lots = standing.stream().filter(s -> s.lot() != null).mapToLong(Standing::left).sum();
    long open = standing.stream().filter(s -> s.lot() == null).mapToLong(Standing::sold).sum();
    long beyond = Math.max(0, open - lots);
    List<Standing> sorted = new ArrayList<>(standing);
    sorted.sort(Comparator.comparing(Standing::left));
    for (Standing s : sorted) {
      long leaves = fits ? s.left() : 0;
      if (fits && s.lot() == null && beyond > 0 && s.left() < 0) {
        long stays = Math.min(beyond, -s.left());
        beyond -= stays;
        leaves += stays;
      }
      movement.move(s.place(), PlaceCode.CUSTOMER, s.item(), leaves + s.settled());
    }
  }
}
