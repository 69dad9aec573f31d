package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.InvalidField;
import org.barreltally.shows.internal.OutingLog;
import org.barreltally.shows.internal.ShowRow;

/**
 * Jars swapped between two tables of the same day. It happened, so no count is too high: a table
 * that stands below zero afterwards needs a count.
 */
@ApplicationScoped
public class TableTransfers {

  private final Shows shows;
  private final Stepping stepping;
  private final NamedJars jars;
  private final TableBook tables;
  private final Containers containers;
  private final Items items;
  private final Ledger ledger;
  private final OutingLog log;
  private final Days days;

  TableTransfers(
      Shows shows,
      Stepping stepping,
      NamedJars jars,
      TableBook tables,
      Containers containers,
      Items items,
      Ledger ledger,
      OutingLog log,
      Days days) {
    this.shows = shows;
    this.stepping = stepping;
    this.jars = jars;
    this.tables = tables;
    this.containers = containers;
    this.items = items;
    this.ledger = ledger;
    this.log = log;
    this.days = days;
  }

  /**
   * Notes jars that went from one table to another. Without a lot it is the lot of that container
   * on the table, if there is but one; otherwise the counts tell later.
   *
   * @param versions of the giving show as the writer read it; null when the writer does not mind
   * @throws UnknownShow naming {@code to}
   * @throws DaysApart if the shows share no day, set-up counted
   * @throws NotThatFarYet if one of them cannot have a table
   */
  @Transactional
  public Transferred transfer(UUID from, Set<String> versions, TransferJars said) {
    NamedJars.counts(said.lines());
    Instant at = said.at() == null ? days.now() : days.happened(said.at(), "at");
    if (said.to() == null || said.to().equals(from)) {
      throw new InvalidField("to", "Give the id of the show the jars went to.");
    }
    Show giving = shows.at(from);
    Show taking = shows.named(said.to(), "to");
    ShowRow first = shows.locked(from.compareTo(said.to()) < 0 ? from : said.to(), null);
    ShowRow second = shows.locked(first.id().equals(from) ? said.to() : from, null);
    ShowRow givingRow = first.id().equals(from) ? first : second;
    shows.locked(from, versions);
    check(giving, taking);
    Map<Item, Long> pieces = pieces(giving, said.lines());
    Movement.Builder movement = Movement.of(MovementKind.TABLE_TRANSFER, at);
    pieces.forEach(
        (item, count) -> movement.move(giving.place(), taking.place(), item.id(), count));
    UUID posted = ledger.post(movement.build());
    UUID id = log.transferred(from, said.to(), posted);
    givingRow.touched(days.now(), false);
    arrived(givingRow == first ? second : first);
    return new Transferred(
        id,
        from,
        said.to(),
        posted,
        at,
        pieces.entrySet().stream().map(TableTransfers::line).toList());
  }

  private static void check(Show giving, Show taking) {
    for (Show show : List.of(giving, taking)) {
      if (!show.state().mayHaveStood()) {
        throw new NotThatFarYet(
            show, "it has no table that jars go to or leave", "Mend the show, or its state.");
      }
    }
    if (!giving.overlaps(taking)) {
      throw new DaysApart(giving, taking);
    }
  }

  private void arrived(ShowRow taking) {
    if (taking.state() == ShowState.ACCEPTED || taking.state() == ShowState.PAID) {
      stepping.become(taking, ShowState.PACKED, null);
    } else {
      taking.touched(days.now(), false);
    }
  }

  private Map<Item, Long> pieces(Show giving, List<JarLine> lines) {
    List<JarLine> known = new ArrayList<>();
    Map<Item, Long> pieces = new LinkedHashMap<>();
    for (int n = 0; n < lines.size(); n++) {
      JarLine line = lines.get(n);
      containers.named(line.container(), "lines[" + n + "].container");
      String lot = line.lot() != null ? line.lot() : onlyLot(giving, line.container());
      if (lot != null) {
        known.add(new JarLine(line.container(), lot, line.count()));
      } else {
        pieces.merge(
            items.withoutLot(line.container(), onlyGrade(giving, line.container())),
            line.count(),
            Math::addExact);
      }
    }
    if (!known.isEmpty()) {
      NamedJars.together(jars.locked(known, true), known)
          .forEach((item, count) -> pieces.merge(item, count, Math::addExact));
    }
    return pieces;
  }

  /** The one lot of a container that came to a table; null if there are more, or none. */
  private String onlyLot(Show show, String container) {
    List<String> lots =
        tables.of(show).stream()
            .filter(line -> line.container().equals(container) && line.lot() != null)
            .filter(line -> line.packedOut() + line.received() > 0)
            .map(TableLine::lot)
            .distinct()
            .toList();
    return lots.size() == 1 ? lots.get(0) : null;
  }

  /** The one grade of a container that came to a table; null if there are more, or none. */
  private String onlyGrade(Show show, String container) {
    List<ColorClass> grades =
        tables.of(show).stream()
            .filter(line -> line.container().equals(container) && line.grade() != null)
            .filter(line -> line.packedOut() + line.received() > 0)
            .map(TableLine::grade)
            .distinct()
            .toList();
    return grades.size() == 1 ? grades.get(0).code() : null;
  }

  private static Transferred.Line line(Map.Entry<Item, Long> moved) {
    Item item = moved.getKey();
    return new Transferred.Line(
        item.container(),
        item.lot(),
        item.grade() == null ? null : ColorClass.of(item.grade()),
        moved.getValue());
  }
}
