package org.barreltally.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.barreltally.measure.ReferenceTable;
import org.barreltally.refusal.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Labels lie where the sheet's lengths put them, measured from the rendered page. The lengths are
 * worked out here anew from the table, in inches; the inch is 25.4 mm.
 */
class LabelSheetTest {

  /** Two dots of the picture. */
  private static final double DOTS = 2.0 / Page.DPI;

  /** Nothing is printed within a sixteenth of an inch of the cut. */
  private static final double BLANK_EDGE = 1.0 / 16;

  static Stream<String> known() {
    return ReferenceTable.rows("label_sheets.csv").stream().map(row -> row.get("code"));
  }

  private record Lengths(
      int columns, int rows, double left, double top, double w, double h, double x, double y) {

    static Lengths of(String code) {
      return ReferenceTable.rows("label_sheets.csv").stream()
          .filter(row -> row.get("code").equals(code))
          .map(
              row -> {
                double inch = row.get("unit").equals("mm") ? 1 / 25.4 : 1;
                return new Lengths(
                    Integer.parseInt(row.get("columns")),
                    Integer.parseInt(row.get("rows")),
                    inch * ReferenceTable.number(row, "margin_left"),
                    inch * ReferenceTable.number(row, "margin_top"),
                    inch * ReferenceTable.number(row, "label_width"),
                    inch * ReferenceTable.number(row, "label_height"),
                    inch * ReferenceTable.number(row, "gap_across"),
                    inch * ReferenceTable.number(row, "gap_down"));
              })
          .findFirst()
          .orElseThrow();
    }

    Page label(Page page, int column, int row) {
      return page.part(left + column * (w + x), top + row * (h + y), w, h);
    }
  }

  @ParameterizedTest
  @MethodSource("known")
  void every_label_stands_at_its_place_and_none_runs_to_its_edge(String code) throws Exception {
    Lengths s = Lengths.of(code);
    Page page =
        Page.of(LabelFixture.pdf(LabelFixture.anyLabel(), code, 1, s.columns() * s.rows()), 1);
    double[] first = s.label(page, 0, 0).ink();
    for (int row = 0; row < s.rows(); row++) {
      for (int column = 0; column < s.columns(); column++) {
        double[] ink = s.label(page, column, row).ink();
        for (int side = 0; side < 4; side++) {
          assertEquals(first[side], ink[side], DOTS, code + " " + column + " " + row);
        }
      }
    }
    assertTrue(first[0] >= BLANK_EDGE - DOTS && first[1] >= BLANK_EDGE - DOTS);
    assertTrue(first[2] <= s.w() - BLANK_EDGE + DOTS && first[3] <= s.h() - BLANK_EDGE + DOTS);
    // set from the very margin: it begins there and not somewhere inside
    assertTrue(first[0] < 0.2 && first[1] < 0.3, code);
    assertTrue(page.part(0, 0, page.widthInches(), s.top()).isBlank());
    assertTrue(page.part(0, 0, s.left(), page.heightInches()).isBlank());
  }

  @ParameterizedTest
  @CsvSource({"letter-2x5,8.5,11", "a4-2x7,8.268,11.693"})
  void the_page_has_the_size_of_its_paper(String code, double width, double height)
      throws Exception {
    Page page = Page.of(LabelFixture.pdf(LabelFixture.anyLabel(), code, 1, 1), 1);
    assertEquals(width, page.widthInches(), DOTS);
    assertEquals(height, page.heightInches(), DOTS);
  }

  @Test
  void a_part_used_sheet_is_begun_at_the_label_said_and_goes_on_on_the_next() throws Exception {
    Lengths s = Lengths.of("letter-2x5");
    byte[] pdf = LabelFixture.pdf(LabelFixture.anyLabel(), "letter-2x5", 4, 9);
    assertEquals(2, Page.pages(pdf));
    Page page = Page.of(pdf, 1);
    assertTrue(s.label(page, 0, 0).isBlank());
    assertTrue(s.label(page, 1, 0).isBlank());
    assertTrue(s.label(page, 0, 1).isBlank());
    assertFalse(s.label(page, 1, 1).isBlank());
    assertFalse(s.label(page, 1, 4).isBlank());
    Page second = Page.of(pdf, 2);
    assertFalse(s.label(second, 1, 0).isBlank());
    assertTrue(s.label(second, 0, 1).isBlank());
    assertEquals(3, SheetRun.of(LabelFixture.sheet("letter-2x5"), 4, 9).next());
  }

  @ParameterizedTest(name = "start at {0}, {1} labels")
  @CsvSource({
    "0,1,start-beyond-sheet,startAt",
    "11,1,start-beyond-sheet,startAt",
    "-3,1,start-beyond-sheet,startAt",
    "1,0,invalid-field,count",
    "1,10001,invalid-field,count",
    "1,1000000,invalid-field,count"
  })
  void a_start_beyond_the_sheet_and_a_million_labels_are_refused(
      int startAt, int count, String code, String field) {
    Refusal refused =
        assertThrows(
            Refusal.class, () -> SheetRun.of(LabelFixture.sheet("letter-2x5"), startAt, count));
    assertEquals(code, refused.code());
    assertEquals(List.of(field), refused.errors().stream().map(e -> e.field()).toList());
  }

  @Test
  void the_sheets_known_at_a_fresh_start_keep_the_rules() {
    LabelSheets.known().forEach(LabelSheetRules::check);
    assertEquals(6, LabelSheets.known().size());
  }

  @ParameterizedTest(name = "{0} columns and {1} rows of {2} by {3} in from {4}, {5}: {7}")
  @CsvSource({
    "3,5,4,2,0.15,0.5,0,sheet-does-not-fit-paper,columns",
    "2,6,4,2,0.15,0.5,0,sheet-does-not-fit-paper,rows",
    "2,5,4,2,0.15,0.5,0.5,sheet-does-not-fit-paper,columns",
    "2,5,4,2,0.6,0.5,0,sheet-does-not-fit-paper,columns",
    "1,1,9,2,0,0,0,sheet-does-not-fit-paper,columns",
    "0,5,4,2,0.15,0.5,0,invalid-field,columns",
    "2,1000000,4,2,0.15,0.5,0,invalid-field,rows",
    "2,5,0,2,0.15,0.5,0,invalid-field,labelWidth",
    "2,5,4,-2,0.15,0.5,0,invalid-field,labelHeight",
    "2,5,4,2,-0.15,0.5,0,invalid-field,marginLeft",
    "2,5,4,2,0.15,0.5,-1,invalid-field,gapAcross",
    "2,5,4,2,0.1234567,0.5,0,invalid-field,marginLeft"
  })
  void a_sheet_that_reaches_over_its_paper_is_refused(
      int columns,
      int rows,
      BigDecimal width,
      BigDecimal height,
      BigDecimal left,
      BigDecimal top,
      BigDecimal gap,
      String code,
      String field) {
    LabelSheet said =
        new LabelSheet(
            "own",
            "Own",
            Paper.LETTER,
            LengthUnit.IN,
            columns,
            rows,
            left,
            top,
            width,
            height,
            gap,
            BigDecimal.ZERO);
    Refusal refused = assertThrows(Refusal.class, () -> LabelSheetRules.check(said));
    assertEquals(code, refused.code());
    assertEquals(List.of(field), refused.errors().stream().map(e -> e.field()).toList());
  }
}
