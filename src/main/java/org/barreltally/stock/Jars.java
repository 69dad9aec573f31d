package org.barreltally.stock;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.Places;
import org.barreltally.lots.Lots;
import org.barreltally.refusal.InvalidField;

/**
 * Carries jars and writes them off. A hold stops promising, not carrying: jars of a held lot may be
 * carried to another room or thrown away.
 */
@ApplicationScoped
public class Jars {

  private final Containers containers;
  private final Lots lots;
  private final Items items;
  private final Places places;
  private final Ledger ledger;
  private final Days days;

  Jars(Containers containers, Lots lots, Items items, Places places, Ledger ledger, Days days) {
    this.containers = containers;
    this.lots = lots;
    this.items = items;
    this.places = places;
    this.ledger = ledger;
    this.days = days;
  }

  /**
   * Carries jars from one own place to another, now.
   *
   * @return the movement's id
   * @throws NoSuchJars if the lot was not packed in that container
   * @throws org.barreltally.ledger.NotThatMuchThere if fewer stand there
   */
  @Transactional
  public UUID relocate(RelocateJars said) {
    places.atHand(said.from(), "from");
    places.atHand(said.to(), "to");
    if (said.from().equals(said.to())) {
      throw new InvalidField("to", "They are at " + said.to() + " already. Name another place.");
    }
    return ledger.post(
        Movement.of(MovementKind.RELOCATION, days.now())
            .because(said.reason())
            .move(said.from(), said.to(), item(said.lot(), said.container()).id(), said.count())
            .build());
  }

  /**
   * Writes jars off, now.
   *
   * @return the movement's id
   * @throws NoSuchJars if the lot was not packed in that container
   * @throws org.barreltally.ledger.NotThatMuchThere if fewer stand there
   */
  @Transactional
  public UUID writeOff(WriteOffJars said) {
    places.atHand(said.place(), "place");
    return ledger.post(
        Movement.of(MovementKind.WRITE_OFF, days.now())
            .because(said.reason())
            .move(
                said.place(),
                said.cause().code(),
                item(said.lot(), said.container()).id(),
                said.count())
            .build());
  }

  private Item item(String lot, String container) {
    containers.named(container, "container");
    lots.named(lot, "lot");
    return items
        .jarsOf(lot, container)
        .orElseThrow(() -> new NoSuchJars(lot, container, "container"));
  }
}
