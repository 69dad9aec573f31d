package org.barreltally.sales;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.barreltally.lots.JarsInDoubt;
import org.barreltally.sales.bylot.Bounds;
import org.barreltally.sales.internal.TableFacts;

/**
 * What is open about lots at tables where jars were sold or carried without lot and no settlement
 * has told yet of which lots they were.
 */
@ApplicationScoped
public class OpenLots implements JarsInDoubt {

  private static final String OPEN =
      """
      SELECT DISTINCT b.place FROM balances b JOIN items i ON i.id = b.item
        JOIN places p ON p.code = b.standing_at
      WHERE i.lot IS NULL AND p.kind = 'out' ORDER BY b.place
      """;

  private final EntityManager entities;
  private final TableReckoning reckoning;
  private final TableFacts facts;

  OpenLots(EntityManager entities, TableReckoning reckoning, TableFacts facts) {
    this.entities = entities;
    this.reckoning = reckoning;
    this.facts = facts;
  }

  @Override
  @Transactional
  public List<Doubt> about(Collection<String> lots) {
    List<Doubt> doubts = new ArrayList<>();
    SortedSet<String> seen = new TreeSet<>();
    for (Object place : entities.createNativeQuery(OPEN).getResultList()) {
      if (!seen.contains((String) place)) {
        SortedSet<String> together = reckoning.exchanging((String) place);
        seen.addAll(together);
        add(together, lots, doubts);
      }
    }
    return doubts;
  }

  private void add(SortedSet<String> places, Collection<String> lots, List<Doubt> doubts) {
    List<TableFacts.Standing> standing = facts.standing(places);
    if (standing.stream().anyMatch(s -> s.settled() != 0)) {
      return; // settled already; what came later stands below zero and needs a count
    }
    Map<String, Boolean> notCounted = new TreeMap<>();
    places.forEach(place -> notCounted.put(place, false));
    reckoning
        .of(notCounted)
        .values()
        .forEach(
            size ->
                size.byLot()
                    .sold()
                    .forEach(
                        (place, byLot) ->
                            byLot.forEach(
                                (lot, sold) -> {
                                  if (lots.contains(lot)) {
                                    doubt(size, place, lot, sold, standing, doubts);
                                  }
                                })));
  }

  private static void doubt(
      SizeReckoning size,
      String place,
      String lot,
      Bounds sold,
      List<TableFacts.Standing> standing,
      List<Doubt> doubts) {
    long named =
        standing.stream()
            .filter(s -> lot.equals(s.lot()) && s.place().equals(place))
            .filter(s -> s.container().equals(size.container()))
            .mapToLong(TableFacts.Standing::sold)
            .sum();
    Bounds there = size.byLot().standing(place, lot);
    doubts.add(
        new Doubt(
            lot,
            place,
            size.container(),
            there.least(),
            there.most(),
            Math.max(0, sold.least() - named),
            Math.max(0, sold.most() - named)));
  }
}
