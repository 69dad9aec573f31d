package org.barreltally.supplies.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.sql.SQLException;
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
    try {
      return new SupplyStanding(supply(row::get), row.get("on_hand", Long.class));
    } catch (SQLException e) {
      throw new IllegalStateException("a row that was read cannot be read", e);
    }
  }

  /** Gives the value of a column by its name. */
  interface Columns {
    Object get(String name) throws SQLException;
  }

  static Supply supply(Columns row) throws SQLException {
    return new Supply(
        (String) row.get("code"),
        (String) row.get("name"),
        Supply.Kind.of((String) row.get("kind")),
        (String) row.get("container"),
        (Integer) row.get("per_jar"),
        (Integer) row.get("jars_each"),
        (Long) row.get("low_line"));
  }
}
