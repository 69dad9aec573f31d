package org.barreltally.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Supplier;
import org.barreltally.start.FolderDatabase;
import org.barreltally.start.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The job under load while things break. After each round everything acknowledged is there once,
 * what was not acknowledged is there whole or not at all, and the ledger's invariants hold. The
 * long form: {@code mvn -B verify -Dtest=WordsTest -Dit.test=FaultsIT -Dbarreltally.rounds=200
 * -Dbarreltally.seed=1}.
 */
class FaultsIT {

  private static final int ROUNDS = Integer.getInteger("barreltally.rounds", Fault.values().length);
  private static final long SEED = Long.getLong("barreltally.seed", 1_126L);

  /** One fault alone, where that is asked for by its name. */
  private static final List<Fault> FAULTS =
      Arrays.stream(Fault.values())
          .filter(fault -> fault.name().matches(System.getProperty("barreltally.fault", ".*")))
          .toList();

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int ASKERS = 6;

  /**
   * How long a round is under load; a fault strikes after 100 ms at the earliest and 100 ms before
   * the end.
   */
  private static final Duration ROUND =
      Duration.ofMillis(ROUNDS > Fault.values().length ? 700 : 400);

  @TempDir Path parent;

  /** A book is compared as a whole after every round, so a new one begins before it is long. */
  private static final int ROUNDS_PER_BOOK = 24;

  private final List<Wish> all = new ArrayList<>();
  private Job job;
  private List<Wish> ofBook;
  private final Map<Fault, Integer> rounds = new EnumMap<>(Fault.class);
  private final List<Long> readyMillis = new ArrayList<>();
  private Path folder;
  private JumpingClock clock;
  private Program program;
  private Asker asker;

  @Test
  void what_was_acknowledged_is_there_once_and_nothing_is_half_there() throws Exception {
    System.out.println("faults: " + ROUNDS + " rounds, seed " + SEED);
    for (int done = 0; done < ROUNDS; done += ROUNDS_PER_BOOK) {
      book(done, Math.min(ROUNDS, done + ROUNDS_PER_BOOK));
    }
    long acknowledged = all.stream().filter(Wish::isAcknowledged).count();
    System.out.printf(
        "rounds %s; %d requests asked, %d acknowledged, refused %s; starts again took %s ms%n",
        rounds, all.size(), acknowledged, refused(), readyMillis);
    assertTrue(acknowledged > 10L * ROUNDS, "there was a load: " + acknowledged);
  }

  /** How many were refused by which rule. */
  private Map<String, Long> refused() throws Exception {
    Map<String, Long> refused = new java.util.TreeMap<>();
    for (Wish wish : all) {
      if (!wish.isAcknowledged()) {
        refused.merge(JSON.readTree(wish.answer).path("code").asText(), 1L, Long::sum);
      }
    }
    return refused;
  }

  private void book(int from, int to) throws Exception {
    folder = Files.createDirectories(parent.resolve("book" + from));
    job = new Job();
    clock = new JumpingClock(parent);
    ofBook = new ArrayList<>();
    try (SmallDisk disk = new SmallDisk(folder)) {
      List<Fault> faults = new ArrayList<>(FAULTS);
      if (!disk.isThere()) {
        System.out.println("no small disk can be mounted here, so none is filled");
        faults.remove(Fault.DISK_FULL);
      }
      if (!clock.isThere()) {
        System.out.println("libfaketime is not installed here, so no clock jumps");
        faults.remove(Fault.CLOCK_JUMPS);
      }
      rounds(faults, from, to);
    }
    all.addAll(ofBook);
  }

  private void rounds(List<Fault> faults, int from, int to) throws Exception {
    start(0, Map.of());
    int port = program.port();
    asker = new Asker(Program.LOGIN, port);
    try {
      ofBook.addAll(job.begin(asker));
      for (int round = from; round < to; round++) {
        Fault fault = faults.get(round % faults.size());
        rounds.merge(fault, 1, Integer::sum);
        if (fault == Fault.CLOCK_JUMPS) {
          program.stop();
          program.close();
          start(port, clock.settings());
        }
        round(fault, SEED + round, port);
      }
    } finally {
      program.close();
    }
  }

  private void start(int port, Map<String, String> more) throws Exception {
    long begun = System.nanoTime();
    Map<String, String> settings = new java.util.HashMap<>(Program.ownBook(folder));
    settings.putAll(more);
    if (port != 0) {
      settings.put("PORT", Integer.toString(port));
    }
    program = Program.start(settings).awaitReady();
    if (port != 0) {
      readyMillis.add(Duration.ofNanos(System.nanoTime() - begun).toMillis());
    }
  }

  private void round(Fault fault, long seed, int port) throws Exception {
    Random random = new Random(seed);
    ConcurrentLinkedQueue<Wish> asked = new ConcurrentLinkedQueue<>();
    try (Cutter cutter = fault == Fault.CUT ? new Cutter(port, seed) : null) {
      asker.at(cutter == null ? port : cutter.port());
      List<Thread> askers = askers(random, asked, fault);
      Thread.sleep(100 + random.nextInt((int) ROUND.toMillis() - 200));
      if (fault == Fault.CLOCK_JUMPS) {
        clock.jumps(random);
      }
      fault.strike(program, folder);
      for (Thread each : askers) {
        each.join();
      }
    }
    asker.at(port);
    fault.mend(folder);
    if (fault == Fault.CLOCK_JUMPS) {
      clock.jump(Duration.ZERO);
      assertTrue(recordedAtOddTimes() > 0, "the clock jumped, and that was written down");
    }
    if (!program.isAlive()) {
      program.close();
      start(port, Map.of());
    }
    List<Wish> wishes = new ArrayList<>(asked);
    ofBook.addAll(wishes);
    String where = fault + ", seed " + seed;
    settle(wishes, random, where);
    compare(where);
  }

  private List<Thread> askers(Random random, ConcurrentLinkedQueue<Wish> asked, Fault fault) {
    List<Thread> askers = new ArrayList<>();
    Duration round = fault == Fault.CLOCK_JUMPS ? JumpingClock.ROUND : ROUND;
    long end = System.nanoTime() + round.toNanos();
    for (int n = 0; n < ASKERS; n++) {
      Random own = new Random(random.nextLong());
      Thread thread =
          new Thread(
              () -> {
                try {
                  while (System.nanoTime() < end) {
                    Wish wish = job.next(own);
                    asked.add(wish);
                    asker.send(wish);
                    if (own.nextInt(10) == 0) {
                      asker.send(wish); // impatient: the same once more
                    }
                  }
                } catch (InterruptedException e) {
                  Thread.currentThread().interrupt();
                }
              });
      thread.start();
      askers.add(thread);
    }
    return askers;
  }

  /** Repeats everything of the round in another order: what was answered is answered the same. */
  private void settle(List<Wish> wishes, Random random, String where) throws Exception {
    List<Wish> shuffled = new ArrayList<>(wishes);
    Collections.shuffle(shuffled, random);
    // barrels first, so that what draws from a barrel whose filling got lost finds it
    shuffled.sort(java.util.Comparator.comparing(wish -> wish.kind != Wish.Kind.FILL));
    for (Wish wish : shuffled) {
      long end = System.nanoTime() + Duration.ofSeconds(60).toNanos();
      HttpResponse<String> again = asker.post(wish);
      while ((again == null || again.statusCode() >= 500) && System.nanoTime() < end) {
        Thread.sleep(100);
        again = asker.post(wish);
      }
      assertTrue(again != null && again.statusCode() < 500, unanswered(where, wish, again));
      if (wish.isAcknowledged()) {
        assertEquals(wish.answer, again.body(), where + " " + wish.path);
        assertEquals(201, again.statusCode(), where);
      } else {
        wish.answer = again.body();
        wish.status = again.statusCode();
      }
      job.settled(wish);
    }
  }

  private Supplier<String> unanswered(String where, Wish wish, HttpResponse<String> last) {
    return () ->
        "%s: %s was never answered, at last %s; the program says %s %s"
            .formatted(
                where,
                wish.path,
                last == null ? "nothing" : last.statusCode() + " " + last.body(),
                program.output(),
                program.errors());
  }

  /** The book beside a model that only counts what was acknowledged. */
  private void compare(String where) throws Exception {
    Model model = Model.of(ofBook);
    Map<String, Long> jars = new java.util.TreeMap<>();
    Map<String, Long> barrels = new java.util.TreeMap<>();
    for (JsonNode item : items("/api/stock?limit=500")) {
      if (item.get("kind").asText().equals("container")) {
        jars.merge(item.get("place").asText(), item.get("onHand").asLong(), Long::sum);
      }
    }
    Set<String> lots = new HashSet<>();
    for (JsonNode run : items("/api/canning/runs?limit=500")) {
      assertTrue(lots.add(run.get("lot").asText()), where + ": a lot twice");
    }
    for (JsonNode barrel : items("/api/barrels?limit=500")) {
      barrels.merge(barrel.get("tag").asText(), 1L, Long::sum);
    }
    jars.values().removeIf(count -> count == 0);
    assertEquals(model.jars(), jars, where + ": jars by place");
    assertEquals(model.runs(), lots.size(), where + ": runs");
    assertEquals(model.barrels(), barrels.keySet(), where + ": barrels");
    assertEquals(model.orders(), items("/api/gift-orders?limit=500").size(), where + ": orders");
    assertEquals(
        model.owed(),
        JSON.readTree(asker.get(job.statement())).at("/balance/amount").asDouble(),
        1e-9,
        where + ": the shop owes");
    assertEquals(
        "0",
        FolderDatabase.asked(
            folder, "SELECT deadlocks FROM pg_stat_database WHERE datname = current_database()"),
        where + ": nobody waited in a ring");
    JsonNode invariants = JSON.readTree(asker.get("/api/ledger/invariants"));
    for (JsonNode rule : invariants.get("items")) {
      assertEquals(0, rule.get("violations").size(), where + " " + rule);
    }
  }

  /** How many movements say that they were written down more than half an hour off. */
  private int recordedAtOddTimes() throws Exception {
    return Integer.parseInt(
        FolderDatabase.asked(
            folder,
            "SELECT count(*) FROM movements WHERE abs(extract(epoch FROM recorded_at) - %d) > 1800"
                .formatted(System.currentTimeMillis() / 1000)));
  }

  private List<JsonNode> items(String path) throws Exception {
    List<JsonNode> items = new ArrayList<>();
    String after = "";
    while (after != null) {
      JsonNode page = JSON.readTree(asker.get(path + after));
      page.get("items").forEach(items::add);
      after =
          page.hasNonNull("next")
              ? "&after="
                  + java.net.URLEncoder.encode(
                      page.get("next").asText(), java.nio.charset.StandardCharsets.UTF_8)
              : null;
    }
    return items;
  }
}
