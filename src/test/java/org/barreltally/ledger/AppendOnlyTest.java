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
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.ConfigProvider;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
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

  /** What only grows, each with a column that a change could name. */
  private static final String TABLES =
      """
      movements reason
      entries amount
      reservation_steps pieces
      lot_parents grams
      lot_gradings lot
      lot_holds lot
      barrel_readings lot
      canning_runs lot
      stock_count_lines counted
      purchases lot
      settings value
      net_contents_checks lot
      sales place
      sale_lines pieces
      sale_notes code
      sale_conflicts place
      sale_papers number
      sale_returns reason
      sale_return_lines pieces
      sale_inspections note
      show_settlements told
      allowed_variations said
      price_lists name
      price_lines amount
      price_deals amount
      price_list_withdrawals reason
      tax_rates percent
      show_steps state
      show_payments amount
      show_reservations show
      show_pack_outs show
      show_transfers movement
      show_backs show
      show_drawers show
      show_awards lot
      gift_boxes name
      gift_box_weighings grams
      carrier_tables said
      gift_payments amount
      gift_steps reason
      gift_promised pieces
      gift_jars pieces
      shop_terms shop
      shop_deliveries note
      shop_counts due
      shop_payments note
      leases bush
      lease_terms basis
      lease_taps taps
      lease_deliveries note
      lease_closings credit
      lease_carries into_lease
      sugarhouse_entries season
      sugarhouse_amounts tank
      sugarhouse_reversals reason
      own_bushes name
      own_bush_taps taps
      recalls reason
      recall_lots lot
      recall_ends reason
      closed_years year
      closed_year_sums year
      count_rounds place
      count_sheet_lines counted
      count_round_ends reason
      people_log what
      costs note
      cost_reversals reason
      cost_methods method
      """;

  private static Connection owner;

  @Inject DataSource application;

  /** An assignment changes nothing, and is refused all the same. */
  static Stream<Arguments> changes() {
    return TABLES
        .lines()
        .map(line -> line.split(" "))
        .flatMap(
            of ->
                Stream.of(
                    Arguments.of("UPDATE " + of[0] + " SET " + of[1] + " = " + of[1]),
                    Arguments.of("DELETE FROM " + of[0]),
                    Arguments.of("TRUNCATE " + of[0] + " CASCADE")));
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
    SQLException refused = refusal(owner, change);
    owner.rollback();
    assertEquals(RESTRICT_VIOLATION, refused.getSQLState());
    assertTrue(refused.getMessage().contains("reverse it and enter it anew"));
  }

  private static SQLException refusal(Connection connection, String change) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      return assertThrows(SQLException.class, () -> statement.execute(change));
    }
  }

  @BeforeAll
  static void signInAsTheOwner() throws SQLException {
    owner =
        DriverManager.getConnection(
            setting("quarkus.flyway.jdbc-url"),
            setting("quarkus.flyway.username"),
            setting("quarkus.flyway.password"));
    owner.setAutoCommit(false);
  }

  @AfterAll
  static void signOut() throws SQLException {
    owner.close();
  }

  private static String setting(String name) {
    return ConfigProvider.getConfig().getValue(name, String.class);
  }
}
