package org.barreltally.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.sql.DataSource;
import org.barreltally.books.Books;
import org.barreltally.people.internal.PasswordHash;
import org.barreltally.people.internal.RowsFixture;
import org.barreltally.people.internal.Secrets;
import org.barreltally.people.internal.Users;
import org.junit.jupiter.api.Test;
import org.postgresql.ds.PGSimpleDataSource;

@QuarkusTest
class FirstOwnerTest {

  private static final String SCHEMA = "first_start";

  @Inject FirstOwner started;
  @Inject Users users;
  @Inject Passwords passwords;
  @Inject Clock clock;

  @Test
  void where_there_is_a_user_nobody_is_made() {
    assertEquals(Optional.empty(), started.welcome());
    assertEquals(Role.OWNER, users.named("owner").orElseThrow().person().role());
  }

  @Test
  void of_copies_that_start_at_once_one_tells_the_password_that_holds() throws Exception {
    Users none = RowsFixture.users(emptyDatabase());
    List<String> told = new ArrayList<>();
    for (Optional<String> line : startAtOnce(8, none)) {
      line.ifPresent(told::add);
    }
    assertEquals(1, told.size(), told.toString());
    String start = "Sign in as owner with password ";
    assertTrue(told.get(0).startsWith(start));
    String stored = none.named("owner").orElseThrow().passwordHash();
    assertTrue(PasswordHash.read(stored).matches(told.get(0).substring(start.length())));
  }

  @Test
  void a_chosen_password_is_set_and_not_told() throws Exception {
    Users none = RowsFixture.users(emptyDatabase());
    assertEquals(Optional.empty(), starting(none, Optional.of("chosen by the owner")).call());
    String stored = none.named("owner").orElseThrow().passwordHash();
    assertTrue(PasswordHash.read(stored).matches("chosen by the owner"));
  }

  private List<Optional<String>> startAtOnce(int copies, Users none) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(copies);
    try {
      List<Optional<String>> lines = new ArrayList<>();
      for (Future<Optional<String>> line :
          threads.invokeAll(Collections.nCopies(copies, starting(none, Optional.empty())))) {
        lines.add(line.get());
      }
      return lines;
    } finally {
      threads.shutdownNow();
    }
  }

  private Callable<Optional<String>> starting(Users users, Optional<String> chosen) {
    return () ->
        new FirstOwner(users, passwords, new Secrets(), clock, Books.one(), chosen).welcome();
  }

  /** A schema beside the tests' own, with empty tables of users. */
  private static DataSource emptyDatabase() throws SQLException {
    PGSimpleDataSource database = new PGSimpleDataSource();
    database.setUrl(System.getProperty("barreltally.test.database.url"));
    database.setUser("barreltally");
    database.setPassword(System.getProperty("barreltally.test.database.password"));
    database.setCurrentSchema(SCHEMA);
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("drop schema if exists " + SCHEMA + " cascade");
      statement.execute("create schema " + SCHEMA);
      statement.execute("create table users (like public.users including all)");
      statement.execute("create table code_seeds (like public.code_seeds including all)");
    }
    return database;
  }
}
