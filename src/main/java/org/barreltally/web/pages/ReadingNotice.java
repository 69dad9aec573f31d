package org.barreltally.web.pages;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import javax.sql.DataSource;
import org.barreltally.web.StartPageNotice;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Says on the start page that this copy only reads, and from when its newest entry is. */
@ApplicationScoped
class ReadingNotice implements StartPageNotice {

  private static final String NEWEST =
      "SELECT to_char(max(recorded_at), 'YYYY-MM-DD HH24:MI') FROM movements";

  private final DataSource database;
  private final boolean reads;

  @Inject
  ReadingNotice(
      DataSource database,
      @ConfigProperty(name = "barreltally.reading-copy", defaultValue = "false") boolean reads) {
    this.database = database;
    this.reads = reads;
  }

  @Override
  public Optional<String> sentence() {
    return reads ? Optional.of(Words.of("today.only-reads", newest())) : Optional.empty();
  }

  private String newest() {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(NEWEST)) {
      row.next();
      return Optional.ofNullable(row.getString(1)).orElse("–");
    } catch (SQLException e) {
      throw new IllegalStateException("the database did not say how new it is", e);
    }
  }
}
