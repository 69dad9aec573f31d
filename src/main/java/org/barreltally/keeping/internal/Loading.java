package org.barreltally.keeping.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.barreltally.keeping.BackupDamaged;
import org.barreltally.keeping.BackupStrange;
import org.barreltally.keeping.Manifest;
import org.postgresql.PGConnection;
import org.postgresql.util.PSQLException;
import org.postgresql.util.ServerErrorMessage;

/** Puts the rows of a backup into freshly made tables of the same version. */
final class Loading {

  private final Connection connection;
  private final String schema;
  private final Map<String, BookTable> tables;

  /** Into the tables of a schema; the caller's transaction is used and not ended. */
  Loading(Connection connection, String schema) throws SQLException {
    this.connection = connection;
    this.schema = schema;
    this.tables = Catalog.tables(connection, schema);
    tables.keySet().removeAll(Manifest.LEFT_OUT);
  }

  /**
   * Loads every table, each after those it refers to, then writes them out again and compares: what
   * stands in the database is what the backup holds, to the byte.
   *
   * @throws BackupStrange if the backup has a table or column that this version has not
   * @throws BackupDamaged if it lacks one, or a row breaks a constraint
   */
  void load(BackupFile backup) throws SQLException, IOException {
    Map<String, Manifest.Table> saved =
        backup.manifest().tables().stream()
            .collect(Collectors.toMap(Manifest.Table::name, table -> table));
    compare(saved);
    SameText.in(connection);
    List<BookTable> inOrder = LoadOrder.of(tables.values());
    SchemaObjects.run(connection, "SET CONSTRAINTS ALL IMMEDIATE");
    makeWay(inOrder);
    SchemaObjects.run(connection, "SET CONSTRAINTS ALL DEFERRED");
    for (BookTable table : inOrder) {
      load(table, saved.get(table.name()), backup);
    }
    check(() -> SchemaObjects.run(connection, "SET CONSTRAINTS ALL IMMEDIATE"), "book");
    for (Manifest.Sequence sequence : backup.manifest().sequences()) {
      set(sequence);
    }
    for (BookTable table : tables.values()) {
      readBack(table, saved.get(table.name()));
    }
  }

  private void compare(Map<String, Manifest.Table> saved) {
    for (Manifest.Table each : saved.values()) {
      BookTable table = tables.get(each.name());
      if (table == null) {
        throw new BackupStrange("the table " + each.name());
      }
      Set<String> ours = new HashSet<>(table.columns());
      for (String column : each.columns()) {
        if (!ours.remove(column)) {
          throw new BackupStrange("the column %s of %s".formatted(column, each.name()));
        }
      }
      if (!ours.isEmpty()) {
        throw new BackupDamaged(
            "the table %s lacks %s".formatted(each.name(), ours.iterator().next()));
      }
    }
    for (String name : tables.keySet()) {
      if (!saved.containsKey(name)) {
        throw new BackupDamaged("the table " + name + " is missing");
      }
    }
  }

  /**
   * What the migrations put in makes way for the same rows of the backup. Most tables are empty and
   * are left alone: to truncate one, PostgreSQL makes a new file.
   */
  private void makeWay(List<BookTable> inOrder) throws SQLException {
    for (int n = inOrder.size() - 1; n >= 0; n--) {
      BookTable table = inOrder.get(n);
      if (hasRows(table)) {
        String alter = "ALTER TABLE " + table.sql();
        SchemaObjects.run(connection, alter + " DISABLE TRIGGER USER");
        SchemaObjects.run(connection, "DELETE FROM " + table.sql());
        SchemaObjects.run(connection, alter + " ENABLE TRIGGER USER");
      }
    }
  }

  private boolean hasRows(BookTable table) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("SELECT EXISTS (SELECT FROM " + table.sql() + ")")) {
      row.next();
      return row.getBoolean(1);
    }
  }

  private void load(BookTable table, Manifest.Table saved, BackupFile backup)
      throws SQLException, IOException {
    long[] rows = {0};
    check(
        () -> {
          try (InputStream csv = backup.csv(saved)) {
            rows[0] =
                connection
                    .unwrap(PGConnection.class)
                    .getCopyAPI()
                    .copyIn(table.copyIn(saved.columns()), csv);
          }
        },
        table.name());
    if (rows[0] != saved.rows()) {
      throw new BackupDamaged(
          "%d of %d rows of %s could be read".formatted(rows[0], saved.rows(), table.name()));
    }
  }

  private void set(Manifest.Sequence sequence) throws SQLException {
    List<String> known =
        Catalog.sequences(connection, schema).stream().map(Manifest.Sequence::name).toList();
    if (!known.contains(sequence.name())) {
      throw new BackupStrange("the counter " + sequence.name());
    }
    if (sequence.last() == null) {
      return;
    }
    try (PreparedStatement set = connection.prepareStatement("SELECT setval(?::regclass, ?)")) {
      set.setString(1, BookTable.quoted(schema) + "." + BookTable.quoted(sequence.name()));
      set.setLong(2, sequence.last());
      set.execute();
    }
  }

  private void readBack(BookTable table, Manifest.Table saved) throws SQLException, IOException {
    BookTable inOrder =
        new BookTable(schema, table.name(), saved.columns(), table.key(), table.needs());
    Csv.Sum sum = Csv.write(connection, inOrder, OutputStream.nullOutputStream());
    if (!Objects.equals(sum, new Csv.Sum(saved.rows(), saved.bytes(), saved.sha256()))) {
      throw new BackupDamaged("the table " + table.name() + " reads differently once loaded");
    }
  }

  private interface Step {
    void run() throws SQLException, IOException;
  }

  /** Data that PostgreSQL refuses (SQLState classes 22 and 23) are the backup's fault. */
  private static void check(Step step, String what) throws SQLException, IOException {
    try {
      step.run();
    } catch (PSQLException e) {
      String state = String.valueOf(e.getSQLState());
      if (state.startsWith("22") || state.startsWith("23")) {
        ServerErrorMessage said = e.getServerErrorMessage();
        throw new BackupDamaged(
            "the %s cannot hold it (%s)".formatted(what, said == null ? state : said.getMessage()));
      }
      throw e;
    }
  }
}
