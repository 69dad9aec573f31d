package org.barreltally.start;

import static io.restassured.RestAssured.when;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;

@QuarkusTest
class ApplicationOnItsDatabaseTest {

  @Inject DataSource pool;

  @Test
  void it_says_when_it_is_ready() {
    when().get("/q/health/ready").then().statusCode(200).body("status", equalTo("UP"));
  }

  @Test
  void it_signs_in_as_the_second_role() throws SQLException {
    assertEquals("barreltally_app", answer("SELECT current_user"));
  }

  @Test
  void the_database_keeps_what_it_confirmed() throws SQLException {
    assertEquals("on", answer("SHOW fsync"));
    assertEquals("on", answer("SHOW synchronous_commit"));
  }

  @Test
  void times_are_universal() throws SQLException {
    assertEquals("UTC", answer("SHOW TimeZone"));
  }

  @Test
  void migrations_ran_as_the_owner() throws SQLException {
    assertEquals(
        "barreltally",
        answer("SELECT tableowner FROM pg_tables WHERE tablename = 'flyway_schema_history'"));
  }

  private String answer(String query) throws SQLException {
    try (Connection connection = pool.getConnection();
        Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(query)) {
      rows.next();
      return rows.getString(1);
    }
  }
}
