package org.barreltally.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.Cookie;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barreltally.start.Program;

/** The system's Chromium at one size, before the built program, signed in. */
final class Screen implements AutoCloseable {

  static final int PHONE = 390;
  static final int LAPTOP = 1280;
  static final String PASSWORD = Program.PASSWORD;

  /** How far things moved after they had been seen, by the browser's own measure. */
  private static final String WATCH_SHIFTS =
      """
      window.shifted = 0;
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) if (!entry.hadRecentInput) window.shifted += entry.value;
      }).observe({ type: 'layout-shift', buffered: true });
      """;

  private final Playwright playwright;
  private final BrowserContext context;
  private final Page page;
  private final String address;
  private final List<String> complaints = new ArrayList<>();

  private Screen(Program program, Browser.NewContextOptions options) {
    Map<String, String> environment = new HashMap<>(System.getenv());
    environment.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
    playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
    address = "http://localhost:" + program.port();
    context =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(Chromium.program())
                    .setArgs(Chromium.arguments()))
            .newContext(options.setLocale("en-US"));
    context.setDefaultTimeout(15_000);
    context.addInitScript(WATCH_SHIFTS);
    page = context.newPage();
    page.onConsoleMessage(
        message -> {
          if (List.of("error", "warning").contains(message.type())) {
            complaints.add(message.text());
          }
        });
    page.onPageError(complaints::add);
  }

  static Screen of(Program program, int width) {
    return new Screen(
        program, new Browser.NewContextOptions().setViewportSize(width, height(width)));
  }

  private static int height(int width) {
    return width == PHONE ? 844 : 800;
  }

  /** Shows the open page on a screen of another size. */
  void becomes(int width) {
    page.setViewportSize(width, height(width));
  }

  static Screen withoutScript(Program program) {
    return new Screen(
        program,
        new Browser.NewContextOptions().setViewportSize(LAPTOP, 800).setJavaScriptEnabled(false));
  }

  /**
   * Lets the owner of a book made ready for tests in by the session there, or by the password if it
   * has run out: judging that takes 3 s in a new program.
   */
  Screen isLetIn() {
    context.addCookies(List.of(new Cookie("barreltally-session", Program.SESSION).setUrl(address)));
    opens("/");
    return path().equals("/") ? this : signsIn();
  }

  /** Signs in as the owner. */
  Screen signsIn() {
    opens("/sign-in");
    page.fill("input[name=username]", "owner");
    page.fill("input[name=password]", PASSWORD);
    page.click("form button[type=submit]");
    page.waitForURL(address + "/");
    return this;
  }

  Page page() {
    return page;
  }

  BrowserContext context() {
    return context;
  }

  /** The status that a path answers with. */
  int opens(String path) {
    complaints.clear();
    Response answer = page.navigate(address + path);
    return answer.status();
  }

  /** The path that is open. */
  String path() {
    return page.url().substring(address.length());
  }

  /** A path with the program's address before it. */
  String address(String path) {
    return address + path;
  }

  /** A property of what has the focus. */
  String focused(String property) {
    return (String) page.evaluate("() => document.activeElement." + property);
  }

  /** Presses Tab until something with that id, value or label has the focus. */
  void tabsTo(String what) {
    tabs(
        "(what) => { const e = document.activeElement; return [e.id, e.value, e.getAttribute('aria-label')].includes(what); }",
        what);
  }

  /** Presses Tab until a link has the focus that a selector finds. */
  void tabsToLink(String selector) {
    tabs("(selector) => document.activeElement.matches(selector)", selector);
  }

  private void tabs(String there, String what) {
    for (int n = 0; n < 200; n++) {
      if (Boolean.TRUE.equals(page.evaluate(there, what))) {
        return;
      }
      page.keyboard().press("Tab");
    }
    throw new AssertionError("no way by Tab to " + what);
  }

  /** The addresses within the program that the open page leads to. */
  @SuppressWarnings("unchecked")
  List<String> links() {
    List<String> all =
        (List<String>)
            page.evaluate(
                "() => [...document.querySelectorAll('a[href]:not([download])')].map((a) => new URL(a.getAttribute('href'), document.baseURI).href)");
    return all.stream()
        .filter(link -> link.startsWith(address + "/"))
        .map(link -> link.substring(address.length()).replaceFirst("#.*", ""))
        .toList();
  }

  /** Has each page that will be opened ready to be judged. */
  Screen judgesEveryPage() {
    Barriers.beforeEachPageOf(context);
    return this;
  }

  /** What keeps people from using the open page. */
  List<String> barriers() {
    return Barriers.on(page);
  }

  /** How much wider than the screen the page is, in CSS pixels; 0 if it fits. */
  int tooWide() {
    return (int)
        page.evaluate("() => Math.max(0, document.documentElement.scrollWidth - innerWidth)");
  }

  /** Buttons, and links that stand by themselves, less than 44 px high or wide. */
  @SuppressWarnings("unchecked")
  List<String> smallTargets() {
    return (List<String>)
        page.evaluate(
            """
            () => [...document.querySelectorAll('button, input:not([type=hidden]):not([type=checkbox]):not([type=radio]), select, summary, nav a')]
              .filter((e) => e.checkVisibility() && e.getBoundingClientRect().width > 1)
              .filter((e) => e.getBoundingClientRect().height < 43.5)
              .map((e) => e.outerHTML.slice(0, 120) + ' ' + Math.round(e.getBoundingClientRect().height) + ' px')
            """);
  }

  /** By how much things moved after they were seen. */
  double shifted() {
    return ((Number) page.evaluate("() => window.shifted")).doubleValue();
  }

  /** What the browser complained about since the page was opened. */
  List<String> complaints() {
    return List.copyOf(complaints);
  }

  /** A picture of the whole page, where somebody asked for pictures. */
  void picture(String name) {
    String shots = System.getProperty("barreltally.shots");
    if (shots != null) {
      page.screenshot(
          new Page.ScreenshotOptions()
              .setFullPage(true)
              .setPath(Path.of(shots, name.replaceAll("[^A-Za-z0-9]+", "-") + ".png")));
    }
  }

  /** Waits for words in sight. */
  Screen sees(String words) {
    page.getByText(words).first().waitFor();
    return this;
  }

  /** The page's own heading. */
  void isHeaded(String words) {
    assertEquals(words, page.locator("h1").innerText());
  }

  @Override
  public void close() {
    context.browser().close();
    playwright.close();
  }
}
