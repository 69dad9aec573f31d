package org.barreltally.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Barriers that were put in a page are found, each by the rule that it breaks. */
class BarriersTest {

  private static final String PAGE =
      """
      <!doctype html><html%s><head><title>Jars</title></head><body><main><h1>Jars</h1>%s</main></body></html>
      """;

  @Test
  void what_is_in_the_way_is_told_and_a_plain_page_is_not_blamed() {
    Map<String, String> environment = new HashMap<>(System.getenv());
    environment.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
    try (Playwright playwright =
            Playwright.create(new Playwright.CreateOptions().setEnv(environment));
        Browser browser =
            playwright
                .chromium()
                .launch(
                    new BrowserType.LaunchOptions()
                        .setExecutablePath(Chromium.program())
                        .setArgs(Chromium.arguments()))) {
      Page page = browser.newPage();
      page.setContent(PAGE.formatted(" lang='en'", "<p>Two sizes.</p>"));
      assertEquals(List.of(), Barriers.on(page));

      page.setContent(
          PAGE.formatted(
              "",
              "<img src='data:,'><input><p style='color: #ccc; background: #fff'>Too pale</p>"
                  + "<h4>Far below</h4>"));
      String found = String.join("\n", Barriers.on(page));
      for (String rule :
          List.of(
              "html-has-lang: ", "image-alt: ", "label: ", "color-contrast: ", "heading-order: ")) {
        assertTrue(found.contains(rule), rule + " is not in " + found);
      }
      assertTrue(found.contains("Too pale"), found);
    }
  }
}
