package org.barreltally.start;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Properties;
import javax.sql.DataSource;
import org.barreltally.books.Book;
import org.barreltally.keeping.OwnedDatabase;
import org.postgresql.Driver;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * A database and the role that signs in to it.
 *
 * @param jdbcUrl the address, without user and password
 * @param database the database's name
 */
public record DatabaseLogin(String jdbcUrl, String database, String user, String password) {

  private static final String SECONDS_TO_CONNECT = "10";

  /** Where PostgreSQL keeps what no schema is named for. */
  private static final String USUAL_SCHEMA = "public";

  /** The same database under another role. */
  DatabaseLogin as(String otherUser, String otherPassword) {
    return new DatabaseLogin(jdbcUrl, database, otherUser, otherPassword);
  }

  /**
   * Whether the server follows another one and only reads.
   *
   * @throws CannotStart when it cannot be reached
   */
  boolean isStandby() {
    try (Connection connection = connect();
        Statement statement = connection.createStatement();
        ResultSet answer = statement.executeQuery("SELECT pg_is_in_recovery()")) {
      return answer.next() && answer.getBoolean(1);
    } catch (SQLException e) {
      throw DatabaseFault.sentence(this, e);
    }
  }

  /** The schema of the book: the address's option {@code currentSchema}, or {@code public}. */
  String schema() {
    return Driver.parseURL(jdbcUrl, null).getProperty("currentSchema", USUAL_SCHEMA);
  }

  /** Opens a connection, waiting at most some seconds for the server to answer. */
  Connection connect() throws SQLException {
    Properties properties = new Properties();
    properties.setProperty("user", user);
    properties.setProperty("password", password);
    properties.setProperty("connectTimeout", SECONDS_TO_CONNECT);
    properties.setProperty("loginTimeout", SECONDS_TO_CONNECT);
    properties.setProperty("ApplicationName", "barreltally start");
    return new Driver().connect(jdbcUrl, properties);
  }

  /** The same as {@link #connect}, for those who open connections of their own. */
  private PGSimpleDataSource dataSource() {
    PGSimpleDataSource source = new PGSimpleDataSource();
    // only what the address says: with setURL every default would be named too, and Flyway looks
    // through the whole address for passwords whenever it connects
    Properties said = Driver.parseURL(jdbcUrl, null);
    try {
      for (String name : said.stringPropertyNames()) {
        source.setProperty(name, said.getProperty(name));
      }
    } catch (SQLException e) {
      throw DatabaseFault.sentence(this, e);
    }
    source.setUser(user);
    source.setPassword(password);
    source.setConnectTimeout(Integer.parseInt(SECONDS_TO_CONNECT));
    source.setLoginTimeout(Integer.parseInt(SECONDS_TO_CONNECT));
    source.setApplicationName("barreltally keeping");
    return source;
  }

  /**
   * For those who change a book as its owner: opens connections that find its tables by their bare
   * names.
   *
   * @param schema where they stand
   */
  DataSource in(String schema) {
    PGSimpleDataSource source = dataSource();
    source.setCurrentSchema(schema);
    return source;
  }

  /** The one book in this database, for those who save and restore it. */
  OwnedDatabase owned(String applicationRole) {
    return new OwnedDatabase(dataSource(), applicationRole, applicationRole, schema());
  }

  /** One of several books in this database, for the same. */
  OwnedDatabase owned(Book book, String loginRole) {
    return new OwnedDatabase(dataSource(), book.role(), loginRole, book.name());
  }

  /** The address for people: server and database, no options. */
  String address() {
    return jdbcUrl.replaceFirst("^jdbc:", "").replaceFirst("\\?.*$", "");
  }

  /** Says who signs in where; the password stays out of logs. */
  @Override
  public String toString() {
    return user + " at " + address();
  }
}
