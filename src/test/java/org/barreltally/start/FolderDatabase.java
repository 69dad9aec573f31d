package org.barreltally.start;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;

/** The embedded server of a data folder, asked past the program that uses it. */
public final class FolderDatabase {

  private FolderDatabase() {}

  /** The embedded server's processes of a data folder. */
  static List<ProcessHandle> serversIn(Path folder) throws IOException {
    Path root = folder.toRealPath();
    return ProcessHandle.allProcesses()
        .filter(p -> p.info().command().map(c -> Path.of(c).startsWith(root)).orElse(false))
        .toList();
  }

  /** The login of the owner of a running embedded server. */
  static DatabaseLogin ownerIn(Path folder) throws IOException {
    Path database = folder.resolve("database");
    String port = Files.readAllLines(database.resolve("postmaster.pid")).get(3);
    return new DatabaseLogin(
        "jdbc:postgresql://"
            + InetAddress.getLoopbackAddress().getHostAddress()
            + ":"
            + port
            + "/barreltally",
        "barreltally",
        "barreltally",
        Files.readString(folder.resolve("database-password")).strip());
  }

  /** Asks the embedded server of a data folder, as its owner, for one value. */
  public static String asked(Path folder, String query) throws IOException, SQLException {
    return sql(ownerIn(folder), query);
  }

  /** Asks the embedded server of a data folder as another owner or as that one's application. */
  public static String askedAs(
      Path folder, String role, String password, boolean application, String query)
      throws IOException, SQLException {
    DatabaseLogin login = ownerIn(folder).as(role, password);
    return sql(application ? new DatabaseRoles(login).application() : login, query);
  }

  /** Asks the embedded server of a data folder as the role under which its application signs in. */
  public static String askedAsApplication(Path folder, String query)
      throws IOException, SQLException {
    return sql(new DatabaseRoles(ownerIn(folder)).application(), query);
  }

  /**
   * Makes a role for another sugarhouse's book on the embedded server, as an administrator would.
   */
  public static void roleIn(Path folder, String role, String password)
      throws IOException, SQLException {
    DatabaseLogin owner = ownerIn(folder);
    DatabaseLogin administrator = owner.as("postgres", owner.password());
    if (sql(administrator, "SELECT 1 FROM pg_roles WHERE rolname = '" + role + "'").isEmpty()) {
      sql(
          administrator,
          "CREATE ROLE %1$s LOGIN CREATEROLE PASSWORD '%2$s'; GRANT CREATE ON DATABASE barreltally TO %1$s"
              .formatted(role, password));
    }
  }

  /**
   * Lets {@link Program#LOGIN} in to a book on the embedded server of a data folder, which is that
   * of a role and has made its owner.
   */
  public static void letIn(Path folder, String role, String password)
      throws IOException, SQLException {
    OwnerRow.addTokenTo(ownerIn(folder).as(role, password));
  }

  /** The settings of another copy that shares the embedded server of a data folder. */
  public static Map<String, String> beside(Path folder) throws IOException {
    DatabaseLogin owner = ownerIn(folder);
    return Map.of(
        "BARRELTALLY_DB_URL", owner.jdbcUrl(),
        "BARRELTALLY_DB_USER", owner.user(),
        "BARRELTALLY_DB_PASSWORD", owner.password());
  }

  /** Runs a statement and gives its first value, if it has one. */
  static String sql(DatabaseLogin login, String text) throws SQLException {
    try (Connection connection = login.connect();
        Statement statement = connection.createStatement()) {
      if (!statement.execute(text)) {
        return "";
      }
      ResultSet rows = statement.getResultSet();
      return rows.next() ? rows.getString(1) : "";
    }
  }
}
