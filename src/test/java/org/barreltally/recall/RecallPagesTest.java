package org.barreltally.recall;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Map;
import org.barreltally.PageReader;
import org.barreltally.people.PersonFixture;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** Recalls and rehearsals as pages. */
@QuarkusTest
class RecallPagesTest {

  private static final String NEW = "form[action='/recalls/new']";

  @Inject PersonFixture people;

  @Test
  void a_rehearsal_holds_nothing_and_a_recall_is_ended_with_a_reason() {
    PageReader owner = PageReader.owner();
    String tag = newTag("B-");
    String lot =
        posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42, 66.9, 62))
            .statusCode(201)
            .extract()
            .path("lot");
    Document blank = owner.reads("/recalls/new");
    assertTrue(blank.selectFirst("[name=rehearsal]").hasAttr("checked"));
    Response refused = owner.sends(blank, NEW, "lot", lot);
    assertEquals(400, refused.statusCode());
    assertTrue(PageReader.beside(refused, "reason").contains("Say why"));
    Document again = Jsoup.parse(refused.asString());
    assertEquals(lot, again.selectFirst("[name=lot]").val());
    Document rehearsal = owner.reads(goesTo(owner.sends(again, NEW, "reason", "A drill")));
    assertTrue(rehearsal.selectFirst("h1").text().startsWith("Rehearsal"));
    assertEquals("100.0 %", cell(rehearsal, "Share"));
    assertEquals("no", cell(rehearsal, "Held"));

    Response begun =
        owner.sends(
            owner.reads("/recalls/new"),
            NEW,
            "barrel",
            tag,
            "reason",
            "Scorched",
            "rehearsal",
            "false");
    String at = goesTo(begun);
    Document open = owner.reads(at);
    assertEquals("held", cell(open, "Held"));
    assertEquals(400, owner.sends(open, "form[action='" + at + "']").statusCode());
    owner.sends(open, "form[action='" + at + "']", "reason", "All found").then().statusCode(303);
    Document ended = owner.reads(at);
    assertTrue(ended.text().contains("All found"));
    assertNull(ended.selectFirst("form[action='" + at + "']"));
  }

  @Test
  void a_bookkeeper_gets_no_form_and_may_send_none() {
    String name = people.with("bookkeeper", "sums and more sums");
    PageReader bookkeeper = PageReader.as(name, "sums and more sums");
    assertNull(bookkeeper.reads("/recalls/new").selectFirst(NEW));
    assertEquals(403, bookkeeper.posts("/recalls/new", Map.of("reason", "x")).statusCode());
  }

  private static String goesTo(Response done) {
    String at = done.then().statusCode(303).extract().header("Location");
    return at.substring(at.indexOf("/recalls/"));
  }

  private static String cell(Document page, String label) {
    return page.selectFirst("td[data-label='" + label + "']").text().replace('\u00a0', ' ');
  }
}
