package org.barreltally.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.barreltally.people.internal.Users;
import org.junit.jupiter.api.Test;

/**
 * Somebody who comes in while their access is being taken away, and is still let in, is remembered
 * no longer than until it is.
 */
@QuarkusTest
class ForgottenInTimeTest {

  private static final String PASSWORD = "a long password";

  @Inject AccessTokens tokens;
  @Inject Passwords passwords;
  @Inject Crew crew;
  @Inject PageSessions sessions;
  @Inject DataSource database;
  @Inject PersonFixture people;
  @Inject Users users;
  @Inject CurrentUser current;

  private String name;
  private UUID person;
  private AccessTokens.Issued issued;

  private void somebodyWhoCameInBefore() {
    current.actAs(users.named(FirstOwner.NAME).orElseThrow().person());
    name = people.with("table", PASSWORD);
    person = users.named(name).orElseThrow().person().id();
    issued = tokens.issue(person, "scale", null);
    assertTrue(cameInByToken());
    assertTrue(cameInByPassword());
  }

  private boolean cameInByToken() {
    return tokens.holder(issued.secret()).isPresent();
  }

  private boolean cameInByPassword() {
    return passwords.judge(name, PASSWORD, null).isPresent();
  }

  /** What another asks at the same time, who does not see what is not committed. */
  private static <T> T meanwhile(Supplier<T> asked) {
    return CompletableFuture.supplyAsync(asked).join();
  }

  @Test
  void by_a_token_that_is_being_revoked() {
    somebodyWhoCameInBefore();
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              tokens.revoke(person, issued.token().id());
              assertTrue(meanwhile(this::cameInByToken), "nothing is committed yet");
            });
    assertEquals(Optional.empty(), tokens.recall(issued.secret()));
    assertEquals(Optional.empty(), tokens.holder(issued.secret()));
  }

  @Test
  void by_a_password_that_is_being_replaced() {
    somebodyWhoCameInBefore();
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              crew.newPassword(name);
              assertTrue(meanwhile(this::cameInByPassword), "nothing is committed yet");
            });
    assertEquals(Optional.empty(), passwords.recall(name, PASSWORD));
    assertEquals(Optional.empty(), passwords.judge(name, PASSWORD, null));
  }

  /** Judging takes some tenths of a second: it may begin before the change and end within it. */
  @Test
  void by_a_sign_in_that_was_judged_on_the_password_before() throws Exception {
    somebodyWhoCameInBefore();
    Users.Known judged = passwords.judge(name, PASSWORD, null, null).orElseThrow();
    AtomicReference<CompletableFuture<Optional<PageSessions.Begun>>> signIn =
        new AtomicReference<>();
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              crew.newPassword(name);
              signIn.set(CompletableFuture.supplyAsync(() -> sessions.begin(judged, null)));
              waitUntilSomebodyWaits();
            });
    assertEquals(Optional.empty(), signIn.get().get(1, TimeUnit.MINUTES));
    assertEquals(Optional.empty(), sessions.begin(judged, null), "nor later");
  }

  private void waitUntilSomebodyWaits() {
    while (!meanwhile(this::doesSomebodyWait)) {
      Thread.onSpinWait();
    }
  }

  private boolean doesSomebodyWait() {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet waiting =
            statement.executeQuery(
                "select exists (select from pg_stat_activity where datname = current_database()"
                    + " and wait_event_type = 'Lock' and query like '%for share%')")) {
      return waiting.next() && waiting.getBoolean(1);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void in_a_role_that_is_being_changed() {
    somebodyWhoCameInBefore();
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              crew.changeRole(name, Role.PACKING);
              assertTrue(meanwhile(this::cameInByToken), "nothing is committed yet");
              assertTrue(meanwhile(this::cameInByPassword), "nothing is committed yet");
            });
    assertEquals(Role.PACKING, tokens.holder(issued.secret()).orElseThrow().role());
    assertEquals(Role.PACKING, passwords.judge(name, PASSWORD, null).orElseThrow().role());
  }

  @Test
  void after_a_change_that_was_undone_all_is_as_before() {
    somebodyWhoCameInBefore();
    QuarkusTransaction.begin();
    tokens.revoke(person, issued.token().id());
    QuarkusTransaction.rollback();
    assertTrue(cameInByToken());
  }
}
