package org.barreltally.faults;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;

/** What is asked next: barrels, runs, jars carried and dropped, of what is known to be there. */
final class Job {

  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String BARREL =
      """
      {"tag": "%s", "season": 2026, "filledOn": "2026-03-14", "material": "stainless",
       "weighing": {"gross": {"value": 486.5, "unit": "lb"}, "tare": {"value": 42.0, "unit": "lb"}},
       "density": {"reading": {"value": 66.9, "unit": "Brix"}, "temperature": {"value": 68, "unit": "degF"},
                   "instrument": "refractometer"},
       "transmittance": 62, "taste": "clean"}
      """;

  private static final String RUN =
      """
      {"on": "2026-06-20", "draws": [{"barrel": "%s", "weight": {"value": 30, "unit": "lb"}}],
       "fillTemperature": {"value": 185, "unit": "degF"},
       "fills": [{"container": "PT", "count": %d}], "transmittance": 60, "taste": "clean"}
      """;

  private static final String CARRY =
      """
      {"from": "cool-room", "to": "barrel-room", "container": "PT", "lot": "%s", "count": 2, "reason": "room"}
      """;

  private static final String DROP =
      """
      {"place": "cool-room", "container": "PT", "lot": "%s", "count": 1, "cause": "broken"}
      """;

  private static final String SALE =
      """
      [{"id": "%s", "at": "2026-08-08T14:05:00Z", "lines": [{"container": "PT", "lot": "%s", "count": %d}],
        "paid": {"cash": {"amount": %d, "currency": "USD"}}}]
      """;

  private static final String ORDER =
      """
      {"buyer": {"name": "Hesper Loomworks"}, "recipients": [{"name": "Ottilie Quillfeather",
        "address": {"lines": ["%d Tarn Lane"], "town": "Fernby", "region": "VT", "postcode": "05999", "country": "US"},
        "box": "One pint", "count": 1, "delivery": "post", "sendBy": "2026-12-14"}]}
      """;

  private static final String SHOW =
      """
      {"name": "Fernby Fair", "town": "Fernby", "starts": "2026-08-08", "ends": "2026-08-09", "state": "accepted"}
      """;

  private static final String BOX =
      """
      {"name": "One pint", "price": {"amount": 20, "currency": "USD"},
       "contents": [{"container": "PT", "grade": "amber", "count": 1}]}
      """;

  private static final String PACKED_OUT =
      """
      {"lines": [{"container": "PT", "lot": "%s", "count": %d}], "float": {"amount": 100, "currency": "USD"}}
      """;

  private static final String PRICES =
      """
      {"name": "Shops", "audience": "wholesale", "validFrom": "2020-01-01",
       "lines": [{"container": "PT", "price": {"amount": 15, "currency": "USD"}}]}
      """;

  private static final String SHOP =
      """
      {"name": "%s", "commissionPercent": 40, "priceList": "%s"}
      """;

  private static final String SHELF =
      """
      {"on": "2026-%s", "lines": [{"container": "PT", "lot": "%s", "count": %d}]}
      """;

  private static final String PAYMENT =
      """
      {"on": "2026-09-25", "amount": {"amount": 1, "currency": "USD"}}
      """;

  private static final int ON_THE_TABLE = 2_300;
  static final int ON_THE_SHELF = 100;

  /** Jars that every count finds on the shop's shelf; 60 are sold then. */
  private static final int LEFT_ON_SHELF = 40;

  /** What the shop owes for them: 60 x $15 less 40 %. */
  static final int OWED = 540;

  private String show;
  private String table;
  private String onTable;

  /** Whose shelf is counted, and who pays. */
  private String shop;

  /** Where jars of all lots are brought. */
  private String other;

  private final AtomicInteger tags = new AtomicInteger();
  private final List<String> barrels = Collections.synchronizedList(new ArrayList<>());
  private final List<String> lots = Collections.synchronizedList(new ArrayList<>());

  /** Before anything breaks: a table at a show with jars on it, and a box to be given. */
  List<Wish> begin(Asker asker) throws Exception {
    Wish barrel =
        new Wish(
            Wish.Kind.FILL,
            "/api/barrels",
            BARREL.formatted("F-0").replace("486.5", "4042"),
            1,
            "F-0");
    asker.send(barrel);
    settled(barrel);
    Wish run =
        new Wish(
            Wish.Kind.CAN,
            "/api/canning/runs",
            RUN.formatted("F-0", ON_THE_TABLE + ON_THE_SHELF)
                .replace("\"value\": 30", "\"value\": 3400"),
            ON_THE_TABLE + ON_THE_SHELF,
            "");
    asker.send(run);
    onTable = JSON.readTree(run.answer).get("lot").asText();
    show = JSON.readTree(asker.make("/api/shows", SHOW)).get("id").asText();
    asker.make("/api/gift-boxes", BOX);
    table = JSON.readTree(asker.get("/api/shows/" + show + "/table")).get("place").asText();
    Wish pack =
        new Wish(
            Wish.Kind.PACK,
            "/api/shows/" + show + "/pack-out",
            PACKED_OUT.formatted(onTable, ON_THE_TABLE),
            ON_THE_TABLE,
            table);
    asker.send(pack);
    String prices = JSON.readTree(asker.make("/api/price-lists", PRICES)).get("id").asText();
    shop = opened(asker, "Quillback Store", prices);
    other = opened(asker, "Thornwick Pantry", prices);
    Wish bring = toShop(shop, Wish.Kind.BRING, "/deliveries", onTable, ON_THE_SHELF);
    asker.send(bring);
    return List.of(barrel, run, pack, bring);
  }

  private static String opened(Asker asker, String name, String prices) throws Exception {
    return JSON.readTree(asker.make("/api/shops", SHOP.formatted(name, prices)))
        .get("code")
        .asText();
  }

  private static Wish toShop(String shop, Wish.Kind kind, String path, String lot, int count) {
    String on = kind == Wish.Kind.BRING ? "08-01" : "09-20";
    return new Wish(
        kind, "/api/shops/" + shop + path, SHELF.formatted(on, lot, count), count, "shop-" + shop);
  }

  /** Where what the shop owes is read. */
  String statement() {
    return "/api/shops/" + shop + "/statement";
  }

  Wish next(Random random) {
    int what = random.nextInt(17);
    if (what == 16) {
      return random.nextInt(4) == 0
          ? toShop(shop, Wish.Kind.COUNT, "/counts", onTable, LEFT_ON_SHELF)
          : new Wish(Wish.Kind.PAY, "/api/shops/" + shop + "/payments", PAYMENT, 1, "");
    }
    if (what >= 14 && !lots.isEmpty()) {
      return toShop(other, Wish.Kind.BRING, "/deliveries", one(lots, random), 1);
    }
    if (what >= 13) {
      String order = ORDER.formatted(1 + random.nextInt(90));
      return new Wish(Wish.Kind.ORDER, "/api/gift-orders", order, 1, "");
    }
    if (what >= 10) {
      int jars = 1 + random.nextInt(2);
      String sale = SALE.formatted(UUID.randomUUID(), onTable, jars, 15 * jars);
      return new Wish(Wish.Kind.SELL, "/api/shows/" + show + "/sales", sale, jars, table);
    }
    if (what < 2 || barrels.isEmpty()) {
      String tag = "F-" + tags.incrementAndGet();
      return new Wish(Wish.Kind.FILL, "/api/barrels", BARREL.formatted(tag), 1, tag);
    }
    if (what < 6 || lots.isEmpty()) {
      int jars = 6 + random.nextInt(10);
      return new Wish(
          Wish.Kind.CAN, "/api/canning/runs", RUN.formatted(one(barrels, random), jars), jars, "");
    }
    String lot = one(lots, random);
    return what < 8
        ? new Wish(Wish.Kind.CARRY, "/api/stock/relocations", CARRY.formatted(lot), 2, lot)
        : new Wish(Wish.Kind.WRITE_OFF, "/api/stock/write-offs", DROP.formatted(lot), 1, lot);
  }

  private static String one(List<String> of, Random random) {
    return of.get(random.nextInt(of.size()));
  }

  /** What was acknowledged can be drawn from afterwards. */
  void settled(Wish wish) {
    if (!wish.isAcknowledged()) {
      return;
    }
    if (wish.kind == Wish.Kind.FILL) {
      barrels.add(wish.about);
    } else if (wish.kind == Wish.Kind.CAN) {
      try {
        lots.add(JSON.readTree(wish.answer).get("lot").asText());
      } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
        throw new AssertionError(wish.answer, e);
      }
    }
  }
}
