package org.barreltally.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.barreltally.start.Program;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What people do with forms who are in a hurry, go back, or were called away. */
class ImpatienceIT {

  private static final LocalDate FILLED = LocalDate.now().minusDays(3);

  @TempDir static Path folder;
  private static Program program;

  @BeforeAll
  static void an_empty_book() throws Exception {
    program = Program.start(Program.ownBook(folder)).awaitReady();
  }

  @AfterAll
  static void end() throws Exception {
    program.close();
  }

  private static void typesIn(Screen screen, String tag) {
    screen.opens("/barrels/new");
    Map.of(
            "tag", tag,
            "season", String.valueOf(FILLED.getYear()),
            "filledOn", FILLED.toString(),
            "weighing.gross", "486.5",
            "weighing.tare", "42",
            "density.reading", "66.9",
            "density.temperature", "68",
            "transmittance", "62")
        .forEach((field, text) -> screen.page().locator(field(field)).fill(text));
    screen.page().locator("main select[name=material]").selectOption("stainless");
    screen.page().locator("main select[name=taste]").selectOption("clean");
  }

  private static String field(String name) {
    return "main [name='" + name + "']";
  }

  private static Locator button(Screen screen) {
    return screen
        .page()
        .locator("main")
        .getByRole(
            AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Record the filled barrel"));
  }

  /** How often a text stands in the list of movements, which keeps everything. */
  private static int booked(Screen screen, String tag) {
    String all =
        screen.context().request().get(screen.address("/api/barrels?limit=500&as=csv")).text();
    return (int) all.lines().filter(line -> line.contains(tag)).count();
  }

  private static long movements(Screen screen) {
    return screen
        .context()
        .request()
        .get(screen.address("/api/movements?limit=500&as=csv"))
        .text()
        .lines()
        .count();
  }

  @Test
  void a_double_click_records_once() {
    try (Screen laptop = Screen.of(program, Screen.LAPTOP).isLetIn()) {
      long before = movements(laptop);
      typesIn(laptop, "D-01");
      button(laptop).dblclick();
      laptop.page().waitForURL("**/barrels/D-01*");
      assertEquals(1, booked(laptop, "D-01"));
      assertTrue(movements(laptop) > before);
      long once = movements(laptop) - before;
      typesIn(laptop, "D-02");
      button(laptop).click();
      laptop.page().waitForURL("**/barrels/D-02*");
      assertEquals(2 * once, movements(laptop) - before, "as many as one click books");
    }
  }

  @Test
  void going_back_and_pressing_again_records_nothing_more() {
    try (Screen laptop = Screen.of(program, Screen.LAPTOP).isLetIn()) {
      typesIn(laptop, "B-01");
      button(laptop).click();
      laptop.page().waitForURL("**/barrels/B-01*");
      long once = movements(laptop);
      laptop.page().goBack();
      laptop.page().waitForURL("**/barrels/new");
      assertEquals(once, movements(laptop), "going back alone");
      button(laptop).click();
      laptop.page().waitForLoadState();
      assertEquals(1, booked(laptop, "B-01"));
      assertEquals(once, movements(laptop), "pressed again");
    }
  }

  @Test
  void a_session_that_ended_comes_back_to_the_form_with_what_was_typed() {
    try (Screen phone = Screen.of(program, Screen.PHONE).isLetIn()) {
      typesIn(phone, "E-01");
      phone.context().clearCookies();
      button(phone).click();
      phone.page().locator("input[name=username]").fill("owner");
      phone.page().locator("input[name=password]").fill(Screen.PASSWORD);
      phone.page().locator("main form button[type=submit]").click();
      phone.page().locator("main form button[type=submit]").first().click();
      button(phone).waitFor();
      assertEquals("486.5", phone.page().locator(field("weighing.gross")).inputValue());
      assertEquals("E-01", phone.page().locator(field("tag")).inputValue());
      assertEquals(0, booked(phone, "E-01"), "nothing is recorded before somebody presses");
      button(phone).click();
      phone.page().waitForURL("**/barrels/E-01*");
      assertEquals(1, booked(phone, "E-01"));
    }
  }
}
