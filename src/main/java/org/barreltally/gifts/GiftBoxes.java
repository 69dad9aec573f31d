package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.barreltally.containers.Containers;
import org.barreltally.gifts.internal.BoxRows;
import org.barreltally.ledger.Days;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;

/** The gift boxes: made, found by id or name, and weighed. */
@ApplicationScoped
public class GiftBoxes {

  private static final Pattern ID =
      Pattern.compile("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}");
  private static final double GRAMS_MAX = 100_000;

  private final BoxRows rows;
  private final Containers containers;
  private final FarmSettings settings;
  private final Days days;

  GiftBoxes(BoxRows rows, Containers containers, FarmSettings settings, Days days) {
    this.rows = rows;
    this.containers = containers;
    this.settings = settings;
    this.days = days;
  }

  /**
   * Makes a box. One of the same name made earlier gives way to it in new orders.
   *
   * @throws InvalidField naming every field that needs mending
   */
  @Transactional
  public GiftBox make(MakeBox said) {
    BoxRules.check(said, containers);
    return at(rows.add(said));
  }

  /**
   * @throws UnknownBox if there is none of that id
   */
  @Transactional
  public GiftBox at(UUID id) {
    return byId(List.of(id)).values().stream().findFirst().orElseThrow(() -> new UnknownBox(id));
  }

  /** The boxes of some ids; an id that is no box is not in it. */
  @Transactional
  public Map<UUID, GiftBox> byId(Collection<UUID> ids) {
    Map<UUID, GiftBox> found = new HashMap<>();
    weighed(rows.byId(ids)).forEach(box -> found.put(box.id(), box));
    return found;
  }

  /** The box an order names: by its id, or the newest of its name. */
  @Transactional
  public Optional<GiftBox> named(String idOrName) {
    if (ID.matcher(idOrName.strip()).matches()) {
      UUID id = UUID.fromString(idOrName.strip());
      return Optional.ofNullable(byId(List.of(id)).get(id));
    }
    return weighed(rows.newestNamed(idOrName).stream().toList()).stream().findFirst();
  }

  /** Boxes in the order they were made, after one of them (or null), at most so many. */
  @Transactional
  public List<GiftBox> list(UUID after, int limit) {
    return weighed(rows.list(after, limit));
  }

  /**
   * A packed box was put on the scale.
   *
   * @throws UnknownBox if there is none of that id
   * @throws InvalidField if it is no weight of a box
   */
  @Transactional
  public GiftBox weigh(UUID id, LocalDate on, Quantity weight) {
    at(id);
    LocalDate day = on == null ? days.today() : days.happened(on, "on");
    if (weight == null
        || weight.unit().dimension() != Dimension.MASS
        || weight.signum() <= 0
        || weight.doubleIn(Unit.G) > GRAMS_MAX) {
      throw new InvalidField(
          "weight", "Give what one packed box weighs, for example 2.8 lb; at most 100 kg.");
    }
    rows.weigh(id, day, weight.doubleIn(Unit.G));
    return at(id);
  }

  private List<GiftBox> weighed(List<BoxRows.Kept> kept) {
    if (kept.isEmpty()) {
      return List.of();
    }
    Map<UUID, List<Double>> weighings =
        rows.weighings(kept.stream().map(BoxRows.Kept::id).toList());
    return kept.stream().map(k -> box(k, weighings.getOrDefault(k.id(), List.of()))).toList();
  }

  private GiftBox box(BoxRows.Kept kept, List<Double> grams) {
    MakeBox said = kept.said();
    return new GiftBox(
        kept.id(),
        said.name(),
        said.price(),
        said.contents(),
        said.carton(),
        said.ribbon(),
        said.card(),
        weight(said, grams));
  }

  private PackedWeight weight(MakeBox said, List<Double> grams) {
    Uncertain reckoned =
        BoxWeight.reckoned(
            said.contents().stream()
                .map(c -> new BoxWeight.Filled(containers.at(c.container()), c.count()))
                .toList(),
            said.carton(),
            Stream.of(said.ribbon(), said.card()).filter(Objects::nonNull).toList());
    if (grams.isEmpty()) {
      return new PackedWeight(
          PackedWeight.Basis.ESTIMATED,
          pounds(reckoned.value()),
          pounds(reckoned.u()),
          0,
          null,
          null);
    }
    Uncertain weighed =
        BoxWeight.weighed(grams, settings.instruments().halfWidth(InstrumentKind.BENCH_SCALE));
    return new PackedWeight(
        PackedWeight.Basis.WEIGHED,
        pounds(weighed.value()),
        pounds(weighed.u()),
        grams.size(),
        pounds(reckoned.value()),
        weighed.differsFrom(reckoned));
  }

  private static Quantity pounds(double grams) {
    return Quantity.rounded(grams, Unit.G, 3).to(Unit.LB, 3);
  }
}
