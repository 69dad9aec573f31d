package org.barreltally.browser;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What keeps people from using a page, by the rules of WCAG 2.2 A and AA as axe-core reads them.
 */
public final class Barriers {

  private static final List<String> RULES =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

  /** What is in order is not listed place by place, which takes most of the time. */
  private static final String ASK =
      """
      async (rules) => {
        const found = await axe.run({ runOnly: rules, resultTypes: ['violations'] });
        return found.violations.map((rule) => rule.id + ': ' + rule.nodes[0].html);
      }
      """;

  private static final String AXE = read();

  private Barriers() {}

  /** Brings the rules along with each page that is opened, which takes less than sending them. */
  static void beforeEachPageOf(BrowserContext context) {
    context.addInitScript(AXE);
  }

  /** The broken rules, each with the first place that breaks it. */
  @SuppressWarnings("unchecked")
  public static List<String> on(Page page) {
    if (Boolean.FALSE.equals(page.evaluate("() => 'axe' in window"))) {
      page.evaluate(AXE);
    }
    return (List<String>) page.evaluate(ASK, RULES);
  }

  private static String read() {
    try (InputStream script = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
      return new String(script.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
