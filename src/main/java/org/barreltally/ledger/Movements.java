package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.ledger.PostedMovement.Entry;

/** The movements of the book, to be read. */
@ApplicationScoped
public class Movements {

  /**
   * Which movements to list; a null lets all through.
   *
   * @param item moved in it
   * @param place touched by it
   * @param from first day on which it happened
   * @param to last day on which it happened
   * @param bookYear the year it is booked in
   * @param late whether it happened in a year that was closed by then
   * @param lot moved in it, in bulk or in jars
   */
  public record Filter(
      UUID item,
      String place,
      LocalDate from,
      LocalDate to,
      Integer bookYear,
      Boolean late,
      String lot) {

    /** The late ones booked in a year. */
    public static Filter lateIn(int bookYear) {
      return new Filter(null, null, null, null, bookYear, true, null);
    }
  }

  private static final String HEADERS =
      """
      SELECT m.id, m.kind, m.happened_at, m.recorded_at, m.book_year, m.late, m.reason, m.reverses,
        r.id AS reversed_by
      FROM movements m LEFT JOIN movements r ON r.reverses = m.id
      """;

  private static final String ENTRIES =
      """
      SELECT e.movement, e.place, e.item, i.lot, i.container, e.amount, e.balance_after
      FROM entries e JOIN items i ON i.id = e.item
      WHERE e.movement IN (:movements) ORDER BY e.movement, e.line
      """;

  private final EntityManager entities;
  private final Days days;

  Movements(EntityManager entities, Days days) {
    this.entities = entities;
    this.days = days;
  }

  /**
   * The movement an address names.
   *
   * @throws UnknownMovement if there is none of that id
   */
  @Transactional
  public PostedMovement at(UUID id) {
    return read(" WHERE m.id = :id", Map.of("id", id), 1).stream()
        .findFirst()
        .orElseThrow(() -> new UnknownMovement(id));
  }

  /** Movements in the order they were recorded, after one of them (or null), at most so many. */
  @Transactional
  public List<PostedMovement> list(Filter filter, UUID after, int limit) {
    StringBuilder condition = new StringBuilder(" WHERE true");
    Map<String, Object> parameters = new HashMap<>();
    add(condition, parameters, " AND m.id > :after", "after", after);
    add(condition, parameters, " AND m.happened_at >= :from", "from", beginning(filter.from()));
    LocalDate dayAfter = filter.to() == null ? null : filter.to().plusDays(1);
    add(condition, parameters, " AND m.happened_at < :before", "before", beginning(dayAfter));
    add(condition, parameters, " AND m.book_year = :year", "year", filter.bookYear());
    if (filter.late() != null) {
      condition.append(filter.late() ? " AND m.late" : " AND NOT m.late");
    }
    add(
        condition,
        parameters,
        " AND m.id IN (SELECT e.movement FROM items i JOIN balances b ON b.item = i.id"
            + " JOIN entries e ON e.place = b.place AND e.item = b.item WHERE i.lot = :lot)",
        "lot",
        filter.lot());
    if (filter.item() != null || filter.place() != null) {
      condition.append(" AND EXISTS (SELECT 1 FROM entries e WHERE e.movement = m.id");
      add(condition, parameters, " AND e.item = :item", "item", filter.item());
      add(condition, parameters, " AND e.place = :place", "place", filter.place());
      condition.append(")");
    }
    return read(condition + " ORDER BY m.id", parameters, limit);
  }

  private Instant beginning(LocalDate day) {
    return day == null ? null : days.beginning(day);
  }

  private static void add(
      StringBuilder condition,
      Map<String, Object> parameters,
      String clause,
      String name,
      Object value) {
    if (value != null) {
      condition.append(clause);
      parameters.put(name, value);
    }
  }

  private List<PostedMovement> read(String condition, Map<String, Object> parameters, int limit) {
    Query query = entities.createNativeQuery(HEADERS + condition, Tuple.class).setMaxResults(limit);
    parameters.forEach(query::setParameter);
    List<?> found = query.getResultList();
    Map<UUID, Tuple> headers = new LinkedHashMap<>();
    for (Object row : found) {
      headers.put(((Tuple) row).get("id", UUID.class), (Tuple) row);
    }
    if (headers.isEmpty()) {
      return List.of();
    }
    List<?> rows =
        entities
            .createNativeQuery(ENTRIES, Tuple.class)
            .setParameter("movements", headers.keySet())
            .getResultList();
    Map<UUID, List<Entry>> entries =
        rows.stream()
            .map(Tuple.class::cast)
            .collect(
                Collectors.groupingBy(
                    row -> row.get("movement", UUID.class),
                    Collectors.mapping(Movements::entry, Collectors.toList())));
    return headers.entrySet().stream()
        .map(header -> movement(header.getValue(), entries.get(header.getKey())))
        .toList();
  }

  private static Entry entry(Tuple row) {
    String container = row.get("container", String.class);
    return new Entry(
        row.get("place", String.class),
        row.get("item", UUID.class),
        row.get("lot", String.class),
        container,
        row.get("amount", Long.class),
        container == null ? "g" : "piece",
        row.get("balance_after", Long.class));
  }

  private static PostedMovement movement(Tuple row, List<Entry> entries) {
    MovementKind kind = MovementKind.of(row.get("kind", String.class));
    UUID reversedBy = row.get("reversed_by", UUID.class);
    return new PostedMovement(
        row.get("id", UUID.class),
        kind,
        row.get("happened_at", Instant.class),
        row.get("recorded_at", Instant.class),
        row.get("book_year", Integer.class),
        row.get("late", Boolean.class),
        row.get("reason", String.class),
        row.get("reverses", UUID.class),
        reversedBy,
        reversedBy == null && kind.canBeTakenBack(),
        entries);
  }
}
