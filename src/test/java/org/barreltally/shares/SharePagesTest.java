package org.barreltally.shares;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.SoundBook;
import org.barreltally.gifts.GiftShelf;
import org.barreltally.people.PersonFixture;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** Leases, hand-overs and the season's close as pages. */
@QuarkusTest
class SharePagesTest {

  private static final String NEW = "form[action='/leases/new']";

  @Inject GiftShelf shelf;
  @Inject PersonFixture people;

  private final String landowner = "Odile " + UUID.randomUUID().toString().substring(0, 8);

  private static String what(String what) {
    return "form:has(input[name=what][value=" + what + "])";
  }

  @Test
  void a_lease_goes_from_its_terms_to_the_season_s_close() {
    PageReader owner = PageReader.owner();
    Document page = owner.reads("/leases/new");
    assertTrue(
        page.text().contains("Barter is income at fair market value; your preparer decides."));
    Response refused =
        owner.sends(
            page,
            NEW,
            "landowner",
            landowner,
            "bush",
            "Upper Wend",
            "season",
            "2026",
            "ratePerTap",
            "1.10");
    assertEquals(400, refused.statusCode());
    assertTrue(PageReader.beside(refused, "price").contains("price of a gallon"));
    Document again = Jsoup.parse(refused.asString());
    assertEquals(landowner, again.selectFirst("[name=landowner]").val());
    Response agreed =
        owner.sends(
            again, NEW, "price", "55.00", "taps[0].count", "100", "taps[0].from", "2026-02-14");
    String at = agreed.then().statusCode(303).extract().header("Location");
    String lease = at.substring(at.indexOf("/leases/"));
    // 100 taps × 1.10 = 110.00, at 55.00 a gallon 2 gallons
    assertTrue(
        owner
            .reads("/landowners?landowner=" + landowner.replace(" ", "+"))
            .text()
            .contains("$110.00 $0.00 $110.00 2.00 gal"));

    String size = GiftShelf.newSize("1", "gal");
    String lot = shelf.lot(size, "amber", 3, "2024-06-01");
    Document hand = owner.reads(lease + "/hand-over");
    String row = hand.selectFirst("input[value='" + lot + "']").attr("name").replace(".lot", "");
    Response tooMany = owner.sends(hand, "form[method=post].broad", row + ".count", "9");
    assertEquals(409, tooMany.statusCode());
    Document kept = Jsoup.parse(tooMany.asString());
    assertEquals("9", kept.selectFirst("[name='lines[0].count']").val());
    assertEquals(lot, kept.selectFirst("[name='lines[0].lot']").val());
    owner.sends(kept, "form[method=post].broad", "lines[0].count", "1").then().statusCode(303);
    // one gallon handed over: 55.00 of 110.00 are left
    Document shown = owner.reads(lease);
    assertTrue(shown.text().contains("$55.00 (1.00 gal)"), shown.text());

    Response terms = owner.sends(shown, what("terms"), "price", "0");
    assertEquals(400, terms.statusCode());
    assertNotNull(Jsoup.parse(terms.asString()).getElementById("f-terms-price-message"));
    owner
        .sends(owner.reads(lease), what("taps"), "count", "150", "from", "2026-03-20")
        .then()
        .statusCode(303);
    Owner.reads("/api" + lease + "/statement").body("owed.amount", equalTo(165.0f));
    owner.sends(owner.reads(lease), what("close")).then().statusCode(303);
    assertNull(owner.reads(lease).selectFirst(what("close")));
    SoundBook.check();
  }

  @Test
  void a_bookkeeper_gets_no_form_and_may_send_none() {
    String name = people.with("bookkeeper", "sums and more sums");
    PageReader bookkeeper = PageReader.as(name, "sums and more sums");
    assertNull(bookkeeper.reads("/leases/new").selectFirst(NEW));
    assertEquals(403, bookkeeper.posts("/leases/new", Map.of("bush", "x")).statusCode());
  }
}
