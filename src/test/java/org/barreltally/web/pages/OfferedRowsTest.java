package org.barreltally.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class OfferedRowsTest {

  private static final List<String> LOTS = List.of("P1", "P2", "P3");

  private static MultivaluedMap<String, String> said(String... fieldsAndTexts) {
    MultivaluedMap<String, String> said = new MultivaluedHashMap<>();
    for (int n = 0; n < fieldsAndTexts.length; n += 2) {
      said.putSingle(fieldsAndTexts[n], fieldsAndTexts[n + 1]);
    }
    return said;
  }

  private static OfferedRows<String> rows(Form form, int blank) {
    return OfferedRows.of(form, "lines", LOTS, List::of, List.of("lot"), blank);
  }

  @Test
  void a_row_counts_as_blank_whatever_goes_along_hidden() {
    MultivaluedMap<String, String> kept =
        OfferedRows.without(
            said(
                "note", "x",
                "lines[0].lot", "P1",
                "lines[0].count", " ",
                "lines[1].lot", "P2",
                "lines[1].count", "",
                "lines[1].broken", "1",
                "lines[12].lot", "P3",
                "lines[12].count", "0",
                "deals[0].lot", "P4"),
            "lines",
            "count",
            "broken");
    assertEquals(
        Set.of(
            "note",
            "lines[1].lot",
            "lines[1].count",
            "lines[1].broken",
            "lines[12].lot",
            "lines[12].count",
            "deals[0].lot"),
        kept.keySet());
  }

  @Test
  void a_blank_form_offers_all_and_then_free_rows() {
    OfferedRows<String> rows = rows(Form.blank(), 2);
    assertEquals(
        List.of(
            new OfferedRows.Row<>(0, "P1"),
            new OfferedRows.Row<>(1, "P2"),
            new OfferedRows.Row<>(2, "P3")),
        rows.offered());
    assertEquals(List.of(3, 4), rows.free());
  }

  @Test
  void what_was_typed_keeps_its_number_and_the_others_come_behind() {
    Form form =
        Form.typed("id", Map.of("lines[0].lot", "P3", "lines[1].lot", "Q9", "lines[2].lot", "P3"));
    OfferedRows<String> rows = rows(form, 1);
    assertEquals(
        List.of(
            new OfferedRows.Row<>(3, "P1"),
            new OfferedRows.Row<>(4, "P2"),
            new OfferedRows.Row<>(0, "P3")),
        rows.offered());
    // What is not offered, and a lot typed a second time, stand in rows of their own.
    assertEquals(List.of(1, 2), rows.free());
  }
}
