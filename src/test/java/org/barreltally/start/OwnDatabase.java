package org.barreltally.start;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.UUID;

/** An empty database on the test server, for tests that close years or sum over the whole book. */
public class OwnDatabase implements QuarkusTestResourceLifecycleManager {

  @Override
  public Map<String, String> start() {
    DatabaseLogin shared = TestServer.owner();
    String name = "own_" + UUID.randomUUID().toString().substring(24);
    // the embedded server's two first roles share the password
    try (Connection connection = shared.as("postgres", shared.password()).connect();
        Statement statement = connection.createStatement()) {
      statement.execute("CREATE DATABASE " + name + " OWNER " + shared.user());
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
    DatabaseLogin own =
        new DatabaseLogin(
            shared.jdbcUrl().replaceFirst("[^/]*$", name), name, shared.user(), shared.password());
    return ApplicationProperties.database(own, new DatabaseRoles(own).ensure());
  }

  @Override
  public void stop() {}
}
