package org.barreltally.load;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** A book to be busy on: a large tank, a lot in jars for each show, shows under way, gift boxes. */
final class Season {

  static final int SHOWS = 5;
  static final int JARS_PER_SHOW = 12_000;

  /** Jars of each show's lot that stay at home at first. */
  static final int SPARE_PER_SHOW = 1_200;

  static final String BOX = "Pair of half pints";
  static final String TANK = "TANK-1";
  private static final String FIRST_TANK = "TANK-0";

  /** A show under way and the lot on its table. */
  record Table(String show, String lot) {}

  private final List<Table> tables = new ArrayList<>();
  private final List<String> phones = new ArrayList<>();
  private String shop;

  List<Table> tables() {
    return tables;
  }

  /** The code of a shop that sells jars of all shows' lots on consignment. */
  String shop() {
    return shop;
  }

  /** What each phone signs in with. */
  List<String> phones() {
    return phones;
  }

  static Season begun(Copies copies, int phones) throws Exception {
    Season season = new Season();
    season.filled(copies, FIRST_TANK);
    season.filled(copies, TANK);
    copies.taken(
        "/api/price-lists",
        """
        {"name": "Fairs", "audience": "show", "validFrom": "2026-01-01",
         "lines": [{"container": "HP", "price": {"amount": 9, "currency": "USD"}}]}
        """);
    JsonNode prices =
        copies.taken(
            "/api/price-lists",
            """
            {"name": "Shops", "audience": "wholesale", "validFrom": "2020-01-01",
             "lines": [{"container": "HP", "price": {"amount": 7, "currency": "USD"}}]}
            """);
    season.shop =
        copies
            .taken(
                "/api/shops",
                "{\"name\": \"Quillback Store\", \"commissionPercent\": 40, \"priceList\": %s}"
                    .formatted(prices.get("id")))
            .get("code")
            .asText();
    season.canned(copies); // for gifts
    for (int n = 0; n < SHOWS; n++) {
      String lot = season.canned(copies);
      JsonNode show =
          copies.taken(
              "/api/shows",
              """
              {"name": "Fair %d", "town": "Fernby", "starts": "2026-08-08", "ends": "2026-08-09", "state": "accepted"}
              """
                  .formatted(n));
      String id = show.get("id").asText();
      copies.taken(
          "/api/shows/" + id + "/pack-out",
          """
          {"lines": [{"container": "HP", "lot": "%s", "count": %d}], "float": {"amount": 100, "currency": "USD"}}
          """
              .formatted(lot, JARS_PER_SHOW));
      season.tables.add(new Table(id, lot));
    }
    copies.taken(
        "/api/gift-boxes",
        """
        {"name": "%s", "price": {"amount": 24, "currency": "USD"},
         "contents": [{"container": "HP", "grade": "amber", "count": 2}]}
        """
            .formatted(BOX));
    for (int n = 0; n < phones; n++) {
      JsonNode code = copies.taken("/api/phones", "{\"name\": \"Till %d\"}".formatted(n));
      JsonNode paired =
          copies.taken("/api/table/pairing", "{\"code\": %s}".formatted(code.get("code")));
      season.phones.add("Bearer " + paired.get("token").asText());
    }
    return season;
  }

  private void filled(Copies copies, String tank) throws Exception {
    copies.taken(
        "/api/barrels",
        """
        {"tag": "%s", "season": 2026, "filledOn": "2026-03-14", "material": "stainless",
         "weighing": {"gross": {"value": 80042, "unit": "lb"}, "tare": {"value": 42, "unit": "lb"}},
         "density": {"reading": {"value": 66.9, "unit": "Brix"}, "temperature": {"value": 68, "unit": "degF"},
                     "instrument": "refractometer"}, "transmittance": 62, "taste": "clean"}
        """
            .formatted(tank));
  }

  private String canned(Copies copies) throws Exception {
    return copies
        .taken(
            "/api/canning/runs",
            """
            {"on": "2026-06-20", "draws": [{"barrel": "%s", "weight": {"value": 9500, "unit": "lb"}}],
             "fillTemperature": {"value": 185, "unit": "degF"},
             "fills": [{"container": "HP", "count": %d}], "transmittance": 60, "taste": "clean"}
            """
                .formatted(FIRST_TANK, JARS_PER_SHOW + SPARE_PER_SHOW))
        .get("lot")
        .asText();
  }
}
