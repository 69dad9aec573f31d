package org.barreltally.keeping;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.UUID;
import org.eclipse.microprofile.config.ConfigProvider;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationVersion;
import org.postgresql.Driver;
import org.postgresql.ds.PGSimpleDataSource;

/** A database of its own on the test server, owned by the same role as the book of the tests. */
public final class EmptyDatabase implements AutoCloseable {

  private static final String ROWS = "SELECT t::text FROM %s t ORDER BY 1";
  private static final String ROWS_OF_COLUMNS = "SELECT ROW(%s)::text FROM %s ORDER BY 1";
  private static final String COLUMNS =
      "SELECT quote_ident(attname) FROM pg_attribute WHERE attrelid = 'public.%s'::regclass"
          + " AND attnum > 0 AND NOT attisdropped ORDER BY attnum";
  private static final String TABLES =
      "SELECT relname FROM pg_class WHERE relnamespace = 'public'::regnamespace AND relkind = 'r' AND relpersistence = 'p'"
          + " AND relname NOT IN ('sessions', 'flyway_schema_history')";

  /** By version, databases with its tables and no book. */
  private static final Map<String, String> TEMPLATES = new HashMap<>();

  /** Until the tests end, like the server. */
  private static Connection administrator;

  private final String name;
  private boolean untouched = true;

  private EmptyDatabase(String name) {
    this.name = name;
  }

  /** A new one, in which no migration ran. */
  public static EmptyDatabase create() throws SQLException {
    EmptyDatabase made = new EmptyDatabase("kept_" + UUID.randomUUID().toString().substring(24));
    create(made.name, "template1");
    return made;
  }

  /** The database in which the program under test keeps its book. */
  static OwnedDatabase ofTheProgram() {
    return owned(setting("jdbc-url"));
  }

  public OwnedDatabase owned() {
    return owned(setting("jdbc-url").replaceFirst("[^/]*$", name));
  }

  private static OwnedDatabase owned(String url) {
    PGSimpleDataSource source = source(url, setting("username"));
    String application = setting("username") + "_app";
    return new OwnedDatabase(source, application, application, "public");
  }

  private static PGSimpleDataSource source(String url, String user) {
    PGSimpleDataSource source = new PGSimpleDataSource();
    Properties said = Driver.parseURL(url, null);
    try {
      for (String part : said.stringPropertyNames()) {
        source.setProperty(part, said.getProperty(part));
      }
    } catch (SQLException e) {
      throw new IllegalArgumentException(url, e);
    }
    source.setUser(user);
    source.setPassword(setting("password")); // the embedded server's two first roles share it
    return source;
  }

  private static String setting(String part) {
    return ConfigProvider.getConfig().getValue("quarkus.flyway." + part, String.class);
  }

  /** Makes the tables as a version of the program had them; a copy of them where it can. */
  EmptyDatabase migratedTo(String version) throws SQLException {
    if (!untouched) {
      migrate(version);
    } else if (TEMPLATES.containsKey(version)) {
      close();
      create(name, TEMPLATES.get(version));
    } else {
      migrate(version);
      create(name + "_template", name);
      TEMPLATES.put(version, name + "_template");
    }
    untouched = false;
    return this;
  }

  private static void create(String name, String template) throws SQLException {
    asAdministrator(
        "CREATE DATABASE %s TEMPLATE %s OWNER %s".formatted(name, template, setting("username")));
  }

  private void migrate(String version) {
    Flyway.configure(getClass().getClassLoader())
        .dataSource(owned().owner())
        .locations("classpath:db/migration")
        .placeholders(Map.of("app_role", owned().applicationRole()))
        .target(MigrationVersion.fromVersion(version))
        .load()
        .migrate();
  }

  public void run(String sql) throws SQLException {
    untouched = false;
    try (Connection connection = owned().owner().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  public String value(String sql) throws SQLException {
    return column(owned(), sql).get(0);
  }

  /** Every row of every table but sign-ins and migrations, by table, as text in order. */
  Map<String, List<String>> rows() throws SQLException {
    return rows(owned());
  }

  static Map<String, List<String>> rows(OwnedDatabase database) throws SQLException {
    Map<String, List<String>> rows = new TreeMap<>();
    try (Connection connection = database.owner().getConnection()) {
      for (String table : column(connection, TABLES)) {
        rows.put(table, column(connection, ROWS.formatted(table)));
      }
    }
    return rows;
  }

  /** The columns of every table that {@link #rows()} shows, as SQL, by table. */
  Map<String, String> columns() throws SQLException {
    Map<String, String> columns = new TreeMap<>();
    try (Connection connection = owned().owner().getConnection()) {
      for (String table : column(connection, TABLES)) {
        columns.put(table, String.join(", ", column(connection, COLUMNS.formatted(table))));
      }
    }
    return columns;
  }

  /** As {@link #rows()}, of these tables and columns alone. */
  Map<String, List<String>> rows(Map<String, String> columns) throws SQLException {
    Map<String, List<String>> rows = new TreeMap<>();
    try (Connection connection = owned().owner().getConnection()) {
      for (Map.Entry<String, String> table : columns.entrySet()) {
        rows.put(
            table.getKey(),
            column(connection, ROWS_OF_COLUMNS.formatted(table.getValue(), table.getKey())));
      }
    }
    return rows;
  }

  public static List<String> column(OwnedDatabase database, String sql) throws SQLException {
    try (Connection connection = database.owner().getConnection()) {
      return column(connection, sql);
    }
  }

  private static List<String> column(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      List<String> values = new ArrayList<>();
      while (rows.next()) {
        values.add(rows.getString(1));
      }
      return values;
    }
  }

  /** One signing in for all of them: it takes longer than most of what is asked then. */
  private static synchronized void asAdministrator(String sql) throws SQLException {
    if (administrator == null) {
      String url = setting("jdbc-url").replaceFirst("[^/]*$", "postgres");
      administrator = source(url, "postgres").getConnection();
    }
    try (Statement statement = administrator.createStatement()) {
      statement.execute(sql);
    }
  }

  @Override
  public void close() throws SQLException {
    asAdministrator("DROP DATABASE " + name + " WITH (FORCE)");
  }
}
