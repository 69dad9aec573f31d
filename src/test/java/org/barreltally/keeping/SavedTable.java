package org.barreltally.keeping;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.postgresql.PGConnection;

/** Rows of a table as any reader of CSV (Commons CSV here) finds them in a backup. */
final class SavedTable {

  private SavedTable() {}

  static List<String> columns(Forged backup, String table) throws IOException {
    try (CSVParser parser = parser(backup.csv(table))) {
      return parser.getHeaderNames();
    }
  }

  /** Cells in order, of rows in order of their text. */
  static List<String> rows(Forged backup, String table) throws IOException {
    return rows(backup.csv(table));
  }

  /** The same of what PostgreSQL answers to a query. */
  static List<String> rows(EmptyDatabase database, String query) throws SQLException, IOException {
    try (Connection connection = database.owned().owner().getConnection()) {
      connection.createStatement().execute("SET timezone = 'UTC'");
      StringWriter csv = new StringWriter();
      connection
          .unwrap(PGConnection.class)
          .getCopyAPI()
          .copyOut("COPY (" + query + ") TO STDOUT (FORMAT csv, HEADER)", csv);
      return rows(csv.toString());
    }
  }

  private static List<String> rows(String csv) throws IOException {
    List<String> rows = new ArrayList<>();
    try (CSVParser parser = parser(csv)) {
      for (CSVRecord row : parser) {
        rows.add(row.toList().toString());
      }
    }
    rows.sort(null);
    return rows;
  }

  private static CSVParser parser(String csv) throws IOException {
    return CSVParser.parse(
        new StringReader(csv),
        CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get());
  }
}
