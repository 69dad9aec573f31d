package org.barreltally.stock.rounds;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Places;
import org.barreltally.refusal.InvalidField;
import org.barreltally.stock.Cause;
import org.barreltally.stock.CountShelf;
import org.barreltally.stock.Counting;
import org.barreltally.stock.StockCount;
import org.barreltally.stock.internal.RoundRows;
import org.barreltally.stock.rounds.CountRound.Jar;
import org.barreltally.stock.rounds.CountRound.Sheet;

/** Lets two people count a place without seeing the book or each other, and the book follow. */
@ApplicationScoped
public class Rounds {

  private final Places places;
  private final Counting counting;
  private final RoundRows rows;
  private final Days days;
  private final Ids ids;

  Rounds(Places places, Counting counting, RoundRows rows, Days days, Ids ids) {
    this.places = places;
    this.counting = counting;
    this.rows = rows;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Opens a round for a place.
   *
   * @throws org.barreltally.ledger.UnknownPlace if it is no own place
   * @throws RoundUnderWay if one is open there
   */
  @Transactional
  public CountRound open(String place) {
    String code = places.own(place, "place").code();
    rows.lock("place " + code);
    rows.openAt(code)
        .ifPresent(
            other -> {
              throw new RoundUnderWay(code, other);
            });
    CountRound round = new CountRound(ids.next(), code, days.now(), List.of(), null);
    rows.keep(round);
    return round;
  }

  /**
   * Takes the sheet of the next counter, or the recount.
   *
   * @param said its place is the round's
   * @throws UnknownRound if there is none of that id
   * @throws RoundOver if it waits for no sheet
   * @throws SameCounter if the second counter is the first
   * @throws RecountIncomplete if a recount leaves out what differs, or has what does not
   */
  @Transactional
  public CountRound fill(UUID id, CountShelf said) {
    CountRound round = locked(id);
    if (List.of("agreed", "posted", "given-up").contains(round.state())) {
      throw new RoundOver(round);
    }
    Instant at = counting.check(said);
    String by = said.by().strip();
    if (round.sheets().size() == 1 && round.sheets().get(0).by().equalsIgnoreCase(by)) {
      throw new SameCounter(by);
    }
    Map<Jar, Long> pieces = new HashMap<>();
    said.lines().forEach(l -> pieces.put(new Jar(l.container(), l.lot()), l.count()));
    if (round.sheets().size() == 2) {
      requireWhole(round.differing(), pieces.keySet());
    }
    rows.keep(id, new Sheet(round.sheets().size() + 1, by, at, pieces));
    return at(id);
  }

  private static void requireWhole(List<Jar> asked, Set<Jar> counted) {
    Set<Jar> missing = new HashSet<>(asked);
    missing.removeAll(counted);
    Set<Jar> beyond = new HashSet<>(counted);
    beyond.removeAll(asked);
    if (!missing.isEmpty() || !beyond.isEmpty()) {
      throw new RecountIncomplete(missing, beyond);
    }
  }

  /**
   * Lets the book follow what was found, as it stood when it was counted.
   *
   * @param causes what became of jars that are short
   * @throws UnknownRound if there is none of that id
   * @throws NotAgreedYet if the counters do not agree yet
   * @throws RoundOver if it was posted or given up
   * @throws org.barreltally.stock.NothingShort if a cause is given for jars that are not short
   */
  @Transactional
  public StockCount post(UUID id, Map<Jar, Cause> causes) {
    CountRound round = locked(id);
    if (round.end() != null) {
      throw new RoundOver(round);
    }
    if (!"agreed".equals(round.state())) {
      throw new NotAgreedYet(round);
    }
    Map<Jar, Long> agreed = round.agreed();
    causes.keySet().stream()
        .filter(jar -> !agreed.containsKey(jar))
        .findFirst()
        .ifPresent(
            jar -> {
              throw new InvalidField(
                  "causes",
                  "%s of lot %s is not in this round.".formatted(jar.container(), jar.lot()));
            });
    StockCount count = counting.countAsOf(shelf(round, causes));
    rows.end(id, new CountRound.End(count.id(), null));
    return count;
  }

  /**
   * What was found, beside what the book had when it was counted. Nobody sees it before the
   * counters agree.
   *
   * @throws UnknownRound if there is none of that id
   * @throws NotAgreedYet if the counters do not agree yet
   * @throws RoundOver if it was posted or given up
   */
  @Transactional
  public List<StockCount.Line> found(UUID id) {
    CountRound round = at(id);
    if (round.end() != null) {
      throw new RoundOver(round);
    }
    if (!"agreed".equals(round.state())) {
      throw new NotAgreedYet(round);
    }
    return counting.compare(shelf(round, Map.of()));
  }

  private static CountShelf shelf(CountRound round, Map<Jar, Cause> causes) {
    List<CountShelf.Line> lines = new ArrayList<>();
    round
        .agreed()
        .forEach(
            (jar, count) ->
                lines.add(new CountShelf.Line(jar.container(), jar.lot(), count, causes.get(jar))));
    return new CountShelf(round.place(), round.countedAt(), counters(round), lines);
  }

  private static String counters(CountRound round) {
    String both = round.sheets().get(0).by() + ", " + round.sheets().get(1).by();
    return both.length() <= 80 ? both : both.substring(0, 80);
  }

  /**
   * Gives a round up; nothing is posted.
   *
   * @throws UnknownRound if there is none of that id
   * @throws RoundOver if it was posted or given up
   */
  @Transactional
  public CountRound giveUp(UUID id, String reason) {
    CountRound round = locked(id);
    if (round.end() != null) {
      throw new RoundOver(round);
    }
    rows.end(id, new CountRound.End(null, reason));
    return at(id);
  }

  private CountRound locked(UUID id) {
    rows.lock("round " + id);
    return at(id);
  }

  /**
   * @throws UnknownRound if there is none of that id
   */
  @Transactional
  public CountRound at(UUID id) {
    return rows.find(id).orElseThrow(() -> new UnknownRound(id));
  }

  /** When a sheet was counted that does not say it. */
  public Instant now() {
    return days.now();
  }

  /** In the order they were opened, after one of them (or null), at most so many. */
  @Transactional
  public List<CountRound> list(UUID after, int limit) {
    return rows.list(after, limit);
  }
}
