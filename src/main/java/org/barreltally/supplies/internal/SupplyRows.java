package org.barreltally.supplies.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.supplies.Supply;
import org.barreltally.supplies.SupplyStanding;

/** The supplies in the database, each with what is on hand. */
@ApplicationScoped
public class SupplyRows {

  private static final String SELECT =
      """
      SELECT s.code, s.name, s.kind, s.container, s.per_jar, s.jars_each, s.low_line, b.on_hand
      FROM supplies s LEFT JOIN supply_balances b ON b.supply = s.code
      """;

  private static final String ADD =
      """
      INSERT INTO supplies (code, name, kind, container, per_jar, jars_each, low_line, recorded_at, recorded_by)
      VALUES (:code, :name, :kind, CAST(:container AS text), CAST(:perJar AS integer),
        CAST(:jarsEach AS integer), CAST(:lowLine AS bigint), :at, :by)
      ON CONFLICT (code) DO NOTHING
      """;

  private final EntityManager entities;
  private final Days days;
  private final RecordedBy recordedBy;

  SupplyRows(EntityManager entities, Days days, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.recordedBy = recordedBy;
  }

  /** Adds a supply; false if the code is taken. */
  public boolean add(Supply supply) {
    return entities
            .createNativeQuery(ADD)
            .setParameter("code", supply.code())
            .setParameter("name", supply.name())
            .setParameter("kind", supply.kind().code())
            .setParameter("container", supply.container())
            .setParameter("perJar", supply.perJar())
            .setParameter("jarsEach", supply.jarsEach())
            .setParameter("lowLine", supply.lowLine())
            .setParameter("at", days.now())
            .setParameter("by", recordedBy.user())
            .executeUpdate()
        == 1;
  }

  public Optional<SupplyStanding> find(String code) {
    return read("WHERE s.code = :code", Map.of("code", code), 1).stream().findFirst();
  }

  /** By code, after a code, at most so many. */
  public List<SupplyStanding> list(String after, int limit) {
    return read("WHERE s.code > :after", Map.of("after", after == null ? "" : after), limit);
  }

  /** What jars of these sizes use up, by code. */
  public List<SupplyStanding> usedBy(Collection<String> sizes) {
    return read(
        "WHERE (s.per_jar IS NOT NULL OR s.jars_each IS NOT NULL)"
            + " AND (s.container IS NULL OR s.container IN (:sizes))",
        Map.of("sizes", sizes),
        Integer.MAX_VALUE);
  }

  private List<SupplyStanding> read(String where, Map<String, Object> parameters, int limit) {
    Query query =
        entities
            .createNativeQuery(SELECT + where + " ORDER BY s.code", Tuple.class)
            .setMaxResults(limit);
    parameters.forEach(query::setParameter);
    List<?> rows = query.getResultList();
    return rows.stream().map(Tuple.class::cast).map(SupplyRows::standing).toList();
  }

  private static SupplyStanding standing(Tuple row) {
    return new SupplyStanding(
        new Supply(
            row.get("code", String.class),
            row.get("name", String.class),
            Supply.Kind.of(row.get("kind", String.class)),
            row.get("container", String.class),
            row.get("per_jar", Integer.class),
            row.get("jars_each", Integer.class),
            row.get("low_line", Long.class)),
        row.get("on_hand", Long.class));
  }
}
