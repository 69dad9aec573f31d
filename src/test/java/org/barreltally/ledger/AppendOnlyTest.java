package org.barreltally.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.ConfigProvider;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What happened is not changed: PostgreSQL itself refuses, to the application for want of the right
 * and to the owner by a trigger. SQLStates: PostgreSQL documentation, appendix A.
 */
@QuarkusTest
class AppendOnlyTest {

  private static final String INSUFFICIENT_PRIVILEGE = "42501";
  private static final String RESTRICT_VIOLATION = "23001";

  private static final List<String> TABLES =
      List.of(
          "movements",
          "entries",
          "reservation_steps",
          "lot_parents",
          "lot_gradings",
          "lot_holds",
          "barrel_readings",
          "canning_runs",
          "stock_count_lines",
          "purchases",
          "settings",
          "net_contents_checks",
          "sales",
          "sale_lines",
          "sale_notes",
          "sale_conflicts",
          "sale_papers",
          "sale_returns",
          "sale_return_lines",
          "sale_inspections",
          "show_settlements",
          "allowed_variations",
          "price_lists",
          "price_lines",
          "price_deals",
          "price_list_withdrawals",
          "tax_rates",
          "show_steps",
          "show_payments",
          "show_reservations",
          "show_pack_outs",
          "show_transfers",
          "show_backs",
          "show_drawers",
          "show_awards",
          "recalls",
          "recall_lots",
          "recall_ends",
          "closed_years",
          "closed_year_sums",
          "count_rounds",
          "count_sheet_lines",
          "count_round_ends");

  @Inject DataSource application;

  static Stream<Arguments> changes() {
    return TABLES.stream()
        .flatMap(
            table ->
                Stream.of(
                    Arguments.of("UPDATE " + table + " SET " + anyColumn(table)),
                    Arguments.of("DELETE FROM " + table),
                    Arguments.of("TRUNCATE " + table + " CASCADE")));
  }

  /** An assignment that changes nothing, which is refused all the same. */
  private static String anyColumn(String table) {
    String column =
        switch (table) {
          case "movements" -> "reason";
          case "sales", "sale_conflicts", "count_rounds" -> "place";
          case "sale_lines", "sale_return_lines" -> "pieces";
          case "sale_notes" -> "code";
          case "sale_papers" -> "number";
          case "sale_returns", "recalls", "recall_ends", "count_round_ends" -> "reason";
          case "sale_inspections" -> "note";
          case "show_settlements" -> "told";
          case "entries" -> "amount";
          case "reservation_steps" -> "pieces";
          case "lot_parents" -> "grams";
          case "stock_count_lines", "count_sheet_lines" -> "counted";
          case "settings" -> "value";
          case "allowed_variations" -> "said";
          case "price_lists" -> "name";
          case "price_lines", "price_deals" -> "amount";
          case "price_list_withdrawals" -> "reason";
          case "tax_rates" -> "percent";
          case "closed_years", "closed_year_sums" -> "year";
          case "show_steps" -> "state";
          case "show_payments" -> "amount";
          case "show_reservations", "show_pack_outs", "show_backs", "show_drawers" -> "show";
          case "show_transfers" -> "movement";
          default -> "lot";
        };
    return column + " = " + column;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("changes")
  void the_application_has_no_right_to_change_what_happened(String change) throws SQLException {
    try (Connection connection = application.getConnection()) {
      assertEquals(INSUFFICIENT_PRIVILEGE, refusal(connection, change).getSQLState());
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("changes")
  void the_owner_is_refused_by_a_trigger(String change) throws SQLException {
    try (Connection connection = owner()) {
      connection.setAutoCommit(false);
      SQLException refused = refusal(connection, change);
      connection.rollback();
      assertEquals(RESTRICT_VIOLATION, refused.getSQLState());
      assertTrue(refused.getMessage().contains("reverse it and enter it anew"));
    }
  }

  private static SQLException refusal(Connection connection, String change) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      return assertThrows(SQLException.class, () -> statement.execute(change));
    }
  }

  private static Connection owner() throws SQLException {
    return DriverManager.getConnection(
        setting("quarkus.flyway.jdbc-url"),
        setting("quarkus.flyway.username"),
        setting("quarkus.flyway.password"));
  }

  private static String setting(String name) {
    return ConfigProvider.getConfig().getValue(name, String.class);
  }
}
