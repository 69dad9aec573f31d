package org.barreltally.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.options.RequestOptions;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.start.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Four hundred barrels, and names as long as they may be, some of them one word: all still fits.
 */
class CrowdedPagesIT {

  private static final int BARRELS = Integer.getInteger("barreltally.barrels", 60);
  private static final int YEAR = LocalDate.now().getYear();
  private static final ObjectMapper JSON = new ObjectMapper();

  /** 60 letters without a blank, and 60 with some. */
  private static final String WORD = "Quillfeatherington-Underbottomleyshirebrook-Fernsbyhamptonly";

  private static final String WORDS =
      "The Worshipful Society of Boilers and Tappers of Upper Wendle";

  @TempDir Path folder;

  private Screen screen;

  private JsonNode posts(String path, String json) throws Exception {
    APIResponse answer =
        screen
            .context()
            .request()
            .post(
                screen.address(path),
                RequestOptions.create()
                    .setHeader("Authorization", Program.LOGIN)
                    .setHeader("Content-Type", "application/json")
                    .setHeader("Idempotency-Key", UUID.randomUUID().toString())
                    .setData(json));
    assertTrue(answer.ok(), path + " " + answer.status() + " " + answer.text());
    return JSON.readTree(answer.text());
  }

  private String barrel(String tag) {
    return """
        {"tag": "%s", "season": %d, "filledOn": "%d-03-14", "material": "stainless",
         "weighing": {"gross": {"value": 486.5, "unit": "lb"}, "tare": {"value": 42, "unit": "lb"}},
         "density": {"reading": {"value": 66.9, "unit": "Brix"}, "temperature": {"value": 68, "unit": "degF"},
                     "instrument": "refractometer"}, "transmittance": 62, "taste": "clean"}
        """
        .formatted(tag, YEAR, YEAR);
  }

  /** Addresses of pages that show what was made. */
  private List<String> made() throws Exception {
    for (int n = 1; n <= BARRELS; n++) {
      posts("/api/barrels", barrel("B-%03d".formatted(n)));
    }
    String tag = "T".repeat(16);
    posts("/api/barrels", barrel(tag));
    String lot =
        posts(
                "/api/canning/runs",
                """
                {"on": "%d-06-20", "draws": [{"barrel": "%s", "all": true}], "fillTemperature": {"value": 185, "unit": "degF"},
                 "fills": [{"container": "PT", "count": 300}], "transmittance": 60, "taste": "clean"}
                """
                    .formatted(YEAR, tag))
            .get("lot")
            .asText();
    String lease =
        posts(
                "/api/leases",
                """
                {"landowner": "%s", "bush": "%s", "season": %d, "basis": "volume", "governs": "set",
                 "ratePerTap": {"amount": 1, "currency": "USD"}, "price": {"amount": 55, "currency": "USD"}, "taps": []}
                """
                    .formatted(WORD, WORDS, YEAR))
            .get("id")
            .asText();
    String shop =
        posts(
                "/api/shops",
                """
                {"name": "%s", "details": "%s", "commissionPercent": 40, "missing": "shop"}
                """
                    .formatted(WORD, WORD + WORD))
            .get("code")
            .asText();
    String show =
        posts(
                "/api/shows",
                """
                {"name": "%s", "town": "%s", "starts": "%d-08-08", "ends": "%d-08-09", "helper": "%s", "state": "accepted"}
                """
                    .formatted(WORD, WORDS, YEAR, YEAR, WORD))
            .get("id")
            .asText();
    posts(
        "/api/gift-boxes",
        """
        {"name": "%s", "price": {"amount": 24, "currency": "USD"}, "contents": [{"container": "PT", "grade": "amber", "count": 2}]}
        """
            .formatted(WORD));
    String order =
        posts(
                "/api/gift-orders",
                """
                {"buyer": {"name": "%1$s"}, "recipients": [{"name": "%1$s", "address": {"lines": ["%1$s"], "town": "Fernby", "region": "VT",
                  "postcode": "05999", "country": "US"}, "box": "%1$s", "count": 1, "card": "%2$s", "delivery": "post", "sendBy": "%3$d-12-14"}]}
                """
                    .formatted(WORD, WORDS, YEAR))
            .get("id")
            .asText();
    return List.of(
        "/",
        "/barrels",
        "/barrels?page=2",
        "/barrels/" + tag,
        "/canning/new",
        "/canning/runs/" + lot,
        "/lots",
        "/lots/" + lot,
        "/stock",
        "/landowners",
        "/landowners/names",
        "/leases/" + lease,
        "/shops",
        "/shops/" + shop,
        "/shows",
        "/shows/list",
        "/shows/" + show,
        "/gift-boxes",
        "/gift-orders",
        "/gift-orders/" + order,
        "/gift-orders/" + order + "/recipients/1",
        "/to-send",
        "/storerooms",
        "/sugarhouse",
        "/balance");
  }

  /** A price list of a thousand lines, of two hundred sizes, which then stand in every choice. */
  private String longList() throws Exception {
    List<String> lines = new ArrayList<>();
    for (int n = 1; n <= 200; n++) {
      String code = "SHAPE-%03d".formatted(n);
      posts(
          "/api/containers",
          """
          {"code": "%s", "name": "Shape %d", "netContents": {"value": 250, "unit": "mL"}, "material": "glass"}
          """
              .formatted(code, n));
      for (String grade : List.of("null", "'golden'", "'amber'", "'dark'", "'very-dark'")) {
        lines.add(
            "{'container': '%s', 'grade': %s, 'price': {'amount': 12.5, 'currency': 'USD'}}"
                .formatted(code, grade));
      }
    }
    String list =
        "{'name': 'Long', 'audience': 'retail', 'validFrom': '%d-01-01', 'lines': [%s]}"
            .formatted(YEAR, String.join(", ", lines));
    return posts("/api/price-lists", list.replace('\'', '"')).get("id").asText();
  }

  private void a_thousand_lines_stand_on_a_page(List<String> faults) throws Exception {
    String path = "/prices/" + longList();
    assertEquals(200, screen.opens(path));
    assertEquals(1000, screen.page().locator("tbody tr").count());
    fits("phone " + path, faults);
  }

  @Test
  void all_of_it_fits() throws Exception {
    Map<String, String> settings = Program.ownBook(folder);
    List<String> faults = new ArrayList<>();
    try (Program program = Program.start(settings).awaitReady()) {
      try (Screen phone = Screen.of(program, Screen.PHONE).isLetIn().judgesEveryPage()) {
        screen = phone;
        for (String path : made()) {
          look(path, faults);
        }
        a_thousand_lines_stand_on_a_page(faults);
      }
    }
    assertEquals("", String.join("\n", faults));
  }

  private void look(String path, List<String> faults) {
    int status = screen.opens(path);
    if (status != 200) {
      faults.add(path + " answers " + status);
    }
    fits("phone " + path, faults);
    screen.barriers().forEach(fault -> faults.add("phone " + path + "  " + fault));
    screen.becomes(Screen.LAPTOP);
    fits("laptop " + path, faults);
    screen.becomes(Screen.PHONE);
  }

  private void fits(String where, List<String> faults) {
    screen.picture("crowded " + where);
    if (screen.tooWide() > 0) {
      faults.add(where + " too wide by " + screen.tooWide() + " px");
    }
  }
}
