package org.barreltally.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Pattern;
import org.barreltally.PagePaths;
import org.barreltally.start.Program;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Fills in every form of every page as nobody should, over a book with a season in it, and looks
 * whether what was typed comes back as anything but text. The long form: {@code mvn -B verify
 * -Dtest=WordsTest -Dit.test=HostileFormsIT -Dbarreltally.hostile=20000 -Dbarreltally.seed=1}.
 */
class HostileFormsIT {

  private static final int FORMS = Integer.getInteger("barreltally.hostile", 200);
  private static final long SEED = Long.getLong("barreltally.seed", 20_261_127L);
  private static final String PASSWORD = Program.PASSWORD;
  private static final ObjectMapper JSON = new ObjectMapper();

  /** No regular expression and no parser may need longer; a limit, not a measurement. */
  private static final Duration LONGEST = Duration.ofSeconds(20);

  /** What would end the owner's own access, or fill the disk; these have tests of their own. */
  private static final Pattern SPARED =
      Pattern.compile("/(people|me|tokens|phones|backups|sign-out|sign-in|view)(/.*)?(\\?.*)?");

  private static final Pattern INSIDES =
      Pattern.compile("Exception|org\\.barreltally|at java|SELECT |INSERT |jdbc:|/tmp/|SQLSTATE");

  /** Marked so that it is not mistaken for anything of the page's own. */
  private static final List<String> MARKUP =
      List.of(
          "<script>window.wound=1</script>",
          "\"><img src=wound onerror=alert(1)>",
          "'><svg onload=wound()>",
          "</textarea><script>wound()</script>",
          "javascript:wound()",
          "{wound}",
          "{#if true}wound{/if}");

  @TempDir Path folder;

  private final HttpClient http =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final Mischief mischief = new Mischief(SEED);
  private final Map<Integer, Integer> statuses = new TreeMap<>();
  private final List<String> faults = new ArrayList<>();
  private String address;
  private String cookie;

  @Test
  void nothing_breaks_and_what_is_typed_stays_text() throws Exception {
    System.out.println("hostile forms: " + FORMS + ", seed " + SEED);
    Map<String, String> settings = Program.ownBook(folder);
    try (Program program = Program.startSeason(settings).awaitReady()) {
      address = "http://localhost:" + program.port();
      cookie = signedIn();
      List<PageForm> forms = forms();
      System.out.println("kinds of forms: " + forms.size());
      assertTrue(forms.size() > 60, () -> "only " + forms);
      for (int n = 0; n < FORMS && faults.size() < 40; n++) {
        fillIn(mischief.one(forms));
      }
      System.out.println("answers by status: " + statuses);
      program.errors().stream().limit(200).forEach(System.out::println);
      assertEquals("", String.join("\n", faults), "seed " + SEED);
      assertTrue(statuses.getOrDefault(303, 0) > 0, "some are taken, so others get deep");
      JsonNode invariants = JSON.readTree(sent(machine("/api/ledger/invariants").GET()).body());
      invariants
          .get("items")
          .forEach(rule -> assertEquals(0, rule.get("violations").size(), rule::toString));
      assertEquals(List.of(), program.errors(), "the log tells of defects");
    }
  }

  private String signedIn() throws Exception {
    HttpResponse<String> answer =
        sent(
            HttpRequest.newBuilder(URI.create(address + "/sign-in"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        "username=owner&password=" + PASSWORD.replace(' ', '+'))));
    return answer.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
  }

  private HttpRequest.Builder page(String path) {
    return HttpRequest.newBuilder(URI.create(address + path))
        .timeout(LONGEST)
        .header("Accept", "text/html")
        .header("Cookie", cookie);
  }

  private HttpRequest.Builder machine(String path) {
    return HttpRequest.newBuilder(URI.create(address + path))
        .header("Authorization", Program.loginByPassword());
  }

  private HttpResponse<String> sent(HttpRequest.Builder request) throws Exception {
    return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  /** One of each kind, from two pages of each shape that links lead to. */
  private List<PageForm> forms() throws Exception {
    Map<String, PageForm> found = new TreeMap<>();
    Map<String, Integer> times = new HashMap<>();
    Set<String> seen = new HashSet<>();
    Deque<String> ahead = new ArrayDeque<>(List.of("/"));
    while (!ahead.isEmpty()) {
      String path = ahead.remove();
      if (!seen.add(path)
          || !PagePaths.isPage(path)
          || times.merge(PagePaths.shape(path), 1, Integer::sum) > 2) {
        continue;
      }
      Document read = Jsoup.parse(sent(page(path).GET()).body(), address + path);
      for (PageForm form : PageForm.in(path, read)) {
        if (!SPARED.matcher(form.to()).matches()) {
          found.putIfAbsent(
              form.to() + form.fields().stream().map(PageForm.Field::name).toList(), form);
        }
      }
      read.select("a[href^=/]").eachAttr("href").stream()
          .map(link -> link.replaceFirst("#.*", ""))
          .forEach(ahead::add);
    }
    return List.copyOf(found.values());
  }

  private void fillIn(PageForm form) throws Exception {
    Sent body = new Sent(form.parts());
    for (PageForm.Field field : form.fields()) {
      if (field.name().equals("token") || field.name().equals("form")) {
        boolean kept = mischief.chance(0.98);
        String own = field.name().equals("form") ? UUID.randomUUID().toString() : own(field);
        body.add(field.file(), field.name(), kept ? own : typed(field));
      } else if (!mischief.chance(0.06)) {
        body.add(field.file(), field.name(), mischief.chance(0.6) ? own(field) : typed(field));
        if (mischief.chance(0.03)) {
          body.add(field.file(), field.name(), typed(field));
        }
      }
    }
    if (mischief.chance(0.05)) {
      body.add(false, mischief.text(), mischief.text());
    }
    String text = body.toString();
    String what = "POST " + form.to() + " " + text.substring(0, Math.min(text.length(), 500));
    HttpResponse<String> answer;
    try {
      answer =
          sent(
              page(form.to())
                  .header("Content-Type", body.type())
                  .POST(HttpRequest.BodyPublishers.ofString(text)));
    } catch (java.io.IOException e) {
      faults.add(what + " -> " + e);
      return;
    }
    statuses.merge(answer.statusCode(), 1, Integer::sum);
    judge(what, answer);
    answer
        .headers()
        .firstValue("Location")
        .filter(place -> answer.statusCode() == 303)
        .ifPresent(place -> follow(what, place));
  }

  /** The page that shows what was taken. */
  private void follow(String what, String place) {
    try {
      judge(what + " => " + place, sent(page(URI.create(place).getRawPath()).GET()));
    } catch (Exception e) {
      faults.add(what + " => " + place + " -> " + e);
    }
  }

  private static String own(PageForm.Field field) {
    return field.said().isEmpty() ? "" : field.said().get(field.said().size() - 1);
  }

  private String typed(PageForm.Field field) {
    if (mischief.chance(0.25)) {
      return mischief.one(MARKUP);
    }
    return mischief.chance(0.4) && !field.said().isEmpty()
        ? mischief.one(field.said())
        : mischief.text();
  }

  private void judge(String what, HttpResponse<String> answer) {
    String type = answer.headers().firstValue("Content-Type").orElse("");
    if (answer.statusCode() >= 500) {
      faults.add(what + " -> " + answer.statusCode());
    } else if (answer.statusCode() != 303 && !type.startsWith("text/html")) {
      faults.add(what + " -> " + answer.statusCode() + " as " + type);
    } else if (answer.statusCode() != 303) {
      Document shown = Jsoup.parse(answer.body());
      shown
          .select(
              "script:containsData(wound), [src=wound], [onload], [onerror], [href^=javascript]")
          .forEach(wound -> faults.add(what + " -> came back as markup: " + wound));
      if (answer.statusCode() >= 400 && INSIDES.matcher(shown.text()).find()) {
        faults.add(what + " -> tells of its insides: " + shown.text());
      }
    }
  }
}
