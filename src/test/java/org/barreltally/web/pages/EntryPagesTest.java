package org.barreltally.web.pages;

import static io.restassured.RestAssured.given;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.people.PersonFixture;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small pages that enter one thing each, and lists that are saved as they are seen. */
@QuarkusTest
class EntryPagesTest {

  @Inject PersonFixture people;

  private PageReader owner;

  @BeforeEach
  void sign_in() {
    owner = PageReader.owner();
  }

  @Test
  void a_temperature_is_noted_in_a_storeroom() {
    Document room = owner.reads("/storerooms/cool-room");
    Response refused =
        owner.sends(room, "/storerooms/cool-room", "at", "2026-07-14T15:30", "temperature", "hot");
    assertEquals(400, refused.statusCode());
    assertEquals(
        "hot",
        Jsoup.parse(refused.asString()).selectFirst("main [name=temperature]").attr("value"));
    assertEquals(
        303,
        owner
            .sends(room, "/storerooms/cool-room", "at", "2026-07-14T15:30", "temperature", "71")
            .statusCode());
    assertTrue(owner.readsWhole("/storerooms/cool-room").text().contains("71"));
    assertTrue(owner.reads("/storerooms").selectFirst("main tbody").text().contains("°F"));
    PageReader table = PageReader.as(people.with("table", "hot in here"), "hot in here");
    assertNull(table.reads("/storerooms/cool-room").selectFirst("main form[method=post]"));
  }

  @Test
  void canning_is_planned_and_withdrawn() {
    String size = Owner.newSize(7);
    Document page = owner.reads("/planned-canning");
    String day = LocalDate.now().plusDays(9).toString();
    String[] plan = {"on", day, "container", size, "grade", "golden", "count", "24"};
    assertEquals(303, owner.sends(page, "/planned-canning", plan).statusCode());
    assertEquals(303, owner.sends(page, "/planned-canning", plan).statusCode(), "a second click");
    reads("/api/planned-canning").body("items.container", hasItem(size));
    Document listed = owner.reads("/planned-canning");
    String row = "main tr:has(td:containsOwn(" + size + "))";
    assertEquals(1, listed.select(row).size());
    assertEquals(303, owner.sends(listed, row + " form").statusCode());
    reads("/api/planned-canning").body("items.container", not(hasItem(size)));
    plan[7] = "none";
    assertEquals(400, owner.sends(page, "/planned-canning", plan).statusCode());
  }

  @Test
  void a_landowner_is_renamed_and_the_address_removed() {
    String name = "Sorrel " + UUID.randomUUID().toString().substring(0, 8);
    posts(
            "/api/leases",
            "{'landowner': '%s', 'bush': 'Entry Hill', 'season': 2013, 'basis': 'volume', 'governs': 'set', 'ratePerTap': {'amount': 1.10, 'currency': 'USD'}, 'price': {'amount': 55.00, 'currency': 'USD'}, 'taps': [{'from': '2013-02-15', 'count': 4}]}"
                .formatted(name))
        .statusCode(201);
    Document names = owner.readsWhole("/landowners/names");
    String page = names.selectFirst("main a:containsOwn(" + name + ")").attr("href");
    assertEquals(
        303,
        owner
            .sends(owner.reads(page), page, "name", name + " II", "address", "1 Old Road")
            .statusCode());
    assertEquals("1 Old Road", owner.reads(page).selectFirst("main [name=address]").text());
    assertEquals(400, owner.sends(owner.reads(page), page, "name", " ").statusCode());
    assertEquals(
        303,
        owner.sends(owner.reads(page), page, "name", "Gone " + name, "address", "").statusCode());
    reads("/api/landowners?limit=500")
        .body("items.name", not(hasItem(name + " II")))
        .body("items.find { it.name == 'Gone " + name + "' }.address", nullValue());
  }

  @Test
  void an_allowed_variation_is_entered_by_the_owner() {
    String size = Owner.newSize(9);
    Document page = owner.reads("/allowed-variations");
    String[] entry = {
      "container", size, "allowed", "7.5", "allowed.unit", "mL", "source", "Invented for " + size
    };
    Response refused =
        owner.sends(page, "/allowed-variations", "container", size, "allowed", "a little");
    assertEquals(400, refused.statusCode());
    assertTrue(PageReader.beside(refused, "allowed").contains("a little"), refused.asString());
    assertEquals(303, owner.sends(page, "/allowed-variations", entry).statusCode());
    Element row =
        owner.reads("/allowed-variations").selectFirst("main tr:has(th:containsOwn(" + size + "))");
    assertTrue(row.text().contains("Invented for " + size), row.text());
    Response range =
        owner.sends(page, "/allowed-variations", "over", "16", "upTo", "8", "allowed", "1");
    assertEquals(400, range.statusCode());
    assertTrue(PageReader.beside(range, "upTo").contains("more than over"), range.asString());
    PageReader canning = PageReader.as(people.with("canning", "may read it"), "may read it");
    assertNull(canning.reads("/allowed-variations").selectFirst("main form[method=post]"));
  }

  @Test
  void a_carriers_zones_are_written_off_and_begin_the_next_years() {
    String name = "Cart " + UUID.randomUUID().toString().substring(0, 8);
    Document page = owner.reads("/carriers/new");
    assertEquals(5, page.select("main [name^=weekdays][checked]").size());
    String[] table = {
      "name", name, "weekdays[5]", "sat", "closed", "2031-12-25, 2032-01-01",
      "zones[0].name", "near", "zones[0].days", "2", "zones[0].countries", "us",
      "zones[0].postcodes", "05, 036 ; 04", "zones[2].name", "far", "zones[2].days", "5"
    };
    table[11] = "us, Utopia";
    Response refused = owner.sends(page, "/carriers/new", table);
    assertEquals(400, refused.statusCode());
    assertTrue(
        PageReader.beside(refused, "zones[0].countries").contains("3166"), refused.asString());
    Document again = Jsoup.parse(refused.asString());
    assertEquals("us, Utopia", again.selectFirst("[name='zones[0].countries']").val());
    assertEquals("far", again.selectFirst("[name='zones[1].name']").val(), "gaps close up");
    table[11] = "us";
    assertEquals(303, owner.sends(page, "/carriers/new", table).statusCode());
    String found = "items.find { it.name == '" + name + "' }.";
    reads("/api/carriers")
        .body(found + "weekdays", is(List.of("mon", "tue", "wed", "thu", "fri", "sat")))
        .body(found + "closed", is(List.of("2031-12-25", "2032-01-01")))
        .body(found + "zones[0].countries", is(List.of("US")))
        .body(found + "zones[0].postcodes", is(List.of("05", "036", "04")))
        .body(found + "zones[1].days", is(5));
    String anew =
        owner
            .reads("/gift-boxes")
            .selectFirst("main a[href^=/carriers/new]:containsOwn(" + name + ")")
            .attr("href");
    Document next = owner.reads(anew);
    assertEquals("05, 036, 04", next.selectFirst("[name='zones[0].postcodes']").val());
    assertEquals(6, next.select("main [name^=weekdays][checked]").size());
  }

  @Test
  void what_a_refusal_is_called_is_french_on_a_french_page() {
    Response refused =
        given()
            .cookie("barreltally-session", owner.session())
            .header("Accept-Language", "fr")
            .header("Accept", "text/html")
            .get("/lots/no-such-lot");
    assertEquals(404, refused.statusCode());
    assertEquals("Aucun lot de ce nom", Jsoup.parse(refused.asString()).selectFirst("h1").text());
    Document page = owner.reads("/carriers/new");
    Response mended =
        given()
            .cookie("barreltally-session", owner.session())
            .header("Accept-Language", "fr")
            .contentType("application/x-www-form-urlencoded")
            .formParam("token", page.selectFirst("main [name=token]").val())
            .formParam("name", "")
            .post("/carriers/new");
    assertEquals(400, mended.statusCode());
    assertEquals("Nommez le transporteur.", PageReader.beside(mended, "name"));
  }

  @ParameterizedTest
  @CsvSource({
    "/barrels?grade=amber&state=drained&season=2024, /api/barrels?as=csv&grade=amber&state=drained&season=2024",
    "/barrels?state=, /api/barrels?as=csv",
    "/stock?place=cool-room&grade=amber&sort=-lot&page=2, /api/stock?as=csv&place=cool-room&grade=amber",
    "/lots?grade=&held=true, /api/lots?as=csv&held=true",
    "/landowners?season=2013&open=false, /api/shares?as=csv&open=false&season=2013",
    "/shows/list?year=2024, /api/shows?as=csv&year=2024",
    "/prices?audience=retail, /api/price-lists?as=csv&audience=retail",
  })
  void a_list_is_saved_with_the_filters_it_is_seen_with(String page, String csv) {
    String link = owner.reads(page).selectFirst("main a[href*=csv]").attr("href");
    assertEquals(csv, link.replace("+", "%20"));
    Owner.asks().urlEncodingEnabled(false).get(link).then().statusCode(200);
  }
}
