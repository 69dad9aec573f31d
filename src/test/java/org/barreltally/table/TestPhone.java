package org.barreltally.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.barreltally.browser.Barriers;
import org.barreltally.browser.Chromium;
import org.barreltally.start.TestCertificates;
import org.eclipse.microprofile.config.ConfigProvider;

/**
 * A phone at a table: the system's Chromium with a profile of its own, so that it can be killed and
 * opened again, which trusts the program's certificate authority as a person would have made it.
 */
final class TestPhone implements AutoCloseable {

  private static final int WIDTH = 390;
  private static final int HEIGHT = 844;
  static final String PIN = "204618";

  private final Path home;
  private final Playwright playwright;
  private final String language;
  private final int port;
  private BrowserContext context;
  private Page page;

  private TestPhone(Path home, Playwright playwright, String language, int port) {
    this.port = port;
    this.home = home;
    this.playwright = playwright;
    this.language = language;
  }

  /** A new phone that nobody paired yet. */
  static TestPhone bought(URL program) {
    return bought(program, "en-US");
  }

  static TestPhone bought(URL program, String language) {
    try {
      Path home = Files.createTempDirectory("barreltally-phone");
      trust(home);
      Map<String, String> environment = new HashMap<>(System.getenv());
      environment.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
      Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
      TestPhone phone = new TestPhone(home, playwright, language, program.getPort());
      phone.start(false);
      return phone;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Puts the authority among those that this profile's account trusts (NSS, as Chromium reads it).
   */
  private static void trust(Path home) throws IOException {
    String authority =
        ConfigProvider.getConfig().getValue(TestCertificates.AUTHORITY, String.class);
    for (String place : List.of(".pki/nssdb", ".local/share/pki/nssdb")) {
      Path database = home.resolve(place);
      Files.createDirectories(database);
      run("certutil", "-N", "-d", "sql:" + database, "--empty-password");
      run(
          "certutil",
          "-A",
          "-d",
          "sql:" + database,
          "-n",
          "barreltally",
          "-t",
          "C,,",
          "-i",
          authority);
    }
  }

  private static void run(String... command) throws IOException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes());
    try {
      assertTrue(process.waitFor(30, TimeUnit.SECONDS), command[0] + " does not end");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    assertEquals(0, process.exitValue(), String.join(" ", command) + ": " + said);
  }

  /**
   * @param offline whether it starts in flight mode
   */
  TestPhone start(boolean offline) {
    Map<String, String> environment = new HashMap<>(System.getenv());
    environment.put("HOME", home.toString());
    environment.remove("XDG_DATA_HOME");
    context =
        playwright
            .chromium()
            .launchPersistentContext(
                home.resolve("profile"),
                new BrowserType.LaunchPersistentContextOptions()
                    .setExecutablePath(Chromium.program())
                    .setEnv(environment)
                    .setArgs(
                        Chromium.arguments(
                            "--host-resolver-rules=MAP " + TestCertificates.NAME + " 127.0.0.1"))
                    .setOffline(offline)
                    .setLocale(language)
                    .setViewportSize(WIDTH, HEIGHT)
                    .setHasTouch(true));
    context.setDefaultTimeout(15_000);
    page = context.pages().isEmpty() ? context.newPage() : context.pages().get(0);
    return this;
  }

  private String address(String path) {
    return "https://" + TestCertificates.NAME + ":" + port + path;
  }

  Page page() {
    return page;
  }

  BrowserContext context() {
    return context;
  }

  TestPhone opens(String path) {
    page.navigate(address(path));
    return this;
  }

  /** Pairs with a code and keeps the key behind a PIN. */
  TestPhone pairs(String code) {
    opens("/table/#pair=" + code);
    tap("Pair");
    page.getByLabel("PIN", new Page.GetByLabelOptions().setExact(true)).fill(PIN);
    page.getByLabel("The same again").fill(PIN);
    tap("Keep it");
    return this;
  }

  TestPhone unlocks() {
    page.getByLabel("PIN", new Page.GetByLabelOptions().setExact(true)).fill(PIN);
    tap("Open");
    return this;
  }

  /** Chooses a show by its name, and waits until the worker keeps the files. */
  TestPhone serves(String show) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(show)).click();
    page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName(show)).waitFor();
    page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
    return this;
  }

  TestPhone tap(String words) {
    button(words).click();
    return this;
  }

  Locator button(String words) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(words).setExact(true));
  }

  TestPhone taps(Locator jar) {
    jar.click();
    return this;
  }

  /** The button that adds a jar of a grade. */
  Locator jar(String grade) {
    return page.locator("button.add").filter(new Locator.FilterOptions().setHasText(grade)).first();
  }

  TestPhone flightMode(boolean on) {
    context.setOffline(on);
    return this;
  }

  /** Waits for words in sight. */
  TestPhone sees(String words) {
    page.getByText(words).first().waitFor();
    return this;
  }

  /** Waits until so many entries are not sent, and what else the bar says of them. */
  TestPhone notSent(int entries, String more) {
    page.locator(
            "button.not-sent",
            new Page.LocatorOptions()
                .setHasText(
                    Pattern.compile("^" + entries + " (not sent|non envoyés?)" + more + "$")))
        .waitFor();
    return this;
  }

  TestPhone notSent(int entries) {
    return notSent(entries, "");
  }

  /** Signal comes back. */
  TestPhone hasSignal() {
    flightMode(false);
    page.evaluate("() => dispatchEvent(new Event('online'))");
    return this;
  }

  /** The battery is empty: its processes end without a chance to tidy up. */
  TestPhone dies() {
    String profile = home.toString();
    ProcessHandle.current()
        .descendants()
        .filter(
            p -> p.info().arguments().map(a -> String.join(" ", a).contains(profile)).orElse(false))
        .forEach(ProcessHandle::destroyForcibly);
    try {
      context.close();
    } catch (RuntimeException gone) {
      // it is dead already
    }
    return this;
  }

  /** Fails with what keeps people from using what is open. */
  void isAccessible(String where) {
    assertEquals(List.of(), Barriers.on(page), where);
    assertEquals(
        true,
        page.evaluate("() => document.documentElement.scrollWidth <= innerWidth"),
        where + " is wider than the phone");
    picture(where);
  }

  /** A picture of what is in sight, where somebody asked for pictures. */
  void picture(String name) {
    String shots = System.getProperty("barreltally.shots");
    if (shots != null) {
      page.screenshot(
          new Page.ScreenshotOptions().setPath(Path.of(shots, name.replace(' ', '-') + ".png")));
    }
  }

  @Override
  public void close() {
    try {
      context.close();
    } catch (RuntimeException gone) {
      // it was dead
    }
    playwright.close();
    try (var files = Files.walk(home)) {
      files.sorted(java.util.Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    } catch (IOException | UncheckedIOException leftBehind) {
      // the system clears its folder for temporary files
    }
  }
}
