package org.barreltally.settings.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Map;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.people.PersonFixture;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** The settings as a page. */
@QuarkusTest
class SettingsPageTest {

  private static final String FORM = "form[action='/settings']";

  @Inject PersonFixture people;

  /** The newest changes; other tests change settings too, but none beside this one. */
  private static String newest() {
    return Owner.reads("/api/settings/history?limit=1").extract().path("items[0].id");
  }

  @Test
  void only_what_was_changed_on_the_form_is_recorded() {
    PageReader owner = PageReader.owner();
    Document page = owner.reads("/settings");
    String before = newest();
    owner.sends(page, FORM).then().statusCode(303);
    assertEquals(before, newest(), "sent as it was shown, it records nothing");

    String drawOff = page.selectFirst("[name='sugarhouse.drawOffElevation']").val();
    String other = drawOff.equals("7.2") ? "7.3" : "7.2";
    owner
        .sends(page, FORM, "sugarhouse.drawOffElevation", other.replace('.', ','))
        .then()
        .statusCode(303);
    Map<String, Object> change =
        Owner.reads("/api/settings/history?limit=1").extract().path("items[0]");
    assertEquals("sugarhouse", change.get("name"));
    assertEquals(1, ((Map<?, ?>) change.get("value")).size(), change.toString());
    Document after = owner.reads("/settings");
    assertEquals(other, after.selectFirst("[name='sugarhouse.drawOffElevation']").val());
    assertTrue(after.selectFirst("#history ~ table tbody tr").text().contains(other + " °F"));
    owner.sends(after, FORM, "sugarhouse.drawOffElevation", drawOff).then().statusCode(303);
  }

  @Test
  void a_form_shown_long_ago_takes_back_nothing_another_changed_meanwhile() {
    PageReader owner = PageReader.owner();
    Document old = owner.reads("/settings");
    String gauge = old.selectFirst("[name='sugarhouse.tankGaugePercent']").val();
    String other = gauge.equals("4.5") ? "3.5" : "4.5";
    owner
        .sends(owner.reads("/settings"), FORM, "sugarhouse.tankGaugePercent", other)
        .then()
        .statusCode(303);
    String barometer = old.selectFirst("[name='sugarhouse.barometer']").val();
    owner.sends(old, FORM, "sugarhouse.barometer", "1.5 hPa").then().statusCode(303);
    Document now = owner.reads("/settings");
    assertEquals(other, now.selectFirst("[name='sugarhouse.tankGaugePercent']").val());
    assertEquals("1.5", now.selectFirst("[name='sugarhouse.barometer']").val());
    owner
        .sends(now, FORM, "sugarhouse.tankGaugePercent", gauge, "sugarhouse.barometer", barometer)
        .then()
        .statusCode(303);
  }

  @Test
  void what_is_refused_stands_beside_its_field_and_keeps_the_input() {
    PageReader owner = PageReader.owner();
    String before = newest();
    Response refused =
        owner.sends(
            owner.reads("/settings"),
            FORM,
            "maker",
            "",
            "cappingTemperature",
            "90",
            "timeZone",
            "Fernby",
            "instruments.probe",
            "-1",
            "address[1]",
            "x".repeat(61));
    assertEquals(400, refused.statusCode());
    assertTrue(PageReader.beside(refused, "maker").contains("1 to 100"));
    assertTrue(PageReader.beside(refused, "cappingTemperature").contains("140 to 212"));
    assertTrue(PageReader.beside(refused, "timeZone").contains("IANA"));
    assertTrue(PageReader.beside(refused, "instruments.probe").contains("not negative"));
    assertTrue(PageReader.beside(refused, "address[1]").contains("1 to 60"));
    Document again = Jsoup.parse(refused.asString());
    assertEquals("90", again.selectFirst("[name=cappingTemperature]").val());
    assertEquals("Fernby", again.selectFirst("[name=timeZone]").val());
    assertEquals(before, newest());
  }

  @Test
  void others_read_it_and_may_send_nothing() {
    String person = people.with("bookkeeper", "sums and more sums");
    PageReader bookkeeper = PageReader.as(person, "sums and more sums");
    Document page = bookkeeper.reads("/settings");
    assertNull(page.selectFirst(FORM));
    assertFalse(page.select("table").isEmpty());
    assertTrue(page.text().contains("Least temperature at capping"));
    assertEquals(403, bookkeeper.posts("/settings", Map.of("maker", "x")).statusCode());
  }
}
