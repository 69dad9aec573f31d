package org.barreltally.ledger;

import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.hibernate.Session;

/**
 * SQL statements that travel to the database together: however many there are, they cost one round
 * trip. They run there one after the other, each seeing what those before it did, in the
 * transaction at hand. Capabilities that have a part in the same work add their statements to the
 * same bundle.
 *
 * <p>Values are bound in the order of the question marks: text, numbers, UUIDs, dates, instants, or
 * a {@link Column}.
 */
public final class Bundle {

  /** Reads one row of an answer. */
  public interface Reading {
    void read(ResultSet row) throws SQLException;
  }

  /**
   * What travels here finds its few rows by their keys, so one plan serves whatever the values are.
   * Without saying so, the longer statements were planned anew at every call, which took longer
   * than running them; and a plan made while a table was small would read it whole until its next
   * analysis.
   */
  private static final String PLANNED_ONCE = planning("force_generic_plan", "off");

  private static final String PLANNED_AS_BEFORE = planning("auto", "on");

  private static String planning(String mode, String wholeTables) {
    return """
        SELECT set_config('plan_cache_mode', '%1$s', true), set_config('enable_seqscan', '%2$s', true),
          set_config('enable_hashjoin', '%2$s', true), set_config('enable_mergejoin', '%2$s', true)
        """
        .formatted(mode, wholeTables);
  }

  private static final Object[] NOTHING = {};

  private record Part(String sql, Reading reading, Object[] values) {}

  private final boolean byKeys;
  private final List<Part> parts = new ArrayList<>();
  private final List<Part> last = new ArrayList<>();

  /** Statements that may read many rows, each planned as the database thinks best. */
  public Bundle() {
    this(false);
  }

  private Bundle(boolean byKeys) {
    this.byKeys = byKeys;
  }

  /** Statements that find their few rows by keys, planned once and never reading a table whole. */
  public static Bundle byKeys() {
    return new Bundle(true);
  }

  /** Adds a statement without an answer. */
  public Bundle add(String sql, Object... values) {
    parts.add(new Part(sql, null, values));
    return this;
  }

  /**
   * Adds a statement that goes after all others, because it locks rows that many writers want: so
   * they wait the least.
   */
  public Bundle addLast(String sql, Object... values) {
    last.add(new Part(sql, null, values));
    return this;
  }

  /** Adds a question; {@code reading} is given each row of the answer when it is sent. */
  public Bundle ask(String sql, Reading reading, Object... values) {
    parts.add(new Part(sql, reading, values));
    return this;
  }

  /** Sends everything, after what Hibernate has not written yet. */
  public void send(EntityManager entities) {
    entities.flush();
    entities.unwrap(Session.class).doWork(this::send);
  }

  private void send(Connection connection) throws SQLException {
    List<Part> all = new ArrayList<>();
    if (byKeys) {
      all.add(new Part(PLANNED_ONCE, null, NOTHING));
    }
    all.addAll(parts);
    all.addAll(last);
    if (byKeys) {
      all.add(new Part(PLANNED_AS_BEFORE, null, NOTHING));
    }
    String sql = all.stream().map(Part::sql).collect(Collectors.joining(";\n"));
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      int next = 1;
      for (Part part : all) {
        for (Object value : part.values()) {
          bind(connection, statement, next++, value);
        }
      }
      statement.execute();
      for (Part part : all) {
        if (part.reading() != null) {
          read(statement, part.reading());
        }
        statement.getMoreResults();
      }
    }
  }

  private static void read(PreparedStatement statement, Reading reading) throws SQLException {
    try (ResultSet rows = statement.getResultSet()) {
      while (rows.next()) {
        reading.read(rows);
      }
    }
  }

  private static void bind(
      Connection connection, PreparedStatement statement, int index, Object value)
      throws SQLException {
    if (value == null) {
      statement.setNull(index, Types.NULL);
    } else if (value instanceof Column column) {
      statement.setArray(index, connection.createArrayOf(column.type(), column.values()));
    } else if (value instanceof Instant instant) {
      statement.setObject(index, instant.atOffset(ZoneOffset.UTC));
    } else {
      statement.setObject(index, value);
    }
  }
}
