package org.barreltally.shows.pages;

import static org.barreltally.Pages.beside;
import static org.barreltally.Pages.held;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Shows booked, changed and brought on from pages. */
@QuarkusTest
class BookingPagesTest {

  @Inject BookRows rows;
  @Inject PersonFixture people;

  private Pages owner;

  @BeforeEach
  void the_owner_signs_in() {
    owner = Pages.owner();
  }

  private static String name(String words) {
    return words + " " + UUID.randomUUID().toString().substring(0, 6);
  }

  private Pages.Sheet booking(String name, String day) {
    return owner
        .form("/shows/new")
        .with("name", name)
        .with("town", "Fernby")
        .with("starts", day)
        .with("ends", day);
  }

  @Test
  void a_year_without_shows_says_what_comes_first() {
    Document page = owner.reads("/shows?year=2091");
    assertTrue(page.select(".empty").text().contains("Book the first one"), page.text());
    assertNotNull(page.selectFirst("a[href=\"/shows/new\"]"));
    assertNull(page.selectFirst("svg.season"));
  }

  @Test
  void a_refused_booking_keeps_what_was_typed_and_says_beside_each_field_what_to_mend() {
    Map<String, String> before = rows.fingerprint();
    Document page =
        owner
            .form("/shows/new")
            .with("town", "Fernby")
            .with("starts", "2026-05-02")
            .with("ends", "2026-05-03")
            .with("booth.fee", "-5")
            .with("booth.percentOfSales", "120")
            .with("booth.tables[0].lengthInches", "96")
            .with("visitorsExpected", "a lot")
            .refused(400);
    // A number that cannot be read comes first; nothing else was asked yet.
    assertEquals("“a lot” is no number. Write it as 66.9.", beside(page, "visitorsExpected"));

    page =
        owner
            .form("/shows/new")
            .with("town", "Fernby")
            .with("starts", "2026-05-02")
            .with("ends", "2026-05-03")
            .with("booth.fee", "-5")
            .with("booth.percentOfSales", "120")
            .with("booth.tables[0].lengthInches", "96")
            .with("notes", "By the <pond>")
            .refused(400);
    assertEquals("Give one line of 1 to 100 characters.", beside(page, "name"));
    assertEquals("Give an amount that is not below nothing.", beside(page, "booth.fee"));
    assertEquals("Give percent from 0 to 100.", beside(page, "booth.percentOfSales"));
    assertEquals(
        "Give inches, more than 0 and at most 600.", beside(page, "booth.tables[0].depthInches"));
    assertEquals("", beside(page, "town"));
    assertEquals("Fernby", held(page, "town"));
    assertEquals("96", held(page, "booth.tables[0].lengthInches"));
    assertEquals("By the <pond>", page.selectFirst("textarea[name=notes]").wholeText());
    assertEquals(4, page.select(".refusal li").size());
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void all_that_is_booked_stands_on_the_page_and_in_the_form_again() {
    String name = name("Harvest Fair");
    String at =
        booking(name, "2026-10-03")
            .with("setUp", "2026-10-02")
            .with("setUp.hour", "17:30")
            .with("deadlines.pay", "2026-09-01")
            .with("booth.fee", "120")
            .with("booth.percentOfSales", "2.5")
            .with("booth.tables[0].lengthInches", "96")
            .with("booth.tables[0].depthInches", "30")
            .with("booth.tables[0].tiers", "2")
            .with("kitItems[1]", "Canopy weights")
            .with("float", "80.50")
            .with("vehicleLoad", "900")
            .with("state", "accepted")
            .done();
    Document page = owner.reads(at);
    assertTrue(page.text().contains("Fernby, Oct 3, 2026: accepted"), page.text());
    // The test farm's clock shows UTC; BookingHoursTest tries another.
    Owner.reads("/api" + at).body("setUp", org.hamcrest.Matchers.equalTo("2026-10-02T17:30:00Z"));
    assertTrue(page.text().contains("$120.00, 2.5 % of the takings"), page.text());
    assertTrue(page.text().contains("96 × 30 inches, 2 tiers"), page.text());

    Document again = owner.reads(at + "/change");
    assertEquals("2026-10-02", held(again, "setUp"));
    assertEquals("17:30", held(again, "setUp.hour"));
    assertEquals("80.50", held(again, "float"));
    assertEquals("Canopy weights", held(again, "kitItems[0]"));
    assertEquals("900", held(again, "vehicleLoad"));

    // A field left blank is taken away; what stays in the form stays booked.
    Pages.Sheet change = owner.form(at + "/change").with("float", "").with("setUp.hour", "");
    assertEquals(change.done(), change.done());
    Owner.reads("/api" + at)
        .body("float", org.hamcrest.Matchers.nullValue())
        .body("setUp", org.hamcrest.Matchers.equalTo("2026-10-02"))
        .body("booth.fee.amount", org.hamcrest.Matchers.equalTo(120.0f))
        .body("kitItems[0]", org.hamcrest.Matchers.equalTo("Canopy weights"));
  }

  @Test
  void sent_twice_it_is_booked_once() {
    String name = name("Twice Fair");
    Pages.Sheet sheet = booking(name, "2026-11-07");
    assertEquals(sheet.done(), sheet.done());
    Document list = owner.reads("/shows/list?year=2026&sort=-name");
    assertEquals(1, list.select("th a").stream().filter(a -> a.text().equals(name)).count());
  }

  @Test
  void a_clash_is_told_beside_what_clashes_and_may_be_allowed() {
    String helper = name("Marrin");
    String first = name("Thaw Market");
    booking(first, "2027-04-10").with("helper", helper).done();
    Pages.Sheet second = booking(name("Bridge Market"), "2027-04-10").with("helper", helper);
    Document page = second.refused(409);
    assertTrue(beside(page, "helper").contains("is at " + first), page.text());
    assertNotNull(page.selectFirst("input[type=checkbox][name=allowOverlap]"));
    String at = second.with("allowOverlap", "true").done();

    Document season = owner.reads("/shows?year=2027");
    assertTrue(
        season.select(".clash").text().contains("Helper " + helper + " is at " + first),
        season.text());
    assertNotNull(season.selectFirst("svg.season rect.clashing"));
    // Called off it binds nobody, so nothing clashes any more.
    owner.form(at + "/call-off").with("reason", "Snow on the green").done();
    assertFalse(owner.reads("/shows?year=2027").select(".clash").text().contains(helper));
    assertTrue(owner.reads(at).text().contains("called off – Snow on the green"));
  }

  @Test
  void a_change_of_what_somebody_else_changed_meanwhile_is_refused_and_kept() {
    String at = booking(name("Stale Fair"), "2026-12-05").done();
    Pages.Sheet sheet = owner.form(at + "/change").with("town", "Lower Wend");
    Owner.asks()
        .contentType("application/json")
        .body("{\"notes\": \"Bring lamps\"}")
        .patch("/api" + at)
        .then()
        .statusCode(200);
    Document page = sheet.refused(412);
    assertTrue(page.select(".refusal").text().contains("Somebody changed"), page.text());
    assertEquals("Lower Wend", held(page, "town"));
    assertNotNull(page.selectFirst("a[href=\"" + at + "/change\"]"));
    Owner.reads("/api" + at).body("town", org.hamcrest.Matchers.equalTo("Fernby"));
  }

  @Test
  void it_comes_into_its_next_state_and_its_fee_is_noted() {
    String at = booking(name("Step Fair"), "2026-12-12").with("booth.fee", "60").done();
    Pages.Sheet step = owner.form(at, at + "/state").with("state", "accepted");
    assertEquals(step.done(), step.done());
    Document refused = owner.form(at + "/payments").refused(400);
    assertTrue(beside(refused, "amount").startsWith("Give what was paid"), refused.text());
    owner.form(at + "/payments").with("amount", "$60").with("note", "Cheque").done();
    Document page = owner.reads(at);
    assertTrue(page.text().contains("Fernby, Dec 12, 2026: paid"), page.text());
    assertTrue(page.text().contains("Paid to the organizer: $60.00"), page.text());
    Document without = owner.form(at + "/call-off").refused(400);
    assertEquals("Say why.", beside(without, "reason"));
    Document more =
        owner.form(at + "/call-off").with("reason", "x").with("refund", 61).refused(400);
    assertTrue(beside(more, "refund").contains("60.00 USD"), more.text());
  }

  @Test
  void a_bookkeeper_reads_and_gets_no_form() {
    String at = booking(name("Read Fair"), "2026-12-19").done();
    String reader = people.with("bookkeeper", "sums and more sums");
    Pages bookkeeper = Pages.of(reader, "sums and more sums");
    Document page = bookkeeper.reads(at);
    assertNull(page.selectFirst("main form"), page.select("main form").toString());
    assertNull(bookkeeper.reads("/shows").selectFirst("a[href=\"/shows/new\"]"));
    assertEquals(403, bookkeeper.posts(at + "/call-off"));
    assertEquals(403, bookkeeper.posts("/shows/new"));
  }
}
