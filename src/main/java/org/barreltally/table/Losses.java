package org.barreltally.table;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.Movements;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.PostedMovement;
import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;
import org.barreltally.sales.Merging;
import org.barreltally.shows.Show;
import org.barreltally.shows.Shows;
import org.barreltally.shows.TableBook;
import org.barreltally.shows.TableLine;

/**
 * Jars broken, opened to taste or given away at a table. It happened, so no count is too high, and
 * a lot that the book does not know is one nobody wrote down.
 */
@ApplicationScoped
public class Losses {

  private static final long COUNT_MAX = 5000;
  private static final int REASON_MAX = 200;
  private static final Map<String, String> CAUSES =
      Map.of("broken", PlaceCode.BROKEN, "sampled", PlaceCode.SAMPLED, "given", PlaceCode.GIVEN);

  private final Shows shows;
  private final TableBook tables;
  private final Containers containers;
  private final Items items;
  private final Ledger ledger;
  private final Movements movements;
  private final Days days;

  Losses(
      Shows shows,
      TableBook tables,
      Containers containers,
      Items items,
      Ledger ledger,
      Movements movements,
      Days days) {
    this.shows = shows;
    this.tables = tables;
    this.containers = containers;
    this.items = items;
    this.ledger = ledger;
    this.movements = movements;
    this.days = days;
  }

  /**
   * Notes jars that left a table unsold. A clock that is ahead is taken for now, up to as much as
   * sales allow.
   *
   * @throws InvalidField naming every field that needs mending
   */
  @Transactional
  public Loss tell(UUID id, TellLoss said) {
    check(said);
    Show show = shows.at(id);
    containers.named(said.container(), "container");
    Item item = item(show, said);
    Instant at = at(said.at());
    UUID movement =
        ledger.post(
            Movement.of(MovementKind.WRITE_OFF, at)
                .because(said.reason())
                .move(show.place(), CAUSES.get(said.cause()), item.id(), said.count())
                .build());
    return new Loss(
        movement,
        id,
        at,
        said.container(),
        item.lot(),
        item.grade() == null ? null : ColorClass.of(item.grade()),
        said.count(),
        said.cause());
  }

  /**
   * Takes such a note back; one that was taken back stays so.
   *
   * @param loss the id of the note
   * @throws UnknownLoss if nothing left this table under that id
   */
  @Transactional
  public void takeBack(UUID id, UUID loss, String reason) {
    if (reason == null || reason.isBlank() || reason.length() > REASON_MAX) {
      throw new InvalidField("reason", "Say why in 1 to " + REASON_MAX + " characters.");
    }
    Show show = shows.at(id);
    PostedMovement movement = movements.at(loss);
    boolean here =
        movement.entries().stream().anyMatch(entry -> entry.place().equals(show.place()));
    if (!here || movement.kind() != MovementKind.WRITE_OFF) {
      throw new UnknownLoss(loss);
    }
    if (movement.reversedBy() == null) {
      ledger.reverse(loss, reason);
    }
  }

  private Instant at(Instant said) {
    Instant now = days.now();
    if (said == null || said.isAfter(now) && !said.isAfter(now.plus(Merging.CLOCK_AHEAD_MAX))) {
      return now;
    }
    return days.happened(said, "at");
  }

  private Item item(Show show, TellLoss said) {
    List<TableLine> there =
        tables.of(show).stream()
            .filter(line -> line.container().equals(said.container()) && line.cameThere())
            .filter(line -> said.grade() == null || said.grade() == line.grade())
            .toList();
    String lot = said.lot() != null ? said.lot() : there.size() == 1 ? there.get(0).lot() : null;
    Optional<Item> known = lot == null ? Optional.empty() : items.jarsOf(lot, said.container());
    return known.orElseGet(() -> items.withoutLot(said.container(), grade(said, there)));
  }

  private static String grade(TellLoss said, List<TableLine> there) {
    if (said.grade() != null) {
      return said.grade().code();
    }
    List<ColorClass> grades = there.stream().map(TableLine::grade).distinct().toList();
    return grades.size() == 1 && grades.get(0) != null ? grades.get(0).code() : null;
  }

  private static void check(TellLoss said) {
    List<FieldError> errors = new ArrayList<>();
    if (said.count() == null || said.count() < 1 || said.count() > COUNT_MAX) {
      errors.add(new FieldError("count", "Give a whole number of jars from 1 to 5,000."));
    }
    if (said.cause() == null || !CAUSES.containsKey(said.cause())) {
      errors.add(new FieldError("cause", "Say broken, sampled or given."));
    }
    if (said.lot() != null && said.lot().length() > 40) {
      errors.add(new FieldError("lot", "Give the lot on the label in at most 40 characters."));
    }
    boolean worded = said.reason() != null && !said.reason().isBlank();
    if ("given".equals(said.cause()) && !worded) {
      errors.add(new FieldError("reason", "Say to whom or why it was given, without a name."));
    }
    if (worded && said.reason().length() > REASON_MAX) {
      errors.add(new FieldError("reason", "Say it in at most " + REASON_MAX + " characters."));
    }
    if (!errors.isEmpty()) {
      throw new InvalidField(errors);
    }
  }
}
