package org.barreltally.netcontents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.netcontents.internal.VariationRows;
import org.barreltally.refusal.InvalidField;

/**
 * The owner's table of allowed variations. Nothing is overwritten: of two that fit a container the
 * one entered for it by name counts before one for a range, and of two alike the newer.
 */
@ApplicationScoped
public class AllowedVariations {

  private final VariationRows rows;
  private final Containers containers;
  private final Days days;
  private final Ids ids;

  AllowedVariations(VariationRows rows, Containers containers, Days days, Ids ids) {
    this.rows = rows;
    this.containers = containers;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Enters one, for a container or for a range.
   *
   * @throws InvalidField naming every field that needs mending
   * @throws org.barreltally.containers.UnknownContainer if there is no such container
   */
  @Transactional
  public AllowedVariation enter(
      String container, Quantity over, Quantity upTo, Quantity allowed, String source) {
    VariationRules.check(container, over, upTo, allowed, source);
    Quantity least =
        container == null ? upTo : containers.named(container, "container").netContents();
    if (allowed.unit().dimension() == Dimension.VOLUME
        && allowed.in(Unit.ML).compareTo(least.in(Unit.ML)) >= 0) {
      throw new InvalidField("allowed", "That is all of the contents (" + least + ") or more.");
    }
    AllowedVariation entered =
        new AllowedVariation(ids.next(), container, over, upTo, allowed, source, days.now());
    rows.add(entered);
    return entered;
  }

  /** The one that counts for a container now, if any was entered. */
  @Transactional
  public Optional<AllowedVariation> holdingFor(Container container) {
    return rows.holdingFor(container.code(), container.netContents().in(Unit.ML));
  }

  /** All that were entered, oldest first, after an id, at most so many. */
  @Transactional
  public List<AllowedVariation> list(UUID after, int limit) {
    return rows.list(after, limit);
  }

  /**
   * One of them.
   *
   * @throws UnknownAllowedVariation if there is none of that id
   */
  @Transactional
  public AllowedVariation at(UUID id) {
    return rows.find(id).orElseThrow(() -> new UnknownAllowedVariation(id));
  }
}
