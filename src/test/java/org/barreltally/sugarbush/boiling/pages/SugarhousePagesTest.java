package org.barreltally.sugarbush.boiling.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.people.PersonFixture;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** The sugarhouse's log as pages: sap, concentrate, a boil with its draw-off, and taking back. */
@QuarkusTest
class SugarhousePagesTest {

  private static final String SAP = "form[action='/sugarhouse/sap']:not(:has([name=entry]))";
  private static final String BOIL = "form[action='/sugarhouse/boil']";

  @Inject PersonFixture people;

  private final String unique = UUID.randomUUID().toString().substring(0, 8);
  private final String bush = "Wend " + unique;
  private final String tank = "T-" + unique;

  private String entered(PageReader owner) {
    Owner.posts("/api/bushes", "{\"name\": \"" + bush + "\"}").statusCode(201);
    Document page = owner.reads("/sugarhouse/sap");
    owner
        .sends(
            page,
            SAP,
            "bush",
            bush,
            "tank",
            tank,
            "volume",
            "100",
            "temperature",
            "40 F",
            "brix",
            "2,0")
        .then()
        .statusCode(303);
    owner
        .sends(
            page,
            SAP,
            "bush",
            bush,
            "tank",
            tank,
            "volume",
            "100",
            "temperature",
            "40 F",
            "brix",
            "2,0")
        .then()
        .statusCode(303);
    return tank;
  }

  private long entries(Document page) {
    return page.select("tbody tr:contains(" + tank + ")").size();
  }

  @Test
  void sap_is_entered_once_and_taken_back_with_its_reason() {
    PageReader owner = PageReader.owner();
    entered(owner);
    Document page = owner.reads("/sugarhouse/sap");
    assertEquals(1, entries(page), "sent twice, entered once");
    String id = page.selectFirst("option:contains(" + tank + ")").val();
    String reverse = "form:has([name=entry])";
    Response unsaid = owner.sends(page, reverse, "entry", id);
    assertEquals(400, unsaid.statusCode());
    owner.sends(page, reverse, "entry", id, "reason", "Read twice").then().statusCode(303);
    assertTrue(owner.reads("/sugarhouse/sap").text().contains("taken back: Read twice"));
  }

  @Test
  void a_refused_gathering_keeps_its_input_and_says_what_to_mend_beside_the_field() {
    PageReader owner = PageReader.owner();
    Response refused =
        owner.sends(
            owner.reads("/sugarhouse/sap"), SAP, "tank", tank, "volume", "many", "brix", "2.1");
    assertEquals(400, refused.statusCode());
    assertTrue(PageReader.beside(refused, "volume").contains("many"));
    Document again = Jsoup.parse(refused.asString());
    assertEquals("many", again.selectFirst("[name=volume]").val());
    assertEquals("2.1", again.selectFirst("[name=brix]").val());
    assertEquals(0, entries(owner.reads("/sugarhouse/sap")));
  }

  @Test
  void a_boil_is_begun_and_drawn_off_and_its_paper_is_linked() {
    PageReader owner = PageReader.owner();
    entered(owner);
    String day = LocalDate.now().minusDays(1).toString();
    Response begun =
        owner.sends(
            owner.reads("/sugarhouse/boil"),
            BOIL,
            "on",
            day,
            "startedAt",
            day + "T09:00",
            "feeds[1].of",
            "sap",
            "feeds[1].tank",
            tank,
            "feeds[1].volume",
            "80",
            "feeds[1].temperature",
            "40",
            "feeds[1].brix",
            "2");
    String at = begun.then().statusCode(303).extract().header("Location");
    String path = at.substring(at.indexOf("/sugarhouse/"));
    Document boil = owner.reads(path);
    assertTrue(boil.text().contains("Never open a filter press under pressure"));
    assertTrue(boil.selectFirst("a[href$='/log.pdf']") != null);
    // Hot syrup shows some 59 °Bx on a hydrometer made for 60 or 68 °F (common practice).
    String draw = "form:has([value=draw])";
    Response refused = owner.sends(boil, draw, "at", day + "T12:00", "weight", "-3");
    assertTrue(refused.statusCode() == 400 || refused.statusCode() == 422);
    assertEquals("-3", Jsoup.parse(refused.asString()).selectFirst("[name=weight]").val());
    owner
        .sends(
            boil,
            draw,
            "at",
            day + "T12:00",
            "weight",
            "20 lb",
            "density.reading",
            "59.5",
            "density.temperature",
            "200",
            "density.instrument",
            "hydrometer",
            "hotIntoJars",
            "true")
        .then()
        .statusCode(303);
    assertTrue(owner.reads(path).text().contains("20.0 lb"), owner.reads(path).text());
    assertTrue(owner.reads("/sugarhouse").select("a[href='" + path + "']").size() == 1);
  }

  @Test
  void the_draw_off_temperature_of_the_day_stands_above_boiling_water() {
    PageReader owner = PageReader.owner();
    // 7.1 °F above water at 66.0 °Bx is common practice and the setting of a fresh start.
    Document page = owner.reads("/sugarhouse?water=210&water.unit=degF&brix=66");
    assertTrue(page.text().contains("217.1 °F"), page.text());
    Document refused = owner.reads("/sugarhouse?water=100&water.unit=degF");
    assertTrue(refused.selectFirst(".refusal") != null);
    assertEquals("100", refused.selectFirst("[name=water]").val());
  }

  @Test
  void a_bookkeeper_gets_no_form_and_may_send_none() {
    String person = people.with("bookkeeper", "sums and more sums");
    PageReader bookkeeper = PageReader.as(person, "sums and more sums");
    assertNull(bookkeeper.reads("/sugarhouse/sap").selectFirst(SAP));
    assertNull(bookkeeper.reads("/sugarhouse/boil").selectFirst(BOIL));
    assertEquals(403, bookkeeper.posts("/sugarhouse/sap", Map.of("brix", "2")).statusCode());
  }
}
