package org.barreltally.sugarbush.boiling.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.measure.Uncertain;
import org.barreltally.sugarbush.boiling.Amount;
import org.barreltally.sugarbush.boiling.EntryKind;
import org.barreltally.sugarbush.boiling.Reversed;
import org.barreltally.sugarbush.boiling.Role;

/** Reads the sugarhouse's log. */
@ApplicationScoped
public class LogReading {

  private static final String SELECT =
      """
      SELECT e.id, e.kind, e.boil, e.season, e.on_day, e.bush, CAST(e.entered AS text) AS entered,
        coalesce(r.reason, b.reason) AS reason, coalesce(r.recorded_at, b.recorded_at) AS reversed_at
      FROM sugarhouse_entries e LEFT JOIN sugarhouse_reversals r ON r.entry = e.id
        LEFT JOIN sugarhouse_reversals b ON b.entry = e.boil
      """;

  /** The same as it was known at a time. */
  private static final String SELECT_KNOWN =
      SELECT
              .replace("ON r.entry = e.id", "ON r.entry = e.id AND r.recorded_at <= :asof")
              .replace("ON b.entry = e.boil", "ON b.entry = e.boil AND b.recorded_at <= :asof")
          + "WHERE e.recorded_at <= :asof AND ";

  private static final String TANKS =
      """
      SELECT a.tank, sum(CASE WHEN a.role IN ('gathered', 'made') THEN a.ml ELSE -a.ml END) AS ml,
        sqrt(sum(a.ml_u * a.ml_u)) AS u
      FROM sugarhouse_amounts a JOIN sugarhouse_entries e ON e.id = a.entry
      WHERE a.tank IS NOT NULL AND e.season = :season AND e.on_day <= :until
        AND NOT EXISTS (SELECT 1 FROM sugarhouse_reversals r WHERE r.entry IN (e.id, e.boil))
      GROUP BY a.tank ORDER BY a.tank
      """;

  private final EntityManager entities;
  private final ObjectMapper json;

  LogReading(EntityManager entities, ObjectMapper json) {
    this.entities = entities;
    this.json = json;
  }

  public Optional<Entry> find(UUID id, EntryKind kind) {
    return read("WHERE e.id = :id AND e.kind = :kind", Map.of("id", id, "kind", kind.code()), 1)
        .stream()
        .findFirst();
  }

  /** The parts of boils, in the order of their entry. */
  public List<Entry> parts(Collection<UUID> boils) {
    return parts(boils, null);
  }

  /**
   * The parts of boils, in the order of their entry.
   *
   * @param asOf what was entered and taken back by then counts; null for all
   */
  public List<Entry> parts(Collection<UUID> boils, Instant asOf) {
    return boils.isEmpty()
        ? List.of()
        : known("e.boil IN (:boils) ORDER BY e.id", Map.of("boils", boils), asOf);
  }

  /**
   * Entries of a kind, the newest first.
   *
   * @param season null for all
   * @param after the last one given before, or null
   */
  public List<Entry> list(EntryKind kind, Integer season, UUID after, int limit) {
    StringBuilder where = new StringBuilder("WHERE e.kind = :kind");
    Map<String, Object> parameters = new HashMap<>(Map.of("kind", kind.code()));
    if (season != null) {
      where.append(" AND e.season = :season");
      parameters.put("season", season);
    }
    if (after != null) {
      where.append(" AND e.id < :after");
      parameters.put("after", after);
    }
    return read(where + " ORDER BY e.id DESC", parameters, limit);
  }

  /**
   * All that counts of a kind in a season, in the order of its entry.
   *
   * @param asOf what was entered and taken back by then counts; null for all
   */
  public List<Entry> counting(EntryKind kind, int season, Instant asOf) {
    return known(
        "e.kind = :kind AND e.season = :season AND r.entry IS NULL AND b.entry IS NULL"
            + " ORDER BY e.id",
        Map.of("kind", kind.code(), "season", season),
        asOf);
  }

  /** What stands in each tank by the log at the end of a day, mL at 20 °C; below zero too. */
  public Map<String, Uncertain> tanks(int season, LocalDate until) {
    Map<String, Uncertain> tanks = new java.util.LinkedHashMap<>();
    List<?> rows =
        entities
            .createNativeQuery(TANKS, Tuple.class)
            .setParameter("season", season)
            .setParameter("until", until)
            .getResultList();
    for (Object each : rows) {
      Tuple row = (Tuple) each;
      tanks.put(
          row.get("tank", String.class),
          new Uncertain(row.get("ml", Double.class), row.get("u", Double.class)));
    }
    return tanks;
  }

  /** What was said in an entry. */
  public <T> T said(Entry entry, Class<T> type) {
    try {
      return json.readValue(entry.entered(), type);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the entry " + entry.id() + " cannot be read", e);
    }
  }

  private List<Entry> known(String condition, Map<String, Object> parameters, Instant asOf) {
    if (asOf == null) {
      return read(SELECT, "WHERE " + condition, parameters, null);
    }
    Map<String, Object> all = new HashMap<>(parameters);
    all.put("asof", asOf);
    return read(SELECT_KNOWN, condition, all, null);
  }

  private List<Entry> read(String condition, Map<String, Object> parameters, Integer limit) {
    return read(SELECT, condition, parameters, limit);
  }

  private List<Entry> read(
      String select, String condition, Map<String, Object> parameters, Integer limit) {
    Query query = entities.createNativeQuery(select + condition, Tuple.class);
    if (limit != null) {
      query.setMaxResults(limit);
    }
    parameters.forEach(query::setParameter);
    List<Tuple> rows = new ArrayList<>();
    query.getResultList().forEach(row -> rows.add((Tuple) row));
    Map<UUID, List<Amount>> amounts =
        rows.isEmpty()
            ? Map.of()
            : amounts(rows.stream().map(row -> row.get("id", UUID.class)).toList());
    return rows.stream().map(row -> entry(row, amounts)).toList();
  }

  private static Entry entry(Tuple row, Map<UUID, List<Amount>> amounts) {
    UUID id = row.get("id", UUID.class);
    String reason = row.get("reason", String.class);
    return new Entry(
        id,
        EntryKind.of(row.get("kind", String.class)),
        row.get("boil", UUID.class),
        row.get("season", Integer.class),
        row.get("on_day", LocalDate.class),
        row.get("bush", String.class),
        row.get("entered", String.class),
        amounts.getOrDefault(id, List.of()),
        reason == null ? null : new Reversed(reason, row.get("reversed_at", Instant.class)));
  }

  private Map<UUID, List<Amount>> amounts(List<UUID> entries) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT a.* FROM sugarhouse_amounts a WHERE a.entry IN (:entries)", Tuple.class)
            .setParameter("entries", entries)
            .getResultList();
    Map<UUID, List<Amount>> amounts = new HashMap<>();
    for (Object each : rows) {
      Tuple row = (Tuple) each;
      amounts
          .computeIfAbsent(row.get("entry", UUID.class), id -> new ArrayList<>())
          .add(
              new Amount(
                  Role.of(row.get("role", String.class)),
                  row.get("tank", String.class),
                  uncertain(row, "ml"),
                  uncertain(row, "grams"),
                  uncertain(row, "brix"),
                  uncertain(row, "sugar")));
    }
    return amounts;
  }

  private static Uncertain uncertain(Tuple row, String column) {
    return new Uncertain(row.get(column, Double.class), row.get(column + "_u", Double.class));
  }
}
