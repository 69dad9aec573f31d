package org.barreltally.settings.internal;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javax.sql.DataSource;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.settings.SettingRecord;
import org.barreltally.settings.SettingsChange;

/** The rows of {@code settings}, which are only ever added. */
@ApplicationScoped
public class SettingRows {

  private static final String COLUMNS =
      "SELECT id, name, value, valid_from, recorded_at, recorded_by FROM settings ";

  private final DataSource database;
  private final SettingsJson json;
  private final Ids ids;
  private final RecordedBy recordedBy;

  SettingRows(DataSource database, SettingsJson json, Ids ids, RecordedBy recordedBy) {
    this.database = database;
    this.json = json;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /** How many changes there are; they are never taken away. */
  public long count() {
    return read("SELECT count(*) FROM settings", s -> {}, row -> row.getLong(1)).get(0);
  }

  /** Every change, one setting each, in the order in which they hold. */
  public List<SettingsChange> all() {
    return read(
        COLUMNS + "ORDER BY valid_from, recorded_at, id",
        statement -> {},
        row -> json.change(record(row)));
  }

  /** The newest changes as recorded, before an id, at most so many. */
  public List<SettingRecord> newest(UUID before, int limit) {
    return read(
        COLUMNS + "WHERE CAST(? AS uuid) IS NULL OR id < ? ORDER BY id DESC LIMIT ?",
        statement -> {
          statement.setObject(1, before);
          statement.setObject(2, before);
          statement.setInt(3, limit);
        },
        this::record);
  }

  /** Adds a row for each setting of a change, in the transaction at hand. */
  public void add(SettingsChange change, Instant validFrom, Instant recordedAt) {
    UUID by = recordedBy.user();
    try (Connection connection = database.getConnection();
        PreparedStatement insert =
            connection.prepareStatement(
                "INSERT INTO settings (id, name, value, valid_from, recorded_at, recorded_by)"
                    + " VALUES (?, ?, CAST(? AS jsonb), ?, ?, ?)")) {
      for (Map.Entry<String, JsonNode> setting : json.settings(change).entrySet()) {
        insert.setObject(1, ids.next());
        insert.setString(2, setting.getKey());
        insert.setString(3, setting.getValue().toString());
        insert.setObject(4, validFrom.atOffset(ZoneOffset.UTC));
        insert.setObject(5, recordedAt.atOffset(ZoneOffset.UTC));
        insert.setObject(6, by);
        insert.addBatch();
      }
      insert.executeBatch();
    } catch (SQLException e) {
      throw new IllegalStateException("the database did not take a change of settings", e);
    }
  }

  private SettingRecord record(ResultSet row) throws SQLException {
    return new SettingRecord(
        row.getObject("id", UUID.class),
        row.getString("name"),
        json.value(row.getString("value")),
        row.getObject("valid_from", OffsetDateTime.class).toInstant(),
        row.getObject("recorded_at", OffsetDateTime.class).toInstant(),
        row.getObject("recorded_by", UUID.class));
  }

  private interface Binding {
    void bind(PreparedStatement statement) throws SQLException;
  }

  private interface Reading<T> {
    T read(ResultSet row) throws SQLException;
  }

  private <T> List<T> read(String sql, Binding binding, Reading<T> reading) {
    try (Connection connection = database.getConnection();
        PreparedStatement statement = connection.prepareStatement(sql)) {
      binding.bind(statement);
      try (ResultSet rows = statement.executeQuery()) {
        List<T> read = new ArrayList<>();
        while (rows.next()) {
          read.add(reading.read(rows));
        }
        return read;
      }
    } catch (SQLException e) {
      throw new IllegalStateException("the database did not answer about settings", e);
    }
  }
}
