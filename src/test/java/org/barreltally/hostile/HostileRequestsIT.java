package org.barreltally.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Pattern;
import org.barreltally.start.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sends what nobody should send to every operation of the interface, over a book with a season in
 * it. The long form: {@code mvn -B verify -Dtest=WordsTest -Dit.test=HostileRequestsIT
 * -Dbarreltally.hostile=100000 -Dbarreltally.seed=1}.
 */
class HostileRequestsIT {

  private static final int REQUESTS = Integer.getInteger("barreltally.hostile", 2_500);
  private static final long SEED = Long.getLong("barreltally.seed", 20_261_126L);
  private static final ObjectMapper JSON = new ObjectMapper();

  /** No regular expression and no parser may need longer; a limit, not a measurement. */
  private static final Duration LONGEST = Duration.ofSeconds(20);

  /** What would end the owner's own access, or the test; these have tests of their own. */
  private static final Pattern SPARED =
      Pattern.compile("/api/(people/.*|me/password|tokens/.*|backups|errands/.*)");

  private static final Pattern INSIDES =
      Pattern.compile(
          "Exception|org\\.barreltally|\\.java\\b|at java|SELECT |INSERT |jdbc:|/tmp/|postgres|SQLSTATE");

  private static final List<String> TYPES =
      List.of(
          "application/json",
          "text/csv",
          "application/xml",
          "text/plain",
          "multipart/form-data",
          "nonsense");

  @TempDir Path folder;

  private final HttpClient http =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final Mischief mischief = new Mischief(SEED);
  private final List<String> known = new ArrayList<>();
  private final Map<Integer, Integer> statuses = new TreeMap<>();
  private final List<String> faults = new ArrayList<>();
  private String address;

  @Test
  void nothing_breaks_leaks_or_stays_half() throws Exception {
    System.out.println("hostile requests: " + REQUESTS + ", seed " + SEED);
    Map<String, String> settings = Program.ownBook(folder);
    try (Program program = Program.startSeason(settings).awaitReady()) {
      address = "http://localhost:" + program.port();
      List<Operation> operations = Operation.of(JSON.readTree(get("/openapi?format=json")));
      assertTrue(operations.size() > 150, () -> "only " + operations.size());
      harvest(operations);
      assertTrue(known.size() > 100, () -> "only " + known);
      for (int n = 0; n < REQUESTS && faults.size() < 60; n++) {
        ask(mischief.one(operations));
      }
      System.out.println("answers by status: " + statuses);
      if (!faults.isEmpty()) {
        program.errors().stream().limit(400).forEach(System.out::println);
        System.out.println(cut(program.output(), 60_000));
      }
      assertEquals("", String.join("\n", faults), "seed " + SEED);
      assertTrue(statuses.getOrDefault(201, 0) > 0, "some get through, so others get deep");
      JsonNode invariants = JSON.readTree(get("/api/ledger/invariants"));
      invariants
          .get("items")
          .forEach(rule -> assertEquals(0, rule.get("violations").size(), rule::toString));
      assertEquals(List.of(), program.errors(), "the log tells of defects");
    }
  }

  private String get(String path) throws Exception {
    HttpRequest request = request(path).GET().build();
    return http.send(request, HttpResponse.BodyHandlers.ofString()).body();
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(address + path))
        .timeout(LONGEST)
        .header("Authorization", Program.loginByPassword());
  }

  /** Ids, tags, lots and codes that the book knows, so that some requests find something. */
  private void harvest(List<Operation> operations) throws Exception {
    for (Operation operation : operations) {
      if (!operation.writes()
          && !operation.path().contains("{")
          && !operation.path().contains(".")) {
        JsonNode answer = JSON.readTree(get(operation.path()));
        for (JsonNode item : answer.path("items")) {
          for (String name : List.of("id", "tag", "lot", "code", "name", "year")) {
            if (item.path(name).isValueNode()) {
              known.add(item.get(name).asText());
            }
          }
        }
      }
    }
  }

  private void ask(Operation operation) throws Exception {
    if (operation.writes() && SPARED.matcher(operation.path()).matches()) {
      return;
    }
    HttpRequest.Builder request;
    try {
      request = request(path(operation));
    } catch (IllegalArgumentException noAddress) {
      return; // no client could send it
    }
    headers(request, operation);
    byte[] body = body(operation);
    request.method(
        operation.method(),
        body.length == 0
            ? HttpRequest.BodyPublishers.noBody()
            : HttpRequest.BodyPublishers.ofByteArray(body));
    String what =
        operation.method()
            + " "
            + cut(request.build().uri().toString(), 300)
            + " "
            + cut(request.build().headers().map().toString(), 400)
            + " "
            + shown(body);
    HttpResponse<byte[]> answer;
    try {
      answer = sent(request.build());
    } catch (java.io.IOException e) {
      faults.add(what + " -> " + e);
      return;
    }
    statuses.merge(answer.statusCode(), 1, Integer::sum);
    judge(what, answer);
  }

  /** Once more where the connection had been closed after the answer before. */
  private HttpResponse<byte[]> sent(HttpRequest request) throws Exception {
    try {
      return http.send(request, HttpResponse.BodyHandlers.ofByteArray());
    } catch (java.net.http.HttpTimeoutException slow) {
      throw slow;
    } catch (java.io.IOException closed) {
      return http.send(request, HttpResponse.BodyHandlers.ofByteArray());
    }
  }

  private static String shown(byte[] body) {
    return cut(new String(body, StandardCharsets.UTF_8), 600);
  }

  private static String cut(String text, int most) {
    return text.length() > most ? text.substring(0, most) + "…" : text;
  }

  private void judge(String what, HttpResponse<byte[]> answer) {
    int status = answer.statusCode();
    if (status >= 500) {
      faults.add(what + " -> " + status);
      return;
    }
    if (status >= 400 && status != 414) { // an address of over 4,096 bytes is refused unread
      String text = new String(answer.body(), StandardCharsets.UTF_8);
      String type = answer.headers().firstValue("Content-Type").orElse("");
      if (!type.startsWith("application/problem+json")) {
        faults.add(what + " -> " + status + " as " + type + " " + shown(answer.body()));
      } else if (leaks(text)) {
        faults.add(what + " -> " + status + " tells of its insides: " + text);
      }
    }
  }

  /** What the program says by itself; what was sent may come back in it, cut short. */
  private static boolean leaks(String problem) {
    try {
      JsonNode said = JSON.readTree(problem);
      return !said.hasNonNull("code")
          || INSIDES.matcher(said.path("title").asText()).find()
          || INSIDES.matcher(said.path("detail").asText().replaceAll("“[^”]*”", "")).find();
    } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
      return true;
    }
  }

  private String path(Operation operation) {
    StringBuilder path = new StringBuilder();
    for (String segment : operation.path().substring(1).split("/")) {
      path.append('/')
          .append(
              segment.contains("{")
                  ? segment.replaceAll(
                      "\\{[^}]*}", java.util.regex.Matcher.quoteReplacement(value()))
                  : segment);
    }
    String mark = "?";
    for (String name : operation.query()) {
      if (mischief.chance(0.4)) {
        path.append(mark).append(name).append('=').append(value());
        mark = "&";
      }
    }
    if (mischief.chance(0.02)) {
      path.append(mark).append("as=").append(value());
    }
    return path.toString();
  }

  private String value() {
    String value = mischief.chance(0.6) ? mischief.one(known) : mischief.text();
    return URLEncoder.encode(
            value.length() > 4_000 ? value.substring(0, 4_000) : value, StandardCharsets.UTF_8)
        .replace("+", "%20");
  }

  private void headers(HttpRequest.Builder request, Operation operation) {
    header(
        request,
        "Idempotency-Key",
        mischief.chance(0.9) ? UUID.randomUUID().toString() : mischief.text());
    if (!operation.mediaType().isEmpty() || mischief.chance(0.05)) {
      header(
          request,
          "Content-Type",
          mischief.chance(0.95) && !operation.mediaType().isEmpty()
              ? operation.mediaType()
              : mischief.one(TYPES));
    }
    if (mischief.chance(0.05)) {
      header(request, "If-Match", mischief.text());
    }
    if (mischief.chance(0.05)) {
      header(request, "Accept", mischief.chance(0.5) ? mischief.one(TYPES) : mischief.text());
    }
    if (mischief.chance(0.05)) {
      header(request, "Accept-Language", mischief.text());
    }
  }

  private static void header(HttpRequest.Builder request, String name, String value) {
    try {
      request.setHeader(name, value.length() > 4_000 ? value.substring(0, 4_000) : value);
    } catch (IllegalArgumentException noHeader) {
      // no client could send it
    }
  }

  private byte[] body(Operation operation) {
    if (operation.mediaType().isEmpty() || mischief.chance(0.02)) {
      return new byte[0];
    }
    JsonNode example =
        operation.examples().isEmpty()
            ? JSON.createObjectNode()
            : mischief.one(operation.examples());
    if (operation.mediaType().equals("application/json")
        && example != null
        && !example.isTextual()) {
      return mischief.chance(0.1)
          ? example.toString().getBytes(StandardCharsets.UTF_8)
          : mischief.spoiled(example);
    }
    String text = example == null || !example.isTextual() ? "" : example.asText();
    if (operation.mediaType().equals("application/json")) {
      try {
        return mischief.spoiled(JSON.readTree(text));
      } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
        return text.getBytes(StandardCharsets.UTF_8);
      }
    }
    return lines(text);
  }

  /** A file of lines with cells spoiled. */
  private byte[] lines(String text) {
    String[] lines = text.split("\n");
    int line = lines.length == 0 ? 0 : (int) (Math.abs(mischief.text().hashCode()) % lines.length);
    if (lines.length > 0) {
      String[] cells = lines[line].split(",", -1);
      cells[Math.abs(mischief.text().hashCode()) % cells.length] = mischief.text();
      lines[line] = String.join(mischief.chance(0.9) ? "," : ";", cells);
    }
    return String.join(mischief.chance(0.9) ? "\n" : "\r", lines)
        .getBytes(mischief.chance(0.9) ? StandardCharsets.UTF_8 : StandardCharsets.UTF_16);
  }
}
