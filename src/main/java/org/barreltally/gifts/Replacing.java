package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.Reservations;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;

/**
 * Replaces broken jars at the maker's own cost: those that broke in the post by a further mailing,
 * those that broke at packing from the shelf.
 */
@ApplicationScoped
public class Replacing {

  /**
   * What broke.
   *
   * @param on today if null
   * @param place to take from; the cool room if null
   * @param postage of the further mailing; as ordered if null, none where it was not posted yet
   */
  public record What(LocalDate on, List<Line> lines, String place, Money postage, String reason) {}

  /** Jars of one lot and size. */
  public record Line(String container, String lot, Long count) {}

  private final GiftOrders orders;
  private final Shelves shelves;
  private final Promises promises;
  private final StepBook book;
  private final Ledger ledger;
  private final Days days;

  Replacing(
      GiftOrders orders,
      Shelves shelves,
      Promises promises,
      StepBook book,
      Ledger ledger,
      Days days) {
    this.orders = orders;
    this.shelves = shelves;
    this.promises = promises;
    this.book = book;
    this.ledger = ledger;
    this.days = days;
  }

  /**
   * Writes off what broke and takes as many jars in their place, substitutes where they are allowed
   * and the first choice is short.
   *
   * @throws WrongStep if nothing was picked yet, or it came back
   * @throws InvalidField if the boxes hold no such jars
   * @throws CannotPromise if there is nothing to replace them with
   */
  @Transactional
  public void replace(UUID id, Set<String> versions, int n, What what) {
    Reason.check(what.reason());
    GiftOrder order = orders.opened(id, versions);
    GiftLine line = order.line(n);
    Stage stage = stage(line);
    List<GiftJars> broken = broken(order.jars(n, stage), what.lines());
    LocalDate on = what.on() == null ? days.today() : days.happened(what.on(), "on");
    List<Need> needs = needs(order, line, broken, stage);
    Set<Jar> jars = new HashSet<>();
    needs.forEach(need -> jars.addAll(need.choices()));
    Shelf shelf = shelves.open(what.place(), jars);
    List<Promise> promised = stage == Stage.SENT ? promises.reserve(needs) : fromShelf(needs);
    List<GiftJars> fresh = shelf.take(promised).stream().map(taken -> taken.at(stage)).toList();
    Movement.Builder movement =
        Movement.of(
                stage == Stage.SENT ? MovementKind.GIFT : MovementKind.WRITE_OFF, days.during(on))
            .because(
                stage == Stage.SENT ? "Broken in post, replaced" : "Broken at packing, replaced");
    broken.forEach(jar -> movement.move(stage.place(), PlaceCode.BROKEN, jar.item(), jar.pieces()));
    fresh.forEach(jar -> movement.move(shelf.place(), stage.place(), jar.item(), jar.pieces()));
    UUID posted = ledger.post(movement.build());
    if (stage == Stage.SENT) {
      promises.end(promised, Reservations.End.TAKEN);
    }
    List<GiftJars> moved = new ArrayList<>(fresh);
    broken.forEach(jar -> moved.add(jar.times(-1)));
    book.keep(
        id, List.of(new StepBook.Entry(done(line, what, on, stage, posted), List.of(), moved)));
  }

  private Done done(GiftLine line, What what, LocalDate on, Stage stage, UUID posted) {
    boolean mailed = stage == Stage.SENT && line.delivery() == Delivery.POST;
    Money postage = what.postage() == null && mailed ? line.postage() : what.postage();
    if (postage != null
        && (postage.signum() < 0 || !postage.currency().equals(line.price().currency()))) {
      throw new InvalidField(
          "postage", "Give it in " + line.price().currency() + ", not less than nothing.");
    }
    return Done.of(book.id(), line, Step.REPLACE, line.state(), on)
        .because(what.reason())
        .mailed(postage, postage == null ? null : Payer.MAKER, mailed ? line.carrier() : null)
        .moving(posted);
  }

  private static Stage stage(GiftLine line) {
    return switch (line.state()) {
      case PICKED, PACKED -> Stage.SHELF;
      case SENT, DELIVERED -> Stage.SENT;
      default ->
          throw new WrongStep(
              line.n(), line.state(), Step.REPLACE, "There are no jars of it that could break.");
    };
  }

  private static List<GiftJars> broken(List<GiftJars> there, List<Line> lines) {
    if (lines == null || lines.isEmpty() || Faults.hasGap(lines)) {
      throw new InvalidField("lines", "Say what broke: container, lot and count.");
    }
    List<GiftJars> broken = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      GiftJars jars =
          there.stream()
              .filter(j -> j.jar().container().equals(line.container()))
              .filter(j -> j.lot().equals(line.lot()))
              .filter(j -> line.count() != null && j.pieces() >= line.count())
              .findFirst()
              .orElse(null);
      if (jars == null || line.count() < 1 || broken.stream().anyMatch(jars.of(0)::isSameAs)) {
        throw new InvalidField(
            "lines[" + i + "]",
            "The boxes do not hold so many of that size and lot. Look at lots.");
      }
      broken.add(jars.of(line.count()));
    }
    return broken;
  }

  /** The same again first, then what else the recipe allows. At the shelf the promise stands. */
  private static List<Need> needs(
      GiftOrder order, GiftLine line, List<GiftJars> broken, Stage stage) {
    List<Need> needs = new ArrayList<>();
    for (GiftJars jars : broken) {
      List<Jar> choices = new ArrayList<>(List.of(jars.jar()));
      if (stage == Stage.SENT) {
        order.box(line).contents().stream()
            .filter(content -> content.jar().equals(jars.wanted()))
            .flatMap(content -> content.choices().stream())
            .filter(jar -> !choices.contains(jar))
            .forEach(choices::add);
      }
      needs.add(new Need(line.n(), choices, jars.pieces()));
    }
    return needs;
  }

  private static List<Promise> fromShelf(List<Need> needs) {
    return needs.stream()
        .map(need -> new Promise(need.n(), null, need.wanted(), need.wanted(), need.pieces()))
        .toList();
  }
}
