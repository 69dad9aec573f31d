package org.barreltally.pricing.pages;

import static org.barreltally.Pages.beside;
import static org.barreltally.Pages.held;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.barreltally.Pages;
import org.barreltally.people.PersonFixture;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Price lists and tax rates from pages. */
@QuarkusTest
class PricesPagesTest {

  @Inject BookRows rows;
  @Inject PersonFixture people;

  private Pages owner;
  private String size;

  @BeforeEach
  void the_owner_signs_in() {
    owner = Pages.owner();
    size = Owner.newSize(16);
  }

  /** The field of a size's price in a grade, or with "" in any grade. */
  private String price(String grade) {
    for (Element cell : owner.reads("/prices/new").select("td.number")) {
      Element container = cell.selectFirst("input[name$=.container]");
      Element in = cell.selectFirst("input[name$=.grade]");
      if (container != null
          && container.attr("value").equals(size)
          && (in == null ? "" : in.attr("value")).equals(grade)) {
        return cell.selectFirst("input[name$=.price]").attr("name");
      }
    }
    throw new AssertionError(size + " " + grade);
  }

  private Pages.Sheet list(String name) {
    return owner
        .form("/prices/new")
        .with("name", name)
        .with("audience", "wholesale")
        .with("validFrom", "2031-01-01");
  }

  private static String name() {
    return "Prices " + UUID.randomUUID().toString().substring(0, 6);
  }

  @Test
  void a_list_of_two_prices_and_a_deal_is_entered_read_replaced_and_withdrawn() {
    String name = name();
    Pages.Sheet sheet =
        list(name)
            .with(price(""), "15")
            .with(price("golden"), "17.00")
            .with("class." + size, "gift")
            .with("deals[0].container", size)
            .with("deals[0].count", "2")
            .with("deals[0].price", "28");
    String at = sheet.done();
    assertEquals(at, sheet.done());
    Document page = owner.reads(at);
    assertEquals(2, page.select("tbody tr").size());
    assertTrue(
        page.text().contains(size + " any grade $15.00 gift".replace("any", "Any")), page.text());
    assertTrue(page.text().contains(size + " Golden, delicate taste $17.00 gift"), page.text());
    assertTrue(page.text().contains("2 × " + size + " for $28.00, any grade, mixed"), page.text());
    assertNotNull(
        page.selectFirst("a[href=\"/api/price-lists" + at.substring(7) + "/sheet.pdf\"]"));
    assertTrue(owner.reads("/prices?audience=wholesale").text().contains(name));

    String replacing = "/prices/new?replaces=" + at.substring("/prices/".length());
    Document early = owner.form(replacing).with("validFrom", "2030-12-31").refused(422);
    assertTrue(beside(early, "validFrom").contains("Begin no earlier"), early.text());
    String next = owner.form(replacing).with("name", name + " B").done();
    assertEquals(2, owner.reads(next).select("tbody tr").size());
    assertTrue(owner.reads(at).text().contains("There is a newer version."));
    Document late = owner.form(replacing).refused(409);
    assertTrue(late.text().contains("was replaced"), late.text());

    assertEquals(
        "Say why, in 1 to 500 characters.",
        beside(owner.form(next + "/withdraw").refused(400), "reason"));
    owner.form(next + "/withdraw").with("reason", "Mistyped").done();
    assertTrue(owner.reads(next).text().contains("Mistyped"));
  }

  @Test
  void what_needs_mending_stands_beside_its_field_and_nothing_is_kept() {
    Map<String, String> before;
    String field = price("amber");
    before = rows.fingerprint();
    Document page = list("").with(field, "-1").refused(400);
    assertTrue(beside(page, "name").startsWith("Give a name"), page.text());
    Element wrong = page.selectFirst("input[name$=.price][aria-invalid=true]");
    assertEquals("-1", wrong.attr("value"));
    assertTrue(wrong.attr("aria-label").contains("Price of " + size + ", Amber"), wrong.toString());

    page =
        list(name())
            .with(field, "15")
            .with("deals[2].container", "QT")
            .with("deals[2].count", "2")
            .with("deals[2].price", "28")
            .refused(422);
    assertTrue(page.text().contains("no line prices one of them"), page.text());
    assertNotNull(page.getElementById("f-deals-0-"));
    assertEquals("28", held(page, "deals[0].price"));
    page = list(name()).with(field, "15").with("validTo", "2030-01-01").refused(422);
    assertTrue(beside(page, "validTo").startsWith("The list is valid from"), page.text());
    page = list(name()).with(price("processing"), "9").refused(422);
    assertTrue(page.text().contains("Processing Grade is not sold at retail"), page.text());
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void a_tax_rate_is_entered_and_refused_beside_its_field() {
    Document page =
        owner.form("/prices/tax").with("place", "VT/").with("percent", "101").refused(400);
    assertTrue(beside(page, "percent").startsWith("Give percent from 0 to 100"), page.text());
    String town =
        "ZQ/Town " + UUID.randomUUID().toString().substring(0, 5).replaceAll("[0-9]", "x");
    owner
        .form("/prices/tax")
        .with("productClass", "gift")
        .with("place", town)
        .with("percent", "6,25")
        .with("source", "An invented rate")
        .done();
    assertTrue(owner.reads("/prices/tax?sort=-place").text().contains(town + " gift"));
  }

  @Test
  void a_bookkeeper_reads_and_gets_no_form() {
    Pages reader = Pages.of(people.with("bookkeeper", "sums and more sums"), "sums and more sums");
    assertNull(reader.reads("/prices/new").selectFirst("main form[method=post]"));
    assertNull(reader.reads("/prices").selectFirst("a[href=\"/prices/new\"]"));
    assertEquals(403, reader.posts("/prices/new"));
  }
}
