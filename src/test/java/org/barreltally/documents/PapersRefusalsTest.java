package org.barreltally.documents;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import javax.sql.DataSource;
import org.barreltally.BookRows;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What papers refuse, naming the field, and what of the log PostgreSQL itself refuses. */
@QuarkusTest
class PapersRefusalsTest {

  private static final String INSUFFICIENT_PRIVILEGE = "42501";

  @Inject BookRows rows;
  @Inject DataSource application;

  private String tag;
  private String lot;

  @BeforeEach
  void a_barrel_and_a_lot_of_pints() {
    PackedLot packed = PackedLot.ofPints();
    tag = packed.tag();
    lot = packed.lot();
  }

  @ParameterizedTest(name = "{0} is refused naming {3}")
  @CsvSource({
    "container=PT&startAt=11,400,start-beyond-sheet,startAt",
    "container=PT&startAt=0,400,start-beyond-sheet,startAt",
    "container=PT&startAt=two,400,invalid-field,startAt",
    "container=PT&count=1000000,400,invalid-field,count",
    "container=PT&count=99999999999999,400,invalid-field,count",
    "container=PT&count=0,400,invalid-field,count",
    "container=PT&count=1.5,400,invalid-field,count",
    "container=PT&sheet=nobody-1x1,400,unknown-label-sheet,sheet",
    "container=PT&gtin=6291041500214,400,invalid-field,gtin",
    "container=PT&panelArea=0,400,invalid-field,panelArea",
    "container=PT&panelArea=wide,400,invalid-field,panelArea",
    "container=PT&panelArea=300&sheet=letter-3x10,422,text-does-not-fit,sheet",
    "container=QT,422,not-packed-in-container,container",
    "container=NONE,400,unknown-container,container",
    "count=5,400,invalid-field,container"
  })
  void wrong_labels_are_refused(String query, int status, String code, String field) {
    refused("labels.pdf?" + query, status, code, field);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "&perCase=0", "&perCase=1001", "&perCase=dozen"})
  void a_case_without_a_sensible_number_of_jars_is_refused(String perCase) {
    refused("case-labels.pdf?container=PT" + perCase, 400, "invalid-field", "perCase");
  }

  @Test
  void papers_of_an_unknown_lot_are_not_found() {
    for (String paper :
        new String[] {
          "labels.pdf?container=PT",
          "case-labels.pdf?container=PT&perCase=1",
          "hold-tag.pdf",
          "label-prints"
        }) {
      PackedLot.refused("/api/lots/NOBODY/" + paper, 404, "unknown-lot", null);
    }
  }

  @ParameterizedTest(name = "{0} is refused naming {3}")
  @CsvSource(
      delimiter = '|',
      value = {
        "{'container': 'PT'}|400|invalid-field|count",
        "{'count': 5}|400|invalid-field|container",
        "{'container': 'PT', 'count': 1000000}|400|invalid-field|count",
        "{'container': 'PT', 'count': 5, 'startAt': 11}|400|start-beyond-sheet|startAt",
        "{'container': 'PT', 'count': 5, 'sheet': 'nobody'}|400|unknown-label-sheet|sheet",
        "{'container': 'PT', 'count': 5, 'reprintOf': '017f22e2-79b0-7cc3-98c4-dc0c0c07398f', 'reason': 'x'}|400|unknown-label-print|reprintOf",
        "{'container': 'PT', 'count': '5'}|400|wrong-type|count",
        "{'container': 'PT', 'count': 5, 'color': 'red'}|400|unknown-field|color"
      })
  void a_wrong_print_is_refused_and_not_logged(String said, int status, String code, String field) {
    Map<String, String> before = rows.fingerprint();
    posts(prints(), said)
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
    assertEquals(before.get("label_prints"), rows.fingerprint().get("label_prints"));
  }

  @Test
  void a_barrel_held_or_drained_or_unknown_has_no_tag() {
    String emptied = newTag("L");
    posts("/api/barrels", barrel(emptied, 2024, "2024-03-14", 486.5, 42.0, 66.9, 62))
        .statusCode(201);
    posts(
            "/api/barrels/" + emptied + "/write-offs",
            "{'on': '2024-05-01', 'all': true, 'cause': 'discarded', 'reason': 'Mould at the bung'}")
        .statusCode(201);
    PackedLot.refused("/api/barrels/" + emptied + "/tag.pdf", 409, "barrel-drained", "tag");
    posts("/api/barrels/" + tag + "/hold", "{'reason': 'Bung leaks'}").statusCode(200);
    PackedLot.refused("/api/barrels/" + tag + "/tag.pdf", 409, "lot-held", "tag");
    PackedLot.refused("/api/barrels/NOBODY/tag.pdf", 404, "unknown-barrel", null);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UPDATE label_prints SET pieces = 1",
        "DELETE FROM label_prints",
        "UPDATE label_sheets SET columns = 1"
      })
  void what_was_printed_is_not_changed(String change) throws SQLException {
    try (Connection connection = application.getConnection();
        Statement statement = connection.createStatement()) {
      SQLException refused =
          assertThrows(SQLException.class, () -> statement.executeUpdate(change));
      assertEquals(INSUFFICIENT_PRIVILEGE, refused.getSQLState());
    }
  }

  private String prints() {
    return "/api/lots/" + lot + "/label-prints";
  }

  private void refused(String paper, int status, String code, String field) {
    PackedLot.refused("/api/lots/" + lot + "/" + paper, status, code, field);
  }
}
