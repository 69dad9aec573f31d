package org.barreltally.web.request;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;

/** The rows of {@code requests}. Every method joins the transaction at hand. */
@ApplicationScoped
public class Requests {

  /** What was asked, by whom, under which id. */
  public record Asked(UUID user, UUID key, String methodPath, byte[] contentHash) {}

  /** What was answered. */
  public record Said(int status, String location, String body) {}

  private static final String OPEN =
      """
      insert into requests (user_id, key, method_path, content_hash, recorded_at)
      values (?, ?, ?, ?, ?) on conflict (user_id, key) do nothing""";
  private static final String CLOSE =
      "update requests set status = ?, location = ?, body = ? where user_id = ? and key = ?";
  private static final String READ =
      """
      select method_path, content_hash, status, location, body from requests
      where user_id = ? and key = ?""";

  private final DataSource database;
  private final Clock clock;

  @Inject
  Requests(DataSource database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Takes the id for this request. Waits while another transaction holds it; says whether it is
   * ours, which it is not if another was answered under it.
   */
  public boolean open(Asked asked) {
    try (Connection connection = database.getConnection();
        PreparedStatement insert = connection.prepareStatement(OPEN)) {
      insert.setObject(1, asked.user());
      insert.setObject(2, asked.key());
      insert.setString(3, asked.methodPath());
      insert.setBytes(4, asked.contentHash());
      insert.setObject(5, clock.instant().atOffset(ZoneOffset.UTC));
      return insert.executeUpdate() == 1;
    } catch (SQLException e) {
      throw new IllegalStateException("a request id could not be taken", e);
    }
  }

  /** Takes a statement with the values of its question marks, to be run in this transaction. */
  public interface Writing {
    void add(String sql, Object... values);
  }

  /** Keeps the answer of a request opened in this transaction. */
  public void close(Asked asked, Said said) {
    close(asked, said, this::write);
  }

  /** As {@link #close(Asked, Said)}, together with what else is written. */
  public void close(Asked asked, Said said, Writing write) {
    write.add(CLOSE, said.status(), said.location(), said.body(), asked.user(), asked.key());
  }

  private void write(String sql, Object... values) {
    try (Connection connection = database.getConnection();
        PreparedStatement statement = connection.prepareStatement(sql)) {
      for (int i = 0; i < values.length; i++) {
        statement.setObject(i + 1, values[i]);
      }
      statement.executeUpdate();
    } catch (SQLException e) {
      throw new IllegalStateException("an answer could not be kept", e);
    }
  }

  /** The answer kept for the same question; empty if another question was asked under the id. */
  public Optional<Said> answerTo(Asked asked) {
    try (Connection connection = database.getConnection();
        PreparedStatement select = connection.prepareStatement(READ)) {
      select.setObject(1, asked.user());
      select.setObject(2, asked.key());
      try (ResultSet row = select.executeQuery()) {
        if (!row.next()) {
          throw new IllegalStateException("a request id that was taken is not there");
        }
        return isSame(asked, row) ? Optional.of(said(row)) : Optional.empty();
      }
    } catch (SQLException e) {
      throw new IllegalStateException("a kept answer could not be read", e);
    }
  }

  private static boolean isSame(Asked asked, ResultSet row) throws SQLException {
    return row.getString("method_path").equals(asked.methodPath())
        && Arrays.equals(row.getBytes("content_hash"), asked.contentHash());
  }

  private static Said said(ResultSet row) throws SQLException {
    return new Said(row.getInt("status"), row.getString("location"), row.getString("body"));
  }
}
