package org.barreltally.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.barreltally.start.FolderDatabase;
import org.barreltally.start.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/**
 * A busy season's people at once on two copies of the program before one PostgreSQL: 50 phones
 * sell, two people can, two take gift orders, two bring more of the same lots to tables and to a
 * shop, four look at pages. Everything they ask is done, and the book shows it once. The long form:
 * {@code mvn -B verify -Dtest=WordsTest -Dit.test=LoadIT -Dbarreltally.minutes=10}.
 */
@Isolated("what it counts is the program's, not that of a machine with other tests on it")
class LoadIT {

  private static final Duration LONG =
      System.getProperty("barreltally.minutes") == null
          ? Duration.ofSeconds(12)
          : Duration.ofMinutes(Integer.getInteger("barreltally.minutes"));

  /**
   * In the short form two JVMs start cold on a machine that may do other things; whoever is told to
   * come again does so, under the same id. In the long form nobody is.
   */
  private static final boolean MAY_BE_BUSY = System.getProperty("barreltally.minutes") == null;

  private static final int PATIENCE = 20;
  private static final long SEED = Long.getLong("barreltally.seed", 1_127L);
  private static final int PHONES = 50;
  private static final List<String> PAGES =
      List.of(
          "/",
          "/barrels",
          "/stock",
          "/lots",
          "/shows/list",
          "/gift-orders",
          "/canning",
          "/balance");

  @TempDir Path folder;

  private final Map<String, Tally> tallies = new LinkedHashMap<>();
  private final AtomicIntegerArray sold = new AtomicIntegerArray(Season.SHOWS);
  private final AtomicIntegerArray packed = new AtomicIntegerArray(Season.SHOWS);
  private final AtomicIntegerArray brought = new AtomicIntegerArray(Season.SHOWS);
  private final AtomicInteger sales = new AtomicInteger();
  private final AtomicInteger runs = new AtomicInteger(1 + Season.SHOWS);
  private final AtomicInteger orders = new AtomicInteger();
  private final AtomicInteger boxes = new AtomicInteger();
  private long end;
  private Copies copies;
  private Season season;

  /** Something that somebody does again and again. */
  private interface Doing {
    void once(Random random) throws IOException, InterruptedException;
  }

  @Test
  void everything_asked_is_done_and_stands_in_the_book_once() throws Exception {
    Map<String, String> first = Program.ownBook(folder.resolve("first"));
    try (Program one = Program.start(first).awaitReady();
        Program other = Program.start(second()).awaitReady()) {
      copies = new Copies(List.of(one.port(), other.port()), Program.LOGIN);
      season = Season.begun(copies, PHONES);
      busy();
      tallies.forEach((who, tally) -> System.out.println("load: " + who + " " + tally));
      Stream.of(one, other).flatMap(copy -> copy.warnings().stream()).forEach(System.out::println);
      tallies.forEach((who, tally) -> assertEquals(List.of(), tally.surprises(), who));
      count();
      assertEquals(List.of(), one.errors());
      assertEquals(List.of(), other.errors());
    }
  }

  private Map<String, String> second() throws IOException {
    Map<String, String> settings =
        new LinkedHashMap<>(FolderDatabase.beside(folder.resolve("first")));
    settings.put("BARRELTALLY_DATA", folder.resolve("second").toString());
    settings.put("HTTPS_PORT", "off");
    return settings;
  }

  private void busy() throws Exception {
    System.out.println("load: " + LONG + ", seed " + SEED);
    String session = copies.session(Program.PASSWORD);
    for (String who : List.of("phones", "canners", "clerks", "helpers", "readers")) {
      tallies.put(who, new Tally());
    }
    PAGES.forEach(path -> tallies.put("page " + path, new Tally()));
    end = System.nanoTime() + LONG.toNanos();
    List<Thread> people = new ArrayList<>();
    for (int n = 0; n < PHONES; n++) {
      int phone = n;
      people.add(somebody("phones", people.size(), 1_000, random -> sells(random, phone)));
    }
    for (int n = 0; n < 2; n++) {
      people.add(somebody("canners", people.size(), 800, this::cans));
      people.add(somebody("clerks", people.size(), 1_500, this::takesAnOrder));
      people.add(somebody("helpers", people.size(), 1_000, this::bringsMore));
    }
    for (int n = 0; n < 4; n++) {
      people.add(somebody("readers", people.size(), 500, random -> looks(random, session)));
    }
    for (Thread each : people) {
      each.join();
    }
  }

  /**
   * Does it until the time is over, with pauses around so many milliseconds. People come one after
   * the other, over a thirtieth of the time: the programs have just been started.
   */
  private Thread somebody(String who, int number, int pause, Doing doing) {
    Thread thread =
        new Thread(
            () -> {
              Random random = new Random(SEED + number);
              try {
                Thread.sleep(random.nextLong(LONG.toMillis() / 30));
                while (System.nanoTime() < end) {
                  Thread.sleep(pause / 2 + random.nextInt(pause));
                  doing.once(random);
                }
              } catch (IOException lost) {
                tallies.get(who).heard(-1, 0, false, lost.toString());
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
            });
    thread.start();
    return thread;
  }

  private HttpResponse<String> heard(
      String who, Random random, String login, String path, String json, UUID id)
      throws IOException, InterruptedException {
    long begun = System.nanoTime();
    HttpResponse<String> answer = copies.post(random, login, path, json, id);
    for (int times = 0; answer.statusCode() == 503 && times < PATIENCE; times++) {
      tallies.get(who).heard(503, System.nanoTime() - begun, MAY_BE_BUSY, answer.body());
      Thread.sleep(
          1_000L * Integer.parseInt(answer.headers().firstValue("Retry-After").orElse("1")));
      begun = System.nanoTime();
      answer = copies.post(random, login, path, json, id);
    }
    boolean done = answer.statusCode() / 100 == 2;
    tallies.get(who).heard(answer.statusCode(), System.nanoTime() - begun, done, answer.body());
    return answer;
  }

  /** One or two sales of one or two jars; one in five is sent again, as after a lost answer. */
  private void sells(Random random, int phone) throws IOException, InterruptedException {
    int show = phone % Season.SHOWS;
    Season.Table table = season.tables().get(show);
    int jars = 0;
    List<String> batch = new ArrayList<>();
    for (int n = 0; n <= random.nextInt(2); n++) {
      int count = 1 + random.nextInt(2);
      jars += count;
      batch.add(
          "{\"id\": \"%s\", \"at\": \"2026-08-08T14:%02d:00Z\", \"lines\": [{\"container\": \"HP\", \"lot\": \"%s\", \"count\": %d}], \"paid\": {\"cash\": {\"amount\": %d, \"currency\": \"USD\"}}}"
              .formatted(UUID.randomUUID(), random.nextInt(60), table.lot(), count, 9 * count));
    }
    String json = batch.toString();
    String path = "/api/shows/" + table.show() + "/sales";
    String login = season.phones().get(phone);
    UUID id = UUID.randomUUID();
    if (heard("phones", random, login, path, json, id).statusCode() / 100 == 2) {
      sold.addAndGet(show, jars);
      sales.addAndGet(batch.size());
    }
    if (random.nextInt(5) == 0) {
      heard("phones", random, login, path, json, random.nextBoolean() ? id : UUID.randomUUID());
    }
  }

  private void cans(Random random) throws IOException, InterruptedException {
    String run =
        """
        {"on": "2026-06-21", "draws": [{"barrel": "%s", "weight": {"value": 30, "unit": "lb"}}],
         "fillTemperature": {"value": 185, "unit": "degF"},
         "fills": [{"container": "PT", "count": %d}], "transmittance": 60, "taste": "clean"}
        """
            .formatted(Season.TANK, 6 + random.nextInt(10));
    UUID id = UUID.randomUUID();
    HttpResponse<String> answer =
        heard("canners", random, copies.owner(), "/api/canning/runs", run, id);
    if (answer.statusCode() / 100 == 2) {
      runs.incrementAndGet();
    }
    if (random.nextInt(5) == 0) {
      heard("canners", random, copies.owner(), "/api/canning/runs", run, id);
    }
  }

  /** One or two jars from home to a table under way, or to the shop. */
  private void bringsMore(Random random) throws IOException, InterruptedException {
    int show = random.nextInt(Season.SHOWS);
    int count = 1 + random.nextInt(2);
    boolean toTable = random.nextBoolean();
    Season.Table table = season.tables().get(show);
    if (packed.get(show) + brought.get(show) + 2 * count > Season.SPARE_PER_SHOW) {
      return;
    }
    String lines =
        "\"lines\": [{\"container\": \"HP\", \"lot\": \"%s\", \"count\": %d}]}"
            .formatted(table.lot(), count);
    String path =
        toTable
            ? "/api/shows/" + table.show() + "/pack-out"
            : "/api/shops/" + season.shop() + "/deliveries";
    String json = (toTable ? "{" : "{\"on\": \"2026-08-08\", ") + lines;
    UUID id = UUID.randomUUID();
    if (heard("helpers", random, copies.owner(), path, json, id).statusCode() / 100 == 2) {
      (toTable ? packed : brought).addAndGet(show, count);
    }
    if (random.nextInt(5) == 0) {
      heard("helpers", random, copies.owner(), path, json, id);
    }
  }

  private void takesAnOrder(Random random) throws IOException, InterruptedException {
    int recipients = 1 + random.nextInt(3);
    List<String> people = new ArrayList<>();
    for (int n = 0; n < recipients; n++) {
      people.add(
          "{\"name\": \"Ottilie Quillfeather %d\", \"address\": {\"lines\": [\"%d Tarn Lane\"], \"town\": \"Fernby\", \"region\": \"VT\", \"postcode\": \"05999\", \"country\": \"US\"}, \"box\": \"%s\", \"count\": 1, \"delivery\": \"post\", \"sendBy\": \"2026-12-14\"}"
              .formatted(n, 1 + random.nextInt(90), Season.BOX));
    }
    HttpResponse<String> answer =
        heard(
            "clerks",
            random,
            copies.owner(),
            "/api/gift-orders",
            "{\"buyer\": {\"name\": \"Hesper Loomworks\"}, \"recipients\": %s}".formatted(people),
            UUID.randomUUID());
    if (answer.statusCode() / 100 == 2) {
      orders.incrementAndGet();
      String order = Copies.JSON.readTree(answer.body()).get("id").asText();
      String path = "/api/gift-orders/" + order + "/reserve";
      if (heard("clerks", random, copies.owner(), path, "{}", UUID.randomUUID()).statusCode()
          == 200) {
        boxes.addAndGet(recipients);
      }
    }
  }

  private void looks(Random random, String session) throws IOException, InterruptedException {
    String path = PAGES.get(random.nextInt(PAGES.size()));
    long begun = System.nanoTime();
    HttpResponse<String> page = copies.page(random, session, path);
    tallies
        .get("page " + path)
        .heard(
            page.statusCode(),
            System.nanoTime() - begun,
            page.statusCode() == 200 || MAY_BE_BUSY && page.statusCode() == 503,
            path + " " + page.body());
  }

  private void count() throws Exception {
    for (int n = 0; n < Season.SHOWS; n++) {
      JsonNode line =
          copies.read("/api/shows/" + season.tables().get(n).show()).get("table").get(0);
      assertEquals(sold.get(n), line.get("sold").asInt(), "sold at show " + n);
      assertEquals(Season.JARS_PER_SHOW + packed.get(n) - sold.get(n), line.get("onTable").asInt());
      String lot = season.tables().get(n).lot();
      JsonNode shelf = copies.read("/api/stock?place=shop-" + season.shop() + "&lot=" + lot);
      int standing =
          shelf.get("items").findValues("onHand").stream().mapToInt(JsonNode::asInt).sum();
      assertEquals(brought.get(n), standing, "of " + lot + " at the shop");
    }
    Path first = folder.resolve("first");
    assertEquals(sales.get(), number(first, "SELECT count(*) FROM sales"), "sales");
    assertEquals(runs.get(), number(first, "SELECT count(*) FROM canning_runs"), "runs");
    assertEquals(orders.get(), number(first, "SELECT count(*) FROM gift_orders"), "gift orders");
    assertEquals(
        0,
        number(first, "SELECT deadlocks FROM pg_stat_database WHERE datname = 'barreltally'"),
        "deadlocks");
    for (JsonNode rule : copies.read("/api/ledger/invariants").get("items")) {
      assertEquals(0, rule.get("violations").size(), rule.toString());
    }
    assertTrue(sales.get() > PHONES / 2, "there was a load: " + sales.get());
    System.out.printf(
        "load: %d sales of %d jars, %d more packed out and %d brought to a shop, %d runs, %d gift orders with %d boxes reserved%n",
        sales.get(), sum(sold), sum(packed), sum(brought), runs.get(), orders.get(), boxes.get());
  }

  private static int sum(AtomicIntegerArray each) {
    return IntStream.range(0, each.length()).map(each::get).sum();
  }

  private static int number(Path folder, String query) throws Exception {
    return Integer.parseInt(FolderDatabase.asked(folder, query));
  }
}
