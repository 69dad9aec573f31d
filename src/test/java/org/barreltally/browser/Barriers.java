package org.barreltally.browser;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.ResultType;
import com.microsoft.playwright.Page;
import java.util.List;

/**
 * What keeps people from using a page, by the rules of WCAG 2.2 A and AA as axe-core reads them.
 */
public final class Barriers {

  private static final List<String> RULES =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

  private Barriers() {}

  /** The broken rules, each with the first place that breaks it. */
  public static List<String> on(Page page) {
    AxeRunOptions broken = new AxeRunOptions();
    // what is in order is not listed place by place, which takes most of the time
    broken.setResultTypes(List.of(ResultType.Violations.getKey()));
    return new AxeBuilder(page)
        .options(broken).withTags(RULES).setLegacyMode(true).analyze().getViolations().stream()
            .map(rule -> rule.getId() + ": " + rule.getNodes().get(0).getHtml())
            .toList();
  }
}
