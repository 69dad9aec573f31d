package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.pricing.Money;
import org.barreltally.shows.internal.OutingLog;
import org.barreltally.shows.internal.ShowLog;
import org.barreltally.shows.internal.ShowRow;
import org.barreltally.shows.internal.ToDoLog;

/** What happened around a show, to be read; and to-dos, to be done. */
@ApplicationScoped
public class ShowRecords {

  private final Shows shows;
  private final ShowLog log;
  private final OutingLog outings;
  private final ToDoLog toDos;
  private final TableBook tables;
  private final Drawers drawers;

  ShowRecords(
      Shows shows,
      ShowLog log,
      OutingLog outings,
      ToDoLog toDos,
      TableBook tables,
      Drawers drawers) {
    this.shows = shows;
    this.log = log;
    this.outings = outings;
    this.toDos = toDos;
    this.tables = tables;
    this.drawers = drawers;
  }

  /** The states a show came into, the first included. */
  @Transactional
  public List<Step> steps(UUID show) {
    return log.steps(show);
  }

  /** The change money of all its pack-outs that stand; empty if none went along. */
  @Transactional
  public Optional<Money> cashFloat(UUID show) {
    return outings.cashFloat(show);
  }

  /** The shows with which it exchanged jars, in either direction. */
  @Transactional
  public List<UUID> exchangedWith(UUID show) {
    return outings.exchangedWith(show);
  }

  /** What was taken as a fact and does not fit, as the book stands now. */
  @Transactional
  public List<LookAt> toLookAt(Show show) {
    return LookAt.at(tables.of(show), drawers.newest(show.id()));
  }

  /** What is not done yet. */
  @Transactional
  public List<ToDo> toDos(UUID show) {
    return toDos.of(show).stream().filter(toDo -> toDo.doneAt() == null).toList();
  }

  /**
   * Marks a to-do as done; one that is done stays so.
   *
   * @throws NoSuchToDo if the show has none of that id
   */
  @Transactional
  public ToDo done(UUID show, UUID toDo) {
    ShowRow row = shows.locked(show, null);
    if (!toDos.done(show, toDo)) {
      throw new NoSuchToDo(toDo, shows.asShow(row));
    }
    return toDos.of(show).stream().filter(t -> t.id().equals(toDo)).findFirst().orElseThrow();
  }
}
