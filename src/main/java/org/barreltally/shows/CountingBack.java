package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;
import org.barreltally.shows.internal.OutingLog;
import org.barreltally.shows.internal.ShowRow;
import org.barreltally.shows.internal.ToDoLog;

/**
 * Counts jars home from a show. A count is a fact: whatever does not fit is taken and listed to be
 * looked at.
 */
@ApplicationScoped
public class CountingBack {

  private static final int NOTE_MAX = 500;
  private static final String WHOLE = "Give a whole number of jars from 0 to 1,000,000.";

  private final Shows shows;
  private final Stepping stepping;
  private final Promises promises;
  private final NamedJars jars;
  private final Drawers drawers;
  private final TableBook tables;
  private final Ledger ledger;
  private final OutingLog log;
  private final ToDoLog toDos;
  private final Days days;

  CountingBack(
      Shows shows,
      Stepping stepping,
      Promises promises,
      NamedJars jars,
      Drawers drawers,
      TableBook tables,
      Ledger ledger,
      OutingLog log,
      ToDoLog toDos,
      Days days) {
    this.shows = shows;
    this.stepping = stepping;
    this.promises = promises;
    this.jars = jars;
    this.drawers = drawers;
    this.tables = tables;
    this.ledger = ledger;
    this.log = log;
    this.toDos = toDos;
    this.days = days;
  }

  /**
   * Takes a count. Several counts of a show add up; the first one closes it, unless it says not to.
   *
   * @param versions of the show as the writer read it; null when the writer does not mind
   * @throws InvalidField naming each count that is missing or below zero
   * @throws NotThatFarYet if the show cannot have had a table
   */
  @Transactional
  public CameBack back(UUID id, Set<String> versions, ComeBack said) {
    check(said);
    drawers.check(said.drawer());
    Instant at = said.at() == null ? days.now() : days.happened(said.at(), "at");
    ShowRow row = shows.locked(id, versions);
    Show show = shows.asShow(row);
    if (!show.state().mayHaveStood()) {
      throw new NotThatFarYet(
          show, "nothing can have come home from it", "Look whether it is the right show.");
    }
    UUID movement = said.lines().isEmpty() ? null : post(show, at, said);
    UUID back = log.cameBack(id, movement, said.lines(), said.note());
    DrawerCount drawer = said.drawer() == null ? null : drawers.keep(id, said.drawer());
    List<ToDo> asked = wetLabels(id, said);
    if (!Boolean.FALSE.equals(said.closes()) && closesNow(show.state())) {
      show = stepping.become(row, ShowState.CLOSED, null);
      promises.releaseAll(show);
    } else {
      row.touched(days.now(), false);
    }
    return new CameBack(
        back,
        id,
        show.state(),
        movement,
        said.lines(),
        drawer,
        LookAt.at(tables.of(show), drawers.newest(id)),
        asked);
  }

  private static boolean closesNow(ShowState state) {
    return state != ShowState.CALLED_OFF && state != ShowState.CLOSED && state != ShowState.SETTLED;
  }

  private UUID post(Show show, Instant at, ComeBack said) {
    String room = jars.room(said.to(), "to");
    List<JarLine> named =
        said.lines().stream()
            .map(line -> new JarLine(line.container(), line.lot(), line.count()))
            .toList();
    List<Item> items = jars.locked(named, true);
    Movement.Builder movement = Movement.of(MovementKind.BACK, at).because(said.note());
    for (int n = 0; n < items.size(); n++) {
      ComeBack.Line line = said.lines().get(n);
      UUID item = items.get(n).id();
      movement.move(show.place(), room, item, line.count());
      movement.move(show.place(), PlaceCode.BROKEN, item, line.brokenOrNone());
      movement.move(show.place(), PlaceCode.SAMPLED, item, line.sampledOrNone());
    }
    return movement.movesNothing() ? null : ledger.post(movement.build());
  }

  private List<ToDo> wetLabels(UUID show, ComeBack said) {
    List<ToDo> asked = new ArrayList<>();
    for (ComeBack.Line line : said.lines()) {
      if (line.wetOrNone() > 0) {
        asked.add(
            toDos.add(
                show,
                ToDo.Kind.WET_LABELS,
                line.container(),
                line.lot(),
                line.wetOrNone(),
                "%d × %s of lot %s came home with wet or loose labels. Dry or replace them before the jars go out again, and see that each still shows its lot."
                    .formatted(line.wetOrNone(), line.container(), line.lot())));
      }
    }
    return asked;
  }

  private static void check(ComeBack said) {
    if (said.lines().size() > JarLine.LINES_MAX
        || said.lines().isEmpty() && said.drawer() == null) {
      throw new InvalidField(
          "lines", "Give 1 to " + JarLine.LINES_MAX + " lines, or the count of the drawer alone.");
    }
    List<FieldError> errors = new ArrayList<>();
    for (int n = 0; n < said.lines().size(); n++) {
      line(said.lines().get(n), "lines[" + n + "]", errors);
    }
    if (said.note() != null && said.note().length() > NOTE_MAX) {
      errors.add(new FieldError("note", "Keep it within " + NOTE_MAX + " characters."));
    }
    if (!errors.isEmpty()) {
      throw new InvalidField(errors);
    }
  }

  private static void line(ComeBack.Line line, String path, List<FieldError> errors) {
    if (line == null) {
      errors.add(new FieldError(path, "Give container, lot and count."));
      return;
    }
    whole(line.count(), path + ".count", errors);
    whole(line.brokenOrNone(), path + ".broken", errors);
    whole(line.sampledOrNone(), path + ".sampled", errors);
    whole(line.wetOrNone(), path + ".wetLabels", errors);
    if (line.count() != null && line.count() >= 0 && line.wetOrNone() > line.count()) {
      errors.add(
          new FieldError(path + ".wetLabels", "Give no more than the jars that were counted."));
    }
  }

  private static void whole(Long count, String field, List<FieldError> errors) {
    if (count == null || count < 0 || count > JarLine.COUNT_MAX) {
      errors.add(new FieldError(field, WHOLE));
    }
  }
}
