package org.barreltally.shows.pages;

import static org.barreltally.Owner.posts;
import static org.barreltally.Pages.beside;
import static org.barreltally.Pages.held;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.Pages;
import org.barreltally.stock.ShelfFixture;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A show's table from pages: packed, handed over, sold, counted home, settled. */
@QuarkusTest
class TablePagesTest {

  @Inject ShelfFixture shelf;

  private Pages owner;

  @BeforeEach
  void the_owner_signs_in() {
    owner = Pages.owner();
  }

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  private static String show(String day) {
    String id =
        posts(
                "/api/shows",
                "{'name': 'Page Fair %s', 'town': 'Fernby', 'starts': '%s', 'ends': '%s', 'state': 'accepted', 'booth': {'fee': {'amount': 40, 'currency': 'USD'}, 'percentOfSales': 10}}"
                    .formatted(UUID.randomUUID().toString().substring(0, 6), day, day))
            .statusCode(201)
            .extract()
            .path("id");
    return "/shows/" + id;
  }

  /**
   * Worked out by hand. 20 pints of one lot go out with $50; 2 go to the other table; a tally of 3
   * sells for $45 in cash, of a $60 note; 14 come home, 1 is broken. So 20 − 2 − 14 − 1 = 3 are
   * sold, all recorded. The drawer should hold 50 + 60 − 15 = 95; 4 × 20 + 1 × 10 + 2 × 1 = 92 are
   * counted: 3 short. The fee is 40 + 10 % of 45 = 44.50; left is 45 − 44.50 = 0.50.
   */
  @Test
  void a_day_at_the_table() {
    String size = Owner.newSize(16);
    String lot = shelf.lotWith(30, size);
    String at = show("2026-09-05");
    String other = show("2026-09-05");

    owner.form(at + "/pack").inRow("lot", lot, "count", 20).with("float", "50").done();
    assertEquals(10, shelf.standing("cool-room", lot, size));
    owner
        .form(at + "/transfer")
        .with("to", other.substring("/shows/".length()))
        .inRow("lot", lot, "count", 2)
        .done();
    owner
        .form(at + "/sales/new")
        .with("lines[0].container", size)
        .with("lines[0].count", "3")
        .with("lines[0].price", "15")
        .with("paid.cash", "60")
        .done();
    owner
        .form(at + "/home")
        .inRow("lot", lot, "count", 14)
        .inRow("lot", lot, "broken", 1)
        .inRow("value", "20", "count", 4)
        .inRow("value", "10", "count", 1)
        .inRow("value", "1", "count", 2)
        .done();
    assertEquals(24, shelf.standing("cool-room", lot, size));

    Document page = owner.reads(at + "/settlement");
    assertEquals("3", cell(page, size, "Sold"));
    assertEquals("3", cell(page, size, "In sales"));
    assertEquals("0", cell(page, size, "Gone without a sale"));
    assertEquals("$95.00", row(page, "Should be in it"));
    assertEquals("$92.00", row(page, "Counted"));
    assertEquals("-$3.00", row(page, "Over (short below zero)"));
    assertEquals("− $44.50", row(page, "Booth fee and percent"));
    assertEquals("$0.50", row(page, "Left"));
    owner.form(at + "/settlement").done();
    assertTrue(owner.reads(at + "/settlement").text().contains("It is settled."));
    assertTrue(owner.reads(at + "/sales").text().contains("3 × " + size));
  }

  @Test
  void more_than_stands_there_is_refused_beside_the_row_and_what_was_typed_stays() {
    String size = Owner.newSize(16);
    String lot = shelf.lotWith(5, size);
    String at = show("2026-09-12");
    Document page =
        owner
            .form(at + "/pack")
            .inRow("lot", lot, "count", 6)
            .with("note", "Two trips")
            .refused(409);
    Element row =
        page.select("tr").stream().filter(tr -> tr.text().contains(lot)).findFirst().get();
    Element count = row.selectFirst("input[name$=.count]");
    assertEquals("6", count.attr("value"));
    assertEquals("Two trips", held(page, "note"));
    assertTrue(page.select(".refusal").text().contains("5"), page.text());
    assertEquals(5, shelf.standing("cool-room", lot, size));

    Document blank = owner.form(at + "/pack").refused(400);
    assertTrue(blank.text().contains("Give 1 to 500 lines."), blank.text());
    Document half = owner.form(at + "/pack").inRow("lot", lot, "count", "0").refused(400);
    assertTrue(half.text().contains("Give a whole number of jars from 1 to 1,000,000."));
  }

  @Test
  void sent_twice_a_pack_out_moves_jars_once() {
    String size = Owner.newSize(16);
    String lot = shelf.lotWith(9, size);
    String at = show("2026-09-19");
    Pages.Sheet sheet = owner.form(at + "/pack").inRow("lot", lot, "count", 4);
    sheet.done();
    sheet.done();
    assertEquals(5, shelf.standing("cool-room", lot, size));
  }

  @Test
  void a_count_without_a_number_is_refused_beside_it() {
    String size = Owner.newSize(16);
    String lot = shelf.lotWith(4, size);
    String at = show("2026-09-26");
    owner.form(at + "/pack").inRow("lot", lot, "count", 4).done();
    Document page =
        owner
            .form(at + "/home")
            .inRow("lot", lot, "broken", 1)
            .with("drawer.total", "-1")
            .refused(400);
    assertTrue(page.text().contains("Give a whole number of jars from 0 to 1,000,000."));
    assertEquals(0, shelf.standing("broken", lot, size));
    Document drawer =
        owner
            .form(at + "/home")
            .inRow("lot", lot, "count", 4)
            .inRow("value", "20", "count", "-2")
            .refused(400);
    Element wrong = drawer.selectFirst("input[name^=drawer.denominations][aria-invalid=true]");
    assertNotNull(wrong, drawer.text());
    assertEquals("-2", wrong.attr("value"));
    assertEquals("", beside(drawer, "drawer.total"));
  }

  @Test
  void the_plan_says_what_it_needs_and_then_what_to_take_and_why() {
    String at = show("2026-08-08");
    Document page = owner.reads(at + "/plan");
    assertTrue(page.select(".refusal").text().contains("has no tables yet"), page.text());
    owner
        .form(at + "/change")
        .with("booth.tables[0].lengthInches", "96")
        .with("booth.tables[0].depthInches", "30")
        .done();
    String size = Owner.newSize(16);
    shelf.lotWith(40, size);
    Document plan =
        org.jsoup.Jsoup.parse(
            owner
                .form(at + "/plan")
                .with("visitors", "1000")
                .with("jarsPer100Visitors", "3")
                .with("only[0].container", size)
                .with("costs.marginPercent", "50")
                .sends()
                .asString());
    // How many depends on what other shows of the book sold; the reckoning has tests of its own.
    assertTrue(plan.text().matches("(?s).*" + size + ".*expect about [0-9]+ \\(.*"), plan.text());
    assertNotNull(plan.selectFirst("input[value=" + size + "]"));
    Document refused = owner.form(at + "/plan").with("visitors", "0").refused(400);
    assertEquals("Give a whole number from 1 to 10000000.", beside(refused, "visitors"));
  }

  @Test
  void an_award_is_noted_and_refused_beside_its_field() {
    String size = Owner.newSize(16);
    String lot = shelf.lotWith(4, size);
    String at = show("2026-08-15");
    Document page = owner.form(at + "/awards").with("score", "2000").with("lot", lot).refused(400);
    assertEquals("Give one line of 1 to 80 characters.", beside(page, "class"));
    assertTrue(beside(page, "score").startsWith("Give a score from 0 to 1000"), page.text());
    owner
        .form(at + "/awards")
        .with("class", "Amber, single jug")
        .with("lot", lot)
        .with("container", size)
        .with("score", "97.5")
        .with("ribbon", "Blue ribbon")
        .done();
    assertTrue(owner.reads(at + "/awards").text().contains("Blue ribbon, Amber, single jug"));
  }

  private static String cell(Document page, String size, String head) {
    return page.select("tr").stream()
        .filter(tr -> tr.select("th").text().equals(size))
        .findFirst()
        .orElseThrow()
        .selectFirst("td[data-label=\"" + head + "\"]")
        .text();
  }

  private static String row(Document page, String head) {
    return page.select("tr").stream()
        .filter(tr -> tr.select("th").text().equals(head))
        .reduce((first, last) -> last)
        .orElseThrow(() -> new AssertionError(head))
        .select("td")
        .text();
  }
}
