package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.Money;
import org.barreltally.shows.internal.ToDoLog;

/** The shows of a year and what is due for them next. */
@ApplicationScoped
public class Season {

  /** More shows in a year than a small maker goes to. */
  private static final int SHOWS_MAX = 500;

  private static final String ON_TABLES =
      "SELECT b.place, CAST(sum(b.amount) AS bigint) AS pieces FROM balances b"
          + " JOIN items i ON i.id = b.item WHERE b.standing_at IN (:places) AND i.container IS NOT NULL"
          + " GROUP BY b.place";

  /**
   * A show in its season.
   *
   * @param paid what was paid to the organiser so far
   * @param onTable jars the book has at its table
   */
  public record Entry(Show show, Money paid, long onTable) {}

  /**
   * @param due what is not done yet, the earliest first
   */
  public record View(int year, LocalDate today, List<Due> due, List<Entry> shows) {}

  private final Shows shows;
  private final Payments payments;
  private final ToDoLog toDos;
  private final EntityManager entities;
  private final Days days;

  Season(Shows shows, Payments payments, ToDoLog toDos, EntityManager entities, Days days) {
    this.shows = shows;
    this.payments = payments;
    this.toDos = toDos;
    this.entities = entities;
    this.days = days;
  }

  /** The shows that start in a year, and what is due for them. */
  @Transactional
  public View of(int year) {
    LocalDate today = days.today();
    List<Show> found = shows.list(new Shows.Filter(year, null), null, SHOWS_MAX);
    Map<String, Long> onTables = onTables(found);
    List<Entry> entries =
        found.stream()
            .map(
                show ->
                    new Entry(
                        show, payments.paid(show.id()), onTables.getOrDefault(show.place(), 0L)))
            .toList();
    List<Due> due =
        entries.stream()
            .flatMap(entry -> due(entry, today).stream())
            .sorted(Comparator.comparing(Due::on).thenComparing(Due::what))
            .toList();
    return new View(year, today, due, entries);
  }

  private List<Due> due(Entry entry, LocalDate today) {
    UUID id = entry.show().id();
    return Agenda.of(
        entry.show(),
        today,
        days::dateOf,
        payments.outstanding(entry.show()).signum() <= 0,
        entry.onTable(),
        toDos.of(id).stream().filter(toDo -> toDo.doneAt() == null).toList());
  }

  private Map<String, Long> onTables(List<Show> found) {
    Map<String, Long> pieces = new HashMap<>();
    if (!found.isEmpty()) {
      List<?> rows =
          entities
              .createNativeQuery(ON_TABLES, Tuple.class)
              .setParameter("places", found.stream().map(Show::place).toList())
              .getResultList();
      rows.forEach(
          row ->
              pieces.put(
                  ((Tuple) row).get("place", String.class),
                  ((Tuple) row).get("pieces", Long.class)));
    }
    return pieces;
  }
}
