package org.barreltally.table;

import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.barreltally.Owner;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/** What a phone takes along, and the tally sheet on paper, whose rows are the same. */
@QuarkusTest
class TableSheetTest {

  @Inject ShelfFixture shelf;

  @Test
  void names_prices_lots_and_the_next_table() {
    TestTable table = TestTable.open(shelf, 12);
    String other = shelf.lotWith(5, table.size());
    table.packOut(other, 5);
    Owner.reads("/api/table/shows/" + table.id())
        .body("rows.size()", equalTo(1))
        .body("rows[0].container", equalTo(table.size()))
        .body("rows[0].grade", equalTo("amber"))
        .body("rows[0].price.amount", equalTo(15.0f))
        .body(
            "rows[0].lots.lot.sort()",
            equalTo(java.util.stream.Stream.of(table.lot(), other).sorted().toList()))
        .body("deals[0].count", equalTo(2))
        .body("decimals", equalTo(2));
  }

  /**
   * Smallest first, as the sheet of the screen; a size of which nothing came is there by its price.
   */
  @Test
  void the_paper_has_the_rows_of_the_screen_in_their_order() throws IOException {
    String large = Owner.newSize(32);
    String small = Owner.newSize(8);
    String lot = shelf.lotWith(20, large);
    String list =
        posts(
                "/api/price-lists",
                "{'name': 'Two sizes %1$s', 'audience': 'show', 'validFrom': '2026-01-01', 'lines': [{'container': '%1$s', 'price': {'amount': 25, 'currency': 'USD'}}, {'container': '%2$s', 'price': {'amount': 9, 'currency': 'USD'}}]}"
                    .formatted(large, small))
            .statusCode(201)
            .extract()
            .path("id");
    String show =
        posts(
                "/api/shows",
                "{'name': 'Paper Fair %1$s', 'town': 'Fernby', 'starts': '2026-09-12', 'ends': '2026-09-12', 'state': 'accepted', 'priceList': '%2$s'}"
                    .formatted(small, list))
            .statusCode(201)
            .extract()
            .path("id");
    posts(
            "/api/shows/" + show + "/pack-out",
            "{'lines': [{'container': '%s', 'lot': '%s', 'count': 6}]}".formatted(large, lot))
        .statusCode(201);
    Owner.reads("/api/table/shows/" + show).body("rows.container", contains(small, large));

    byte[] paper = Owner.asks().get("/api/shows/" + show + "/tally-sheet.pdf").asByteArray();
    String text;
    try (var document = Loader.loadPDF(paper)) {
      text = new PDFTextStripper().getText(document);
    }
    int first = text.indexOf("9.00");
    int second = text.indexOf("25.00");
    assertTrue(first > 0 && second > first, text);
    assertTrue(text.contains(lot), text);
    assertTrue(text.contains("Amber"), text);
    Owner.asks()
        .get("/api/shows/01a0c0de-7000-7000-8000-0000000000ff/tally-sheet.pdf")
        .then()
        .statusCode(404);
  }
}
