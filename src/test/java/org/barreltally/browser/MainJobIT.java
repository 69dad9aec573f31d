package org.barreltally.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
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
    program = Program.start(Program.ownBook(folder)).awaitReady();
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
    chooses(screen, "taste", "clean");
    presses(screen, "Record the filled barrel");
    screen.sees(tag);
  }

  /** The button that names the record it is about. */
  private static void pressesFirst(Screen screen, String words) {
    screen
        .page()
        .locator("main")
        .getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(words))
        .first()
        .click();
  }

  private static void publicAddress(Screen screen) {
    goes(screen, "Settings", "Settings");
    types(screen, "maker", "Fernhollow Sugarhouse");
    types(screen, "address[0]", "12 Quarry Lane");
    types(screen, "publicAddress", "http://localhost:" + program.port());
    presses(screen, "Change the settings");
  }

  /**
   * Draws all of a barrel into so many pints.
   *
   * @return the address of the run
   */
  private static String cans(Screen screen, String tag, int pints, boolean reckonsAlong) {
    goes(screen, "Canning", "Canning");
    follows(screen, "Can syrup");
    screen.page().getByLabel("All of " + tag, exactly()).check();
    types(screen, "on", FILLED.plusDays(3));
    pints(screen).fill(Integer.toString(pints));
    if (reckonsAlong) {
      Locator reckoned = screen.page().locator("#reckoned");
      reckoned.getByText("Fill marks").first().waitFor();
      String before = reckoned.innerText();
      pints(screen).fill(Integer.toString(pints - 10));
      screen
          .page()
          .waitForFunction(
              "(before) => document.getElementById('reckoned').innerText !== before", before);
      assertTrue(reckoned.innerText().contains("Shrink"), reckoned.innerText());
      pints(screen).fill(Integer.toString(pints));
    }
    types(screen, "transmittance", "60");
    chooses(screen, "taste", "clean");
    presses(screen, "Look it over");
    screen.isHeaded("Look it over, then record it");
    presses(screen, "Record the run");
    assertTrue(screen.path().startsWith("/canning/runs/"), screen.path());
    return screen.path();
  }

  private static Page.GetByLabelOptions exactly() {
    return new Page.GetByLabelOptions().setExact(true);
  }

  private static Locator pints(Screen screen) {
    String name =
        (String)
            screen.page().locator("main input[type=hidden][value=PT]").first().getAttribute("name");
    return screen.page().locator("main [name='" + name.replace("container", "count") + "']");
  }

  private static String decoded(byte[] pdf) throws Exception {
    try (PDDocument labels = Loader.loadPDF(pdf)) {
      BufferedImage sheet = new PDFRenderer(labels).renderImageWithDPI(0, 300);
      BufferedImage first = sheet.getSubimage(0, 0, sheet.getWidth() / 2, sheet.getHeight() / 5);
      return new QRCodeReader()
          .decode(
              new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(first))),
              Map.of(DecodeHintType.TRY_HARDER, true))
          .getText();
    }
  }

  private static String labels(Screen screen) throws Exception {
    follows(screen, "Labels");
    screen.page().locator("#f-container").selectOption("PT");
    screen.page().locator("main form.entry").first().locator("[name=count]").fill("10");
    presses(screen, "Record the print");
    String pdf = screen.page().locator("main a.tap").first().getAttribute("href");
    return decoded(screen.context().request().get(screen.address(pdf)).body());
  }

  @Test
  void from_an_empty_book_to_labels_by_clicking() throws Exception {
    try (Screen phone = Screen.of(program, Screen.PHONE).signsIn()) {
      publicAddress(phone);
      fills(phone, "M-01");
      fills(phone, "M-02");
      String run = cans(phone, "M-01", 240, true);
      String lot = run.substring(run.lastIndexOf('/') + 1);
      phone.sees(lot);
      String code = labels(phone);
      assertEquals(phone.address("/lot/" + lot), code);

      goes(phone, "Pages of jars", "Pages of jars");
      pressesFirst(phone, lot);
      try (Screen passerBy = Screen.of(program, Screen.PHONE)) {
        passerBy.opens(code.substring(passerBy.address("").length()));
        passerBy.sees("Amber");
        assertEquals(List.of(), passerBy.barriers());
      }

      carries(phone, lot);
      counts(phone, lot);
      phone.opens("/balance");
      phone.sees("Balance of " + LocalDate.now().getYear());
      phone.opens("/lots/" + lot);
      assertTrue(phone.page().locator("main svg").first().isVisible(), "the lot's tree");
      assertTrue(phone.page().locator("main svg").first().innerHTML().contains(lot));
    }
  }

  private static void carries(Screen screen, String lot) {
    goes(screen, "Stock", "Stock");
    follows(screen, "Carry jars to another place");
    chooses(screen, "from", "cool-room");
    chooses(screen, "to", "barrel-room");
    chooses(screen, "container", "PT");
    types(screen, "lot", lot);
    types(screen, "count", "24");
    types(screen, "reason", "Room for the next run");
    presses(screen, "Record it");
    screen.isHeaded("Stock");
    screen.sees(lot);
  }

  private static void counts(Screen screen, String lot) {
    screen.opens("/counts/plain?place=barrel-room");
    types(screen, "by", "Wren");
    screen.page().locator("main input.count").first().fill("23");
    presses(screen, "Record the count");
    screen.opens("/stock?place=barrel-room&lot=" + lot);
    screen.sees("23");
  }

  @Test
  void the_same_without_script() throws Exception {
    try (Screen laptop = Screen.withoutScript(program).signsIn()) {
      publicAddress(laptop);
      fills(laptop, "N-01");
      String run = cans(laptop, "N-01", 200, false);
      assertEquals(
          laptop.address("/lot/" + run.substring(run.lastIndexOf('/') + 1)), labels(laptop));
    }
  }

  @Test
  void canning_by_keyboard_alone_and_a_refusal_leads_to_its_field() {
    try (Screen laptop = Screen.of(program, Screen.LAPTOP).signsIn()) {
      fills(laptop, "K-01");
      laptop.opens("/canning/new");
      laptop.page().keyboard().press("Tab");
      assertEquals("#content", laptop.focused("getAttribute('href')"), "the way past the menu");
      laptop.page().keyboard().press("Enter");
      laptop.tabsTo("f-on");
      assertNotEquals(
          "none",
          laptop.focused(
              "ownerDocument.defaultView.getComputedStyle(document.activeElement).outlineStyle"));
      laptop.tabsTo("All of K-01");
      laptop.page().keyboard().press("Space");
      laptop.tabsTo("look");
      laptop.page().keyboard().press("Enter");
      laptop.page().locator("main .refusal").waitFor();
      assertTrue(laptop.page().getByLabel("All of K-01", exactly()).isChecked(), "input is kept");
      laptop.page().keyboard().press("Tab");
      laptop.page().keyboard().press("Enter");
      laptop.tabsToLink(".refusal a");
      String to = laptop.focused("getAttribute('href')");
      laptop.page().keyboard().press("Enter");
      assertTrue(laptop.page().locator(to).first().isVisible(), to);
    }
  }
}
