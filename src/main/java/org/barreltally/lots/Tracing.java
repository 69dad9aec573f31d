package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.barreltally.ledger.Bundle;
import org.barreltally.lots.internal.LotRow;
import org.barreltally.lots.internal.LotRows;

/** Follows a lot both ways. */
@ApplicationScoped
public class Tracing {

  private final Lots lots;
  private final LotRows rows;
  private final Family family;
  private final Whereabouts whereabouts;
  private final EntityManager entities;
  private final Instance<JarsInDoubt> doubts;

  public Tracing(
      Lots lots,
      LotRows rows,
      Family family,
      Whereabouts whereabouts,
      EntityManager entities,
      Instance<JarsInDoubt> doubts) {
    this.lots = lots;
    this.rows = rows;
    this.family = family;
    this.whereabouts = whereabouts;
    this.entities = entities;
    this.doubts = doubts;
  }

  /**
   * @throws UnknownLot if there is no such lot
   */
  @Transactional
  public Trace trace(String code) {
    Lot lot = lots.at(code);
    Bundle links = new Bundle();
    List<Parent> above = family.above(code, links);
    List<Parent> below = family.below(code, links);
    links.send(entities);
    Map<String, Double> descendants = Shares.inDescendants(code, below);
    List<String> touched = new ArrayList<>(descendants.keySet());
    touched.add(code);
    Bundle standing = new Bundle();
    Whereabouts.Found found = whereabouts.ask(touched, standing);
    standing.send(entities);
    List<Parent> parents = links(above, Parent::child, code);
    List<Lot> near = new ArrayList<>(lotsNamed(parents));
    near.add(lot);
    return new Trace(
        lot,
        parents,
        links(below, Parent::parent, code),
        Shares.ofAncestors(code, above),
        descendants,
        found.jars(),
        found.bulk(),
        near.stream().collect(Collectors.toMap(Lot::code, Lot::seasons)),
        near.stream().collect(Collectors.toMap(Lot::code, l -> l.brix().value())),
        doubts.stream().flatMap(known -> known.about(touched).stream()).toList());
  }

  private static List<Parent> links(List<Parent> links, Function<Parent, String> end, String code) {
    return links.stream().filter(link -> end.apply(link).equals(code)).toList();
  }

  private List<Lot> lotsNamed(List<Parent> parents) {
    return rows.list("code in ?1", parents.stream().map(Parent::parent).toList()).stream()
        .map(LotRow::asLot)
        .toList();
  }
}
