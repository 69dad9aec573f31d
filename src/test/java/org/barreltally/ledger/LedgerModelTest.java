package org.barreltally.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.ledger.BookFixture.World;
import org.barreltally.ledger.BookModel.At;
import org.barreltally.ledger.BookPlay.Act;
import org.barreltally.ledger.BookPlay.Past;
import org.barreltally.ledger.BookPlay.Step;
import org.barreltally.ledger.Pools.Pool;
import org.barreltally.people.CurrentUser;
import org.barreltally.people.Person;
import org.barreltally.people.Role;
import org.barreltally.refusal.Refusal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Plays thousands of random happenings in the real book and in a small model of it that was written
 * apart: both must say the same each time. The seed is printed; repeat a run with {@code
 * -Dbarreltally.seed=…}.
 */
@QuarkusTest
class LedgerModelTest {

  private static final int STEPS = Integer.getInteger("barreltally.steps", 2500);
  private static final int STEPS_BETWEEN_LOOKS = 20;

  @Inject BookFixture fixture;
  @Inject BookPlay play;
  @Inject Reservations reservations;
  @Inject Pools pools;
  @Inject Invariants invariants;
  @Inject EntityManager entities;
  @Inject CurrentUser user;

  @BeforeEach
  void somebodyWrites() {
    user.actAs(new Person(UUID.randomUUID(), "tester", "Tester", Role.OWNER));
  }

  @Test
  void the_book_and_the_model_agree_on_every_verdict_and_every_figure() {
    Random random = new Random(Seed.said("the book and its model"));
    World world = fixture.world();
    Past past = new Past(new ArrayList<>(), new ArrayList<>());
    Map<Act, Map<String, Integer>> verdicts = new TreeMap<>();
    String before = traces();
    for (int n = 0; n < STEPS; n++) {
      Step step = play.next(random, world, past);
      String expected = judge(world.model(), step);
      String verdict = tryIt(world.model(), step, past);
      assertEquals(expected, verdict, "step " + n + ": " + step);
      String after = traces();
      assertEquals(verdict.equals(BookModel.ACCEPTED), !after.equals(before), "step " + n);
      before = after;
      verdicts.computeIfAbsent(step.act(), act -> new TreeMap<>()).merge(verdict, 1, Integer::sum);
      if (n % STEPS_BETWEEN_LOOKS == 0) {
        compare(world, past);
      }
    }
    compare(world, past);
    assertEveryAnswerWasSeen(verdicts);
    invariants
        .check()
        .forEach(finding -> assertEquals(List.of(), finding.violations(), finding.name()));
  }

  private static String judge(BookModel model, Step step) {
    boolean silent = step.reason().isBlank();
    return switch (step.act()) {
      case MOVE, PACK -> model.judge(BookModel.net(step.transfers()));
      case REVERSE -> silent ? "invalid-field" : model.judgeReversal(step.subject());
      case RESERVE -> model.judgeReserve(step.lines());
      case END -> model.judgeEnd(step.subject(), step.lines());
      case HOLD -> silent ? "invalid-field" : BookModel.ACCEPTED;
      case RELEASE ->
          !model.held.contains(step.lot())
              ? "not-held"
              : silent ? "invalid-field" : BookModel.ACCEPTED;
      case GRADE ->
          step.transmittance() < 0 || step.transmittance() > 100
              ? "invalid-field"
              : BookModel.ACCEPTED;
    };
  }

  private String tryIt(BookModel model, Step step, Past past) {
    UUID made;
    try {
      made = play.doIt(step, Instant.EPOCH.plusSeconds(past.movements().size()));
    } catch (Refusal refusal) {
      return refusal.code();
    }
    switch (step.act()) {
      case MOVE, PACK -> model.post(made, BookModel.net(step.transfers()), false);
      case REVERSE -> model.reverse(step.subject(), made);
      case RESERVE -> model.reserve(made, step.lines());
      case END -> model.end(step.subject(), step.lines());
      case HOLD -> model.held.add(step.lot());
      case RELEASE -> model.held.remove(step.lot());
      case GRADE -> model.grade(step.lot(), BookModel.gradeOf(step.transmittance(), step.taste()));
    }
    if (step.act() == Act.RESERVE) {
      past.promises().add(new BookPlay.Promise(made, step.lines()));
    } else if (made != null) {
      past.movements().add(made);
    }
    return BookModel.ACCEPTED;
  }

  /** How many rows every table has that a refusal could have left one in, and what stands. */
  private String traces() {
    return entities
        .createNativeQuery(
            """
            SELECT concat_ws(' ',
              (SELECT count(*) FROM movements), (SELECT count(*) FROM entries),
              (SELECT count(*) FROM balances), (SELECT sum(amount * amount) FROM balances),
              (SELECT count(*) FROM reservation_steps), (SELECT count(*) FROM lot_gradings),
              (SELECT count(*) FROM lot_holds), (SELECT count(*) FROM lots WHERE held),
              (SELECT sum(reserved) FROM availability), (SELECT sum(on_hand) FROM availability))
            """)
        .getSingleResult()
        .toString();
  }

  private void compare(World world, Past past) {
    Map<At, Long> found = new HashMap<>();
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT place, item, amount FROM balances WHERE item IN (:items) AND amount <> 0")
            .setParameter("items", world.items())
            .getResultList();
    rows.stream()
        .map(Object[].class::cast)
        .forEach(c -> found.put(new At((String) c[0], (UUID) c[1]), (Long) c[2]));
    Map<At, Long> expected = new HashMap<>(world.model().balances);
    expected.values().removeIf(amount -> amount == 0);
    assertEquals(expected, found);
    for (String size : world.sizes()) {
      for (String grade : List.of("golden", "amber", "dark", "very-dark", "processing")) {
        Pool pool =
            pools.list(size, grade).stream().findFirst().orElse(new Pool(size, grade, 0, 0, 0, 0));
        assertEquals(world.model().pool(new BookModel.Kind(size, grade)), pool);
      }
    }
    for (BookPlay.Promise promise : past.promises()) {
      Map<BookModel.Kind, Long> open = new HashMap<>(world.model().promises.get(promise.id()));
      open.values().removeIf(pieces -> pieces == 0);
      assertEquals(open, BookModel.byKind(reservations.open(promise.id())));
    }
  }

  /** A test that never met a refusal, or never got past one, would prove little. */
  private static void assertEveryAnswerWasSeen(Map<Act, Map<String, Integer>> verdicts) {
    Map<Act, List<String>> wanted =
        Map.of(
            Act.MOVE, List.of("accepted", "short-of-stock"),
            Act.PACK, List.of("accepted"),
            Act.REVERSE,
                List.of(
                    "accepted",
                    "short-of-stock",
                    "unknown-movement",
                    "cannot-be-taken-back",
                    "invalid-field"),
            Act.RESERVE, List.of("accepted", "short-of-stock"),
            Act.END, List.of("accepted", "more-than-reserved"),
            Act.HOLD, List.of("accepted", "invalid-field"),
            Act.RELEASE, List.of("accepted", "not-held", "invalid-field"),
            Act.GRADE, List.of("accepted", "invalid-field"));
    System.out.println("Verdicts: " + verdicts);
    wanted.forEach(
        (act, codes) ->
            codes.forEach(
                code -> assertTrue(verdicts.get(act).containsKey(code), act + " " + code)));
  }
}
