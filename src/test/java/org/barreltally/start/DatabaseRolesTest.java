package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.postgresql.PGConnection;

class DatabaseRolesTest {

  private static DatabaseLogin administrator;

  @BeforeAll
  static void start() {
    DatabaseLogin owner = TestServer.owner();
    administrator = owner.as("postgres", owner.password());
  }

  /**
   * Outside check: OpenSSL, {@code printf 'barreltally application role for syrup' | openssl dgst
   * -sha256 -hmac 'a made-up password' -binary | base64}, then + and / written as - and _.
   */
  @Test
  void the_password_is_the_one_openssl_derives() {
    assertEquals(
        "OJPioT3v-2d61jPuwDM9wUOf_kCPtB3ubbtmUW43Gio",
        DatabaseRoles.applicationPassword("a made-up password", "syrup"));
  }

  @Test
  void another_database_or_owner_password_gives_another_password() {
    String one = DatabaseRoles.applicationPassword("a", "syrup");

    assertNotEquals(one, DatabaseRoles.applicationPassword("a", "jars"));
    assertNotEquals(one, DatabaseRoles.applicationPassword("b", "syrup"));
  }

  @Test
  void a_name_that_leaves_no_room_for_the_second_one_is_refused() {
    DatabaseLogin owner = administrator.as("x".repeat(60), "p");

    assertThrows(CannotStart.class, () -> new DatabaseRoles(owner).application());
    assertEquals(
        "x".repeat(59) + "_app",
        new DatabaseRoles(administrator.as("x".repeat(59), "p")).application().user());
  }

  @Test
  void the_role_is_made_once_and_can_sign_in_but_make_no_table() throws SQLException {
    DatabaseLogin owner = ownerNamed("maker \"Q\"", "LOGIN CREATEROLE");

    DatabaseLogin application = new DatabaseRoles(owner).ensure();

    assertEquals("maker \"Q\"_app", application.user());
    assertEquals(application, new DatabaseRoles(owner).ensure());
    SQLException refused =
        assertThrows(SQLException.class, () -> run(application, "CREATE TABLE mine (id int)"));
    assertEquals("42501", refused.getSQLState(), "insufficient_privilege");
  }

  @Test
  void a_schema_of_ones_own_is_made_and_opened_to_the_second_role_alone() throws SQLException {
    DatabaseLogin named = ownerNamed("brook", "LOGIN CREATEROLE");
    run(administrator, "GRANT CREATE ON DATABASE " + administrator.database() + " TO brook");
    DatabaseLogin owner =
        new DatabaseLogin(
            named.jdbcUrl() + "?currentSchema=brook", named.database(), "brook", named.password());

    DatabaseLogin application = new DatabaseRoles(owner).ensure();
    run(owner, "CREATE TABLE mine (id int)");

    SQLException refused =
        assertThrows(SQLException.class, () -> run(application, "CREATE TABLE more (id int)"));
    assertEquals("42501", refused.getSQLState(), "insufficient_privilege");
    run(administrator, "SELECT * FROM brook.mine");
    assertEquals(application, new DatabaseRoles(owner).ensure(), "a schema that is there stays");
  }

  @Test
  void a_changed_owner_password_changes_the_roles_too() throws SQLException {
    DatabaseLogin owner = ownerNamed("changer", "LOGIN CREATEROLE");
    new DatabaseRoles(owner).ensure();
    setPassword("changer", "another");

    DatabaseLogin application = new DatabaseRoles(owner.as("changer", "another")).ensure();

    run(application, "SELECT 1");
  }

  @Test
  void an_owner_who_may_not_make_roles_is_told_what_to_ask_for() throws SQLException {
    DatabaseLogin owner = ownerNamed("modest", "LOGIN");

    CannotStart refusal = refusal(owner);

    assertTrue(refusal.getMessage().contains("ALTER ROLE \"modest\" CREATEROLE;"));
  }

  @Test
  void a_second_role_that_could_act_as_the_owner_is_refused() throws SQLException {
    DatabaseLogin owner = ownerNamed("trusting", "LOGIN CREATEROLE");
    new DatabaseRoles(owner).ensure();
    run(administrator, "ALTER ROLE trusting_app SUPERUSER");

    assertTrue(refusal(owner).getMessage().contains("trusting_app is a superuser"));
  }

  @Test
  void a_wrong_password_is_told_without_the_password() {
    DatabaseLogin owner = administrator.as("postgres", "wrong-secret");

    String sentence = refusal(owner).getMessage();

    assertTrue(sentence.contains("does not let the role postgres in"), sentence);
    assertTrue(!sentence.contains("wrong-secret"), sentence);
  }

  @Test
  void a_missing_database_is_told() {
    DatabaseLogin owner =
        new DatabaseLogin(
            administrator.jdbcUrl().replaceFirst("[^/]*$", "nowhere"),
            "nowhere",
            administrator.user(),
            administrator.password());

    assertTrue(refusal(owner).getMessage().contains("there is no database nowhere"));
  }

  private static CannotStart refusal(DatabaseLogin owner) {
    return assertThrows(CannotStart.class, () -> new DatabaseRoles(owner).ensure());
  }

  private static DatabaseLogin ownerNamed(String name, String rights) throws SQLException {
    run(administrator, "CREATE ROLE \"" + name.replace("\"", "\"\"") + "\" " + rights);
    setPassword(name, "secret of " + name);
    return administrator.as(name, "secret of " + name);
  }

  private static void setPassword(String name, String password) throws SQLException {
    try (Connection connection = administrator.connect()) {
      connection
          .unwrap(PGConnection.class)
          .alterUserPassword(name, password.toCharArray(), "scram-sha-256");
    }
  }

  private static void run(DatabaseLogin login, String sql) throws SQLException {
    try (Connection connection = login.connect();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
