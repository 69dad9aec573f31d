package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.BindException;
import java.sql.SQLException;
import org.flywaydb.core.api.FlywayException;
import org.junit.jupiter.api.Test;

class StartFaultTest {

  @Test
  void a_failed_migration_is_told_in_one_line_with_the_servers_words() {
    SQLException server = new SQLException("ERROR: no such column\n  Position: 7", "42703");
    Throwable fault = new RuntimeException(new FlywayException("Script V007 failed", server));

    assertEquals(
        "The database could not be brought up to date: ERROR: no such column Position: 7",
        sentence(fault));
  }

  @Test
  void a_changed_migration_is_told_in_flyways_words() {
    assertEquals(
        "The database could not be brought up to date: Migration checksum mismatch",
        sentence(new RuntimeException(new FlywayException("Migration checksum mismatch"))));
  }

  @Test
  void a_port_taken_in_the_last_moment_is_told() {
    assertEquals(
        "Port 8080 is taken by another program; stop that one or choose another port with PORT.",
        sentence(new RuntimeException(new BindException("Address already in use"))));
  }

  @Test
  void a_defect_is_none_of_these() {
    assertTrue(StartFault.sentence(new NullPointerException(), 8080).isEmpty());
  }

  private static String sentence(Throwable fault) {
    return StartFault.sentence(fault, 8080).orElseThrow().getMessage();
  }
}
