package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.barreltally.ledger.BookFixture.World;
import org.barreltally.ledger.Reservations.Line;
import org.barreltally.lots.Grading;
import org.barreltally.lots.Holds;
import org.barreltally.measure.Taste;

/** Thinks up what happens next in a world, from a seed, and does it in the real book. */
@ApplicationScoped
class BookPlay {

  /** What can happen. */
  enum Act {
    MOVE,
    PACK,
    REVERSE,
    RESERVE,
    END,
    HOLD,
    RELEASE,
    GRADE
  }

  private static final Act[] OFTEN = {
    Act.MOVE, Act.MOVE, Act.MOVE, Act.MOVE, Act.MOVE, Act.PACK, Act.REVERSE, Act.REVERSE,
    Act.RESERVE, Act.RESERVE, Act.END, Act.END, Act.HOLD, Act.RELEASE, Act.RELEASE, Act.GRADE
  };

  private static final List<String> GRADES = List.of("golden", "amber", "dark", "very-dark");

  private final Ledger ledger;
  private final Reservations reservations;
  private final Holds holds;
  private final Grading grading;

  BookPlay(Ledger ledger, Reservations reservations, Holds holds, Grading grading) {
    this.ledger = ledger;
    this.reservations = reservations;
    this.holds = holds;
    this.grading = grading;
  }

  /**
   * One thing that is tried.
   *
   * @param subject the movement or reservation it is about; null where there is none
   */
  record Step(
      Act act,
      List<Transfer> transfers,
      List<Line> lines,
      UUID subject,
      Reservations.End end,
      String lot,
      double transmittance,
      Taste taste,
      String reason) {}

  /** What is known to have happened, from which subjects are drawn. */
  record Past(List<UUID> movements, List<Promise> promises) {}

  record Promise(UUID id, List<Line> lines) {}

  Step next(Random random, World world, Past past) {
    Act act = OFTEN[random.nextInt(OFTEN.length)];
    Promise promise =
        past.promises().isEmpty() || random.nextInt(25) == 0
            ? new Promise(new UUID(random.nextLong(), random.nextLong()), lines(random, world))
            : past.promises().get(random.nextInt(past.promises().size()));
    List<Transfer> transfers =
        act == Act.PACK
            ? packing(random, world)
            : act == Act.MOVE ? moves(random, world) : List.of();
    return new Step(
        act,
        transfers,
        act == Act.RESERVE
            ? lines(random, world)
            : act == Act.END ? partOf(random, promise.lines()) : List.of(),
        act == Act.REVERSE ? anyOf(random, past.movements()) : act == Act.END ? promise.id() : null,
        Reservations.End.values()[random.nextInt(3)],
        world.lots().get(random.nextInt(world.lots().size())),
        random.nextInt(-20, 1001) / 10.0,
        random.nextInt(8) == 0 ? Taste.BUDDY : Taste.CLEAN,
        random.nextInt(20) == 0 ? " " : "because");
  }

  private static UUID anyOf(Random random, List<UUID> known) {
    return known.isEmpty() || random.nextInt(25) == 0
        ? new UUID(random.nextLong(), random.nextLong())
        : known.get(random.nextInt(known.size()));
  }

  private static List<Transfer> moves(Random random, World world) {
    List<String> spots =
        world.model().spots.keySet().stream().filter(code -> !code.equals("packing")).toList();
    List<UUID> items = world.items();
    List<Transfer> transfers = new ArrayList<>();
    do {
      transfers.clear();
      for (int n = random.nextInt(1, 5); n > 0; n--) {
        int from = random.nextInt(spots.size());
        int to = (from + random.nextInt(1, spots.size())) % spots.size();
        UUID item = items.get(random.nextInt(items.size()));
        transfers.add(new Transfer(spots.get(from), spots.get(to), item, random.nextInt(1, 40)));
      }
    } while (BookModel.net(transfers).isEmpty());
    return transfers;
  }

  /** Grams of a lot turned into as many of its jars as they fill. */
  private static List<Transfer> packing(Random random, World world) {
    String lot = world.lots().get(random.nextInt(world.lots().size()));
    List<BookModel.Thing> things =
        world.model().things.values().stream()
            .filter(thing -> thing.lot().equals(lot))
            .sorted(Comparator.comparing(t -> String.valueOf(t.container())))
            .toList();
    BookModel.Thing syrup =
        things.stream().filter(t -> t.container() == null).findFirst().orElseThrow();
    BookModel.Thing jars = things.get(random.nextInt(world.sizes().size()));
    String home =
        world.model().spots.keySet().stream()
            .filter(code -> code.startsWith("home-"))
            .findFirst()
            .orElseThrow();
    int count = random.nextInt(1, 60);
    return List.of(
        new Transfer("opening", "packing", syrup.id(), (long) count * BookFixture.GRAMS_EACH),
        new Transfer("packing", home, jars.id(), count));
  }

  private static List<Line> lines(Random random, World world) {
    List<Line> lines = new ArrayList<>();
    for (int n = random.nextInt(1, 4); n > 0; n--) {
      lines.add(
          new Line(
              world.sizes().get(random.nextInt(world.sizes().size())),
              GRADES.get(random.nextInt(GRADES.size())),
              random.nextInt(1, 15)));
    }
    return lines;
  }

  /** Some pieces of one line, now and then more than were reserved. */
  private static List<Line> partOf(Random random, List<Line> lines) {
    Line line = lines.get(random.nextInt(lines.size()));
    long pieces = random.nextLong(1, line.pieces() + 2);
    return List.of(new Line(line.container(), line.grade(), pieces));
  }

  /** Does it in the book; answers the id of what was made, null where nothing has one. */
  UUID doIt(Step step, Instant at) {
    return switch (step.act()) {
      case MOVE -> ledger.post(new Movement(MovementKind.RELOCATION, at, null, step.transfers()));
      case PACK -> ledger.post(new Movement(MovementKind.CANNING, at, null, step.transfers()));
      case REVERSE -> ledger.reverse(step.subject(), step.reason());
      case RESERVE -> reservations.reserve(step.lines());
      case END -> {
        reservations.end(step.subject(), step.lines(), step.end());
        yield null;
      }
      case HOLD -> {
        holds.hold(step.lot(), step.reason());
        yield null;
      }
      case RELEASE -> {
        holds.release(step.lot(), step.reason());
        yield null;
      }
      case GRADE -> {
        grading.grade(
            step.lot(), BookFixture.DAY, step.transmittance(), step.taste(), step.reason());
        yield null;
      }
    };
  }
}
