package org.barreltally.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import org.barreltally.PageReader;
import org.barreltally.people.PersonFixture;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Costs as pages, and what a bookkeeper may send to none of the year’s. */
@QuarkusTest
class CostPagesTest {

  private static final String NEW = "form[action='/costs/new']";

  @Inject PersonFixture people;

  /** 6.5 hours at $18.00 are $117.00. */
  @Test
  void a_cost_is_entered_once_and_taken_back_with_a_reason() {
    PageReader owner = PageReader.owner();
    String note = "Hours " + UUID.randomUUID();
    Document blank = owner.reads("/costs/new");
    Response refused =
        owner.sends(blank, NEW, "kind", "labour", "season", "2026", "hours", "many", "note", note);
    assertEquals(400, refused.statusCode());
    assertTrue(PageReader.beside(refused, "hours").contains("many"));
    Document again = Jsoup.parse(refused.asString());
    assertEquals(note, again.selectFirst("[name=note]").val());
    owner.sends(again, NEW, "hours", "6.5", "rate", "18.00").then().statusCode(303);
    owner.sends(again, NEW, "hours", "6.5", "rate", "18.00").then().statusCode(303);
    Document list = owner.readsWhole("/costs?sort=-amount");
    Element row = list.select("tr:contains(" + note + ")").first();
    assertEquals(1, list.select("tr:contains(" + note + ")").size());
    assertTrue(row.text().contains("$117.00"), row.text());
    String at = row.selectFirst("a").attr("href");
    Document one = owner.reads(at);
    assertEquals(400, owner.sends(one, "form[action='" + at + "']").statusCode());
    owner
        .sends(one, "form[action='" + at + "']", "reason", "Another farm’s")
        .then()
        .statusCode(303);
    Document back = owner.reads(at);
    assertTrue(back.text().contains("Another farm’s"));
    assertNull(back.selectFirst("form[action='" + at + "']"));
    for (String by : new String[] {"container", "show", "order"}) {
      assertTrue(owner.reads("/costs/sheet?year=2026&by=" + by).text().contains("Stock at cost"));
    }
  }

  @Test
  void a_bookkeeper_reads_the_sheet_and_gets_no_form() {
    String name = people.with("bookkeeper", "sums and more sums");
    PageReader bookkeeper = PageReader.as(name, "sums and more sums");
    assertNull(bookkeeper.reads("/costs/new").selectFirst(NEW));
    assertNull(
        bookkeeper.reads("/costs/sheet?year=2026").selectFirst("form[action='/costs/sheet']"));
    assertEquals(403, bookkeeper.posts("/costs/new", Map.of("note", "x")).statusCode());
    assertEquals(403, bookkeeper.posts("/years/2024", Map.of("year", "2024")).statusCode());
    assertEquals(403, bookkeeper.posts("/backups", Map.of()).statusCode());
  }
}
