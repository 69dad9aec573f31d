package org.barreltally.table;

import static io.restassured.RestAssured.given;
import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barreltally.Owner;
import org.barreltally.SoundBook;
import org.barreltally.start.TestCertificates;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * The show table on phones: Chromium at phone size, over HTTPS, under a name that is not localhost,
 * with the certificate truly trusted.
 */
@QuarkusTest
class TableBrowserTest {

  /** Taps a jar and pays it exactly in cash, so many times, waiting each time until it is kept. */
  private static final String SELL_MANY =
      """
      async (times) => {
        const until = async (find) => { for (;;) { const it = find(); if (it) return it; await new Promise((r) => setTimeout(r, 2)); } };
        const button = (words) => [...document.querySelectorAll('main button')].find((b) => b.textContent === words);
        for (let n = 0; n < times; n++) {
          (await until(() => document.querySelector('button.add'))).click();
          (await until(() => button('Cash'))).click();
          (await until(() => button('Exactly'))).click();
          await until(() => document.querySelector('.last') && document.querySelector('button.add'));
        }
      }
      """;

  private static final String IDS =
      """
      async () => {
        const { entries } = await import('/table/store.js');
        return (await entries()).map((entry) => entry.id);
      }
      """;

  @TestHTTPResource(value = "/", tls = true)
  URL program;

  @TestHTTPResource("/")
  URL plain;

  @Inject ShelfFixture shelf;

  @AfterEach
  void the_book_is_sound() {
    SoundBook.check();
  }

  @SuppressWarnings("unchecked")
  private static Set<String> ids(TestPhone phone) {
    return new HashSet<>((List<String>) phone.page().evaluate(IDS));
  }

  @Test
  void two_phones_in_flight_mode_one_killed_tell_each_of_200_sales_once() {
    TestTable table = TestTable.open(shelf, 250);
    try (TestPhone blue = TestPhone.bought(program);
        TestPhone red = TestPhone.bought(program)) {
      blue.pairs(TestTable.code("Blue phone")).serves(table.name());
      red.pairs(TestTable.code("Red phone")).serves(table.name());
      blue.flightMode(true);
      red.flightMode(true);
      blue.page().evaluate(SELL_MANY, 120);
      red.page().evaluate(SELL_MANY, 80);
      blue.notSent(120);
      red.notSent(80);
      Set<String> made = ids(blue);
      made.addAll(ids(red));
      assertEquals(200, made.size());
      assertEquals(0, table.sales().size(), "nothing came through in flight mode");

      blue.dies().start(true).opens("/table/").unlocks();
      blue.sees(table.name()).notSent(120).sees("left");

      blue.hasSignal();
      red.hasSignal();
      blue.notSent(0);
      red.notSent(0);
      blue.dies().start(false).opens("/table/").unlocks().notSent(0);

      Map<String, Map<String, Object>> sales = table.sales();
      assertEquals(made, sales.keySet());
      assertEquals(200, table.jarsSold());
      assertEquals(50, table.onTable());
      assertEquals(
          List.of(),
          Owner.reads("/api/sales/conflicts?limit=100")
              .extract()
              .jsonPath()
              .getList("items.sale", String.class)
              .stream()
              .filter(made::contains)
              .toList());
    }
  }

  @Test
  void a_sale_whose_answer_was_lost_is_told_again_and_counts_once() {
    TestTable table = TestTable.open(shelf, 20);
    try (TestPhone phone = TestPhone.bought(program)) {
      phone.pairs(TestTable.code("Grey phone")).serves(table.name());
      int[] lost = {0};
      phone
          .context()
          .route(
              "**/api/shows/*/sales",
              route -> {
                if (lost[0]++ == 0) {
                  given()
                      .header("Authorization", route.request().headers().get("authorization"))
                      .header("Idempotency-Key", route.request().headers().get("idempotency-key"))
                      .contentType("application/json")
                      .body(route.request().postData())
                      .post("/api/shows/" + table.id() + "/sales")
                      .then()
                      .statusCode(201);
                  route.abort("connectionreset");
                } else {
                  route.resume();
                }
              });
      phone.taps(phone.jar("Amber")).taps(phone.jar("Amber"));
      phone.sees("deals save $2.00");
      phone.tap("Cash");
      phone.page().getByText("change $2.00").dblclick();
      phone.notSent(1);
      phone.page().waitForCondition(() -> table.sales().size() == 1);
      phone.notSent(0);
      assertTrue(lost[0] >= 2, "told " + lost[0] + " times");
      assertEquals(2, table.jarsSold());
      Map<String, Object> sale = table.sales().values().iterator().next();
      assertEquals(28.0f, ((Map<?, ?>) sale.get("total")).get("amount"));
      assertEquals(2.0f, ((Map<?, ?>) sale.get("changeDue")).get("amount"));

      phone.tap("Take the last one back");
      phone.page().waitForCondition(() -> table.jarsSold() == 0);
      assertEquals(20, table.onTable());
    }
  }

  @Test
  void what_the_book_says_no_to_and_what_it_has_otherwise_is_shown_and_kept() {
    TestTable table = TestTable.open(shelf, 20);
    try (TestPhone phone = TestPhone.bought(program)) {
      phone.pairs(TestTable.code("Green phone")).serves(table.name()).flightMode(true);
      phone.taps(phone.jar("Amber")).tap("Card").notSent(1);
      String id = ids(phone).iterator().next();
      posts(
              "/api/shows/" + table.id() + "/sales",
              "{'id': '%s', 'at': '2026-01-02T14:00:00Z', 'lines': [{'container': '%s', 'count': 7}], 'paid': {}}"
                  .formatted(id, table.size()))
          .statusCode(201);
      phone.tap("Other things").tap("Pack out");
      phone.picture("pack out");
      phone.page().getByLabel(table.lot()).fill("5000");
      phone.tap("Packed").notSent(2).hasSignal();
      phone.notSent(0, " · 2 to look at");
      phone.page().locator("button.not-sent").click();
      phone.sees("told twice, differently").sees("the book said no").sees("$15.00");
      phone.isAccessible("entries to look at");
      phone.page().reload();
      phone.unlocks().notSent(0, " · 2 to look at");
      assertEquals(7, table.jarsSold(), "the first telling counts");
    }
  }

  @Test
  void a_clock_an_hour_ahead_is_told_and_its_sales_are_taken() {
    TestTable table = TestTable.open(shelf, 20);
    try (TestPhone phone = TestPhone.bought(program)) {
      phone
          .page()
          .addInitScript(
              "{ const now = Date.now; const Real = Date; Date.now = () => now() + 3600000; globalThis.Date = class extends Real { constructor(...a) { super(...(a.length ? a : [Date.now()])); } static now() { return now() + 3600000; } }; }");
      phone.pairs(TestTable.code("Early phone")).serves(table.name());
      phone.sees("60 minutes ahead");
      phone.taps(phone.jar("Amber")).tap("Card");
      phone.page().waitForCondition(() -> table.sales().size() == 1);
      Map<String, Object> sale = table.sales().values().iterator().next();
      assertEquals("clock-ahead", ((Map<?, ?>) ((List<?>) sale.get("notes")).get(0)).get("code"));
      phone.tap("Other things").tap("Broken").tap("Note it");
      phone.page().waitForCondition(() -> table.onTable() == 18);
    }
  }

  @Test
  void the_key_and_names_lie_sealed_and_a_lost_phone_is_cut_off() {
    TestTable table = TestTable.open(shelf, 20);
    try (TestPhone phone = TestPhone.bought(program)) {
      phone.pairs(TestTable.code("Lost phone")).serves(table.name()).flightMode(true);
      phone.tap("Other things").tap("Wish for gift boxes");
      phone.page().getByLabel("Name").fill("Orla Quince");
      phone.page().getByLabel("Phone number").fill("555 0142");
      phone.isAccessible("wish");
      phone.tap("Note it").notSent(1);
      String kept = everythingKept(phone.page());
      assertFalse(kept.contains("btl_"), "the token lies open");
      assertFalse(kept.contains("Quince") || kept.contains("555 0142"), "a name lies open");

      phone.hasSignal();
      phone.notSent(0);
      assertEquals(
          false,
          phone
              .page()
              .evaluate(
                  "async () => { const { entries } = await import('/table/store.js'); return (await entries()).some((e) => e.sealed || e.body?.name); }"),
          "the name leaves the phone");
      List<String> names = Owner.reads("/api/leads").extract().path("items.name");
      assertTrue(names.contains("Orla Quince"), names.toString());

      phone.page().reload();
      phone.page().getByLabel("PIN", new Page.GetByLabelOptions().setExact(true)).fill("111111");
      phone.tap("Open").sees("That is not the PIN");
      phone.unlocks().sees(table.name());

      String id =
          Owner.reads("/api/phones")
              .extract()
              .jsonPath()
              .getString("items.find { it.name == 'Lost phone' }.id");
      Owner.asks().delete("/api/phones/" + id).then().statusCode(200);
      phone.taps(phone.jar("Amber")).tap("Owing").notSent(1).sees("cut off");
      phone.pairs(TestTable.code("Found phone")).notSent(0);
      assertEquals(1, table.jarsSold());
    }
  }

  /**
   * Plain HTTP under a name: the browser gives no worker, no cryptography; selling goes on all the
   * same.
   */
  @Test
  void without_https_the_table_sells_while_the_page_stays_open() {
    TestTable table = TestTable.open(shelf, 5);
    try (TestPhone phone = TestPhone.bought(program)) {
      phone
          .page()
          .navigate(
              "http://%s:%d/table/#pair=%s"
                  .formatted(
                      TestCertificates.NAME, plain.getPort(), TestTable.code("Plain phone")));
      assertEquals(false, phone.page().evaluate("() => isSecureContext"));
      phone.sees("This page came without HTTPS").tap("Pair");
      phone.page().getByText(table.name()).click();
      phone.sees("left");
      phone.flightMode(true).taps(phone.jar("Amber")).tap("Card").notSent(1).hasSignal().notSent(0);
      assertEquals(1, table.jarsSold());
      phone.tap("Other things").tap("Wish for gift boxes").sees("are not kept on a phone without");
      phone.page().reload();
      phone.sees("Pair this phone").notSent(0);
    }
  }

  private static String everythingKept(Page page) {
    return (String)
        page.evaluate(
            """
            async () => {
              const open = indexedDB.open('barreltally-table');
              const db = await new Promise((done) => (open.onsuccess = () => done(open.result)));
              const all = [];
              for (const store of db.objectStoreNames) {
                const read = db.transaction(store).objectStore(store).getAll();
                all.push(await new Promise((done) => (read.onsuccess = () => done(read.result))));
              }
              db.close();
              return JSON.stringify(all) + JSON.stringify({ ...localStorage }) + JSON.stringify({ ...sessionStorage });
            }
            """);
  }

  @Test
  void every_screen_and_page_is_accessible() {
    TestTable table = TestTable.open(shelf, 20);
    try (TestPhone phone = TestPhone.bought(program)) {
      phone.opens("/phones/trust").isAccessible("trust");
      String lot = table.lot();
      Owner.asks().get("/api/public-lots").then().statusCode(200);
      phone.opens("/jar/" + lot).sees("Nothing here");
      Owner.asks().put("/api/public-lots/" + lot).then().statusCode(200);
      phone.opens("/lot/" + lot).sees("Amber, rich taste").isAccessible("jar");

      phone.opens("/sign-in?to=/phones");
      phone.page().getByLabel("User name").fill("owner");
      phone.page().getByLabel("Password").fill("only for the tests");
      phone.page().keyboard().press("Enter");
      phone
          .page()
          .getByLabel("Phone", new Page.GetByLabelOptions().setExact(true))
          .fill("Old phone");
      phone.tap("Make a code").sees("Code for").isAccessible("phones");
      String code = phone.page().locator(".notice strong").textContent();
      phone.opens("/jars").isAccessible("jars");

      phone.opens("/table/#pair=" + code).tap("Pair").sees("Choose a PIN").isAccessible("PIN");
      phone
          .page()
          .getByLabel("PIN", new Page.GetByLabelOptions().setExact(true))
          .fill(TestPhone.PIN);
      phone.page().getByLabel("The same again").fill(TestPhone.PIN);
      phone.tap("Keep it").sees("Choose the show").isAccessible("shows");
      phone.serves(table.name()).isAccessible("table empty-handed");
      phone.taps(phone.jar("Amber")).taps(phone.jar("Amber")).isAccessible("table");
      phone.tap("Cash").isAccessible("cash");
      phone.page().getByText("change $12.00").click();
      phone.sees("Change").isAccessible("change");
      phone.tap("Other things").isAccessible("other things");
      for (String screen :
          List.of(
              "Broken",
              "Given away",
              "To another table",
              "Pack out",
              "Count home",
              "Count the drawer",
              "Price by hand")) {
        phone.tap(screen).isAccessible(screen);
        phone.tap("Back").tap("Other things");
      }
      phone.tap("Lock").sees("Open the table").isAccessible("locked");
    }
  }
}
