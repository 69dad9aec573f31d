package org.barreltally.browser;

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

/** The main job from an empty book to printed labels, by clicking and typing as a person does. */
class MainJobIT {

  private static final LocalDate FILLED = LocalDate.now().minusDays(20);

  @TempDir static Path folder;
  private static Program program;

  @BeforeAll
  static void an_empty_book() throws Exception {
    program =
        Program.start(
                Map.of(
                    "BARRELTALLY_DATA",
                    folder.toString(),
                    "BARRELTALLY_OWNER_PASSWORD",
                    Screen.PASSWORD,
                    "HTTPS_PORT",
                    "off"))
            .awaitReady();
  }

  @AfterAll
  static void end() throws Exception {
    program.close();
  }

  /** Follows a link of the menu, which a phone opens first. */
  private static void goes(Screen screen, String menu, String heading) {
    Locator opener = screen.page().locator("a.menu-opener");
    if (opener.isVisible()) {
      opener.click();
    }
    screen
        .page()
        .locator("nav.menu")
        .getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName(menu).setExact(true))
        .click();
    screen.isHeaded(heading);
  }

  private static void follows(Screen screen, String link) {
    screen
        .page()
        .locator("main")
        .getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName(link).setExact(true))
        .first()
        .click();
  }

  private static void presses(Screen screen, String button) {
    screen
        .page()
        .locator("main")
        .getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(button).setExact(true))
        .click();
  }

  private static void types(Screen screen, String field, Object text) {
    screen.page().locator("main [name='" + field + "']").fill(text.toString());
  }

  private static void chooses(Screen screen, String field, String code) {
    screen.page().locator("main select[name='" + field + "']").selectOption(code);
  }

  private static void fills(Screen screen, String tag) {
    goes(screen, "Barrels", "Barrels");
    follows(screen, "Fill a barrel");
    types(screen, "tag", tag);
    types(screen, "season", FILLED.getYear());
    types(screen, "filledOn", FILLED);
    chooses(screen, "material", "stainless");
    types(screen, "weighing.gross", "486.5");
    types(screen, "weighing.tare", "42");
    types(screen, "density.reading", "66.9");
    types(screen, "density.temperature", "68");
    types(screen, "transmittance", "62");
    presses(screen, "Fill the barrel");
    screen.sees(tag);
  }

  /** Draws all of one barrel into pints; what the page reckons while somebody types. */
  private static void cans(Screen screen, String tag, boolean reckonsAlong) {
    goes(screen, "Canning", "Canning");
    follows(screen, "Can syrup");
    chooses(screen, "draws[0].from", tag);
    Locator whole = screen.page().locator("main [name='draws[0].all']");
    if (whole.count() > 0) {
      whole.check();
    }
    chooses(screen, "fills[0].container", "PT");
    types(screen, "fills[0].count", "100");
    if (reckonsAlong) {
      screen.page().locator("main").getByText("Shrink").first().waitFor();
    }
  }

  @Test
  void from_an_empty_book_to_labels_by_clicking() throws Exception {
    try (Screen laptop = Screen.of(program, Screen.LAPTOP).signsIn()) {
      System.out.println(dump(laptop, "/settings"));
      System.out.println(dump(laptop, "/barrels"));
      System.out.println(dump(laptop, "/barrels/new"));
      System.out.println(dump(laptop, "/canning/new"));
    }
  }

  private static String dump(Screen screen, String path) {
    screen.opens(path);
    return path
        + "\n"
        + screen
            .page()
            .locator("main")
            .evaluate(
                "(m) => [...m.querySelectorAll('input,select,textarea,button,a')].map((e) => e.tagName + ' ' + (e.name || e.href || '') + ' ' + (e.type || '') + ' ' + (e.value || '').slice(0, 30) + ' | ' + e.innerText.slice(0, 60).replace(/\\n/g, ' ')).join('\\n')");
  }
}
