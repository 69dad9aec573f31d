package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Reservations;
import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.InvalidField;
import org.barreltally.shows.internal.ShowLog;
import org.barreltally.shows.internal.ShowRow;

/** Jars promised to shows, before they are packed out. */
@ApplicationScoped
public class Promises {

  private static final int LINES_MAX = 200;
  private static final long COUNT_MAX = 1_000_000;

  /**
   * So many jars of a container and grade.
   *
   * @param count pieces, 1 to 1,000,000
   */
  public record Line(String container, ColorClass grade, Long count) {}

  /** A reservation for a show and what of it is still open. */
  public record Promise(UUID reservation, List<Line> open) {}

  private final Shows shows;
  private final Reservations reservations;
  private final Containers containers;
  private final ShowLog log;
  private final Days days;

  Promises(Shows shows, Reservations reservations, Containers containers, ShowLog log, Days days) {
    this.shows = shows;
    this.reservations = reservations;
    this.containers = containers;
    this.log = log;
    this.days = days;
  }

  /**
   * Promises jars to a show, all or none.
   *
   * @throws NotThatFarYet if the show was declined, called off or is over
   * @throws org.barreltally.ledger.ShortOfStock naming what there is too little of
   */
  @Transactional
  public Promise reserve(UUID show, Set<String> versions, List<Line> lines) {
    if (lines == null || lines.isEmpty() || lines.size() > LINES_MAX) {
      throw new InvalidField("lines", "Give 1 to " + LINES_MAX + " lines.");
    }
    List<Reservations.Line> wanted = new ArrayList<>();
    for (int n = 0; n < lines.size(); n++) {
      wanted.add(read(lines.get(n), "lines[" + n + "]"));
    }
    ShowRow row = shows.locked(show, versions);
    if (row.state() != ShowState.APPLIED && !row.state().takesJars()) {
      throw new NotThatFarYet(
          shows.asShow(row), "no jars can be promised to it", "Promise them to another show.");
    }
    UUID reservation = reservations.reserve(wanted);
    log.reserved(show, reservation);
    row.touched(days.now(), false);
    return new Promise(reservation, open(reservation));
  }

  private Reservations.Line read(Line line, String path) {
    if (line == null || line.container() == null || line.grade() == null) {
      throw new InvalidField(path, "Give container, grade and count.");
    }
    containers.named(line.container(), path + ".container");
    if (line.count() == null || line.count() < 1 || line.count() > COUNT_MAX) {
      throw new InvalidField(path + ".count", "Give a whole number of jars from 1 to 1,000,000.");
    }
    return new Reservations.Line(line.container(), line.grade().code(), line.count());
  }

  /**
   * Frees what of a show's reservation is still open.
   *
   * @throws NoSuchReservation if it is not for this show
   */
  @Transactional
  public Promise release(UUID show, UUID reservation) {
    ShowRow row = shows.locked(show, null);
    if (!log.reservations(show).contains(reservation)) {
      throw new NoSuchReservation(reservation, shows.asShow(row));
    }
    release(reservation);
    row.touched(days.now(), false);
    return new Promise(reservation, open(reservation));
  }

  /** What is still promised to a show, reservation by reservation, the oldest first. */
  @Transactional
  public List<Promise> of(UUID show) {
    return log.reservations(show).stream()
        .map(reservation -> new Promise(reservation, open(reservation)))
        .filter(promise -> !promise.open().isEmpty())
        .toList();
  }

  /** Frees all that is still promised to a show. */
  List<Line> releaseAll(Show show) {
    List<Line> freed = new ArrayList<>();
    for (Promise promise : of(show.id())) {
      release(promise.reservation());
      freed.addAll(promise.open());
    }
    return freed;
  }

  private void release(UUID reservation) {
    List<Reservations.Line> open = reservations.open(reservation);
    if (!open.isEmpty()) {
      reservations.end(reservation, open, Reservations.End.RELEASED);
    }
  }

  private List<Line> open(UUID reservation) {
    return reservations.open(reservation).stream()
        .map(line -> new Line(line.container(), ColorClass.of(line.grade()), line.pieces()))
        .toList();
  }

  /** How many of a container and grade are still promised to a show. */
  long open(UUID show, String container, String grade) {
    return of(show).stream()
        .flatMap(promise -> promise.open().stream())
        .filter(line -> line.container().equals(container) && line.grade().code().equals(grade))
        .mapToLong(Line::count)
        .sum();
  }

  /** Takes so many of a container and grade out of a show's reservations, the oldest first. */
  void take(UUID show, String container, String grade, long pieces) {
    long left = pieces;
    for (Promise promise : of(show)) {
      for (Line line : promise.open()) {
        boolean fits = line.container().equals(container) && line.grade().code().equals(grade);
        long taken = fits ? Math.min(left, line.count()) : 0;
        if (taken > 0) {
          reservations.end(
              promise.reservation(),
              List.of(new Reservations.Line(container, grade, taken)),
              Reservations.End.TAKEN);
          left -= taken;
        }
      }
    }
  }
}
