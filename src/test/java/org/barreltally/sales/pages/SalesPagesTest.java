package org.barreltally.sales.pages;

import static org.barreltally.Pages.beside;
import static org.barreltally.Pages.held;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.barreltally.Owner;
import org.barreltally.Pages;
import org.barreltally.people.PersonFixture;
import org.barreltally.stock.ShelfFixture;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Sales away from shows from pages: entered, read, returned, looked over, taken back. */
@QuarkusTest
class SalesPagesTest {

  @Inject ShelfFixture shelf;
  @Inject PersonFixture people;

  private Pages owner;

  @BeforeEach
  void the_owner_signs_in() {
    owner = Pages.owner();
  }

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  private Pages.Sheet sale(String size, int count) {
    return owner
        .form("/sales/new")
        .with("channel", "post")
        .with("lines[1].container", size)
        .with("lines[1].count", count)
        .with("lines[1].price", "15.00");
  }

  /** By hand: 3 of 8 are sold at $15 = $45; 2 come back, 1 of them sound: 8 − 3 + 1 = 6 stand. */
  @Test
  void a_sale_by_post_comes_back_in_part() {
    String size = Owner.newSize(16);
    String lot = shelf.lotWith(8, size);
    Pages.Sheet sheet =
        sale(size, 3)
            .with("buyer.name", "Hesper Loomworks")
            .with("buyer.address[0]", "4 Weir Lane")
            .with("paid.owing", "45");
    String at = sheet.done();
    assertEquals(at, sheet.done());
    assertEquals(5, shelf.standing("cool-room", lot, size));

    Document page = owner.reads(at);
    assertTrue(page.text().contains("Hesper Loomworks 4 Weir Lane"), page.text());
    assertTrue(page.text().contains("Total $45.00"), page.text());
    assertNotNull(page.selectFirst("a[href=\"/api" + at + "/invoice.pdf\"]"));
    assertTrue(owner.reads("/sales").text().contains("Hesper Loomworks"));

    Document refused = owner.form(at + "/return").inRow("lot", lot, "count", 4).refused(400);
    assertEquals("Say why they came back, in at most 500 characters.", beside(refused, "reason"));
    refused =
        owner
            .form(at + "/return")
            .inRow("lot", lot, "count", 4)
            .with("reason", "Box crushed")
            .refused(409);
    assertNotNull(
        refused.selectFirst("input[name$=.count][aria-invalid=true][value=4]"), refused.text());
    owner
        .form(at + "/return")
        .inRow("lot", lot, "count", 2)
        .with("reason", "Box crushed")
        .with("refund", "30")
        .done();
    page = owner.reads(at);
    assertTrue(page.text().contains("2 wait to be looked over"), page.text());
    String inspection = page.selectFirst("a[href*=/returns/]").attr("href");
    owner.form(inspection).inRow("lot", lot, "sound", 1).inRow("lot", lot, "broken", 1).done();
    assertEquals(6, shelf.standing("cool-room", lot, size));
    assertNull(owner.reads(at).selectFirst("a[href*=/returns/]"));

    owner.form(at, at + "/forget-buyer").done();
    assertFalse(owner.reads(at).text().contains("Hesper"));
  }

  @Test
  void more_than_stands_there_is_refused_beside_its_row_and_what_was_typed_stays() {
    String size = Owner.newSize(16);
    shelf.lotWith(2, size);
    Document page = sale(size, 3).with("buyer.contact", "by mail").refused(400);
    assertTrue(beside(page, "buyer.name").startsWith("Name the buyer"), page.text());
    assertEquals("by mail", held(page, "buyer.contact"));
    page = sale(size, 3).refused(409);
    assertTrue(page.select("tbody tr").first().text().contains("2 × " + size), page.text());
    // The row that was left blank above it went; what was typed stands in the first.
    assertEquals("3", held(page, "lines[0].count"));
  }

  @Test
  void a_sale_is_taken_back_with_a_reason() {
    String size = Owner.newSize(16);
    String lot = shelf.lotWith(2, size);
    String at = sale(size, 1).done();
    assertEquals(
        "Say why the sale is taken back.", beside(owner.form(at + "/undo").refused(400), "reason"));
    owner.form(at + "/undo").with("reason", "Wrong size").done();
    assertTrue(owner.reads(at).select("h1").text().contains("taken back"));
    assertEquals(2, shelf.standing("cool-room", lot, size));
  }

  @Test
  void a_bookkeeper_reads_and_gets_no_form() {
    Pages reader = Pages.of(people.with("bookkeeper", "sums and more sums"), "sums and more sums");
    assertNull(reader.reads("/sales/new").selectFirst("main form[method=post]"));
    assertEquals(403, reader.posts("/sales/new"));
  }
}
