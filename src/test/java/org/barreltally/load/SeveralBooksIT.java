package org.barreltally.load;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.barreltally.Owner;
import org.barreltally.start.FolderDatabase;
import org.barreltally.start.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One program that keeps the books of several sugarhouses, told apart by host name, on two copies:
 * people of each write and read at the same time, and each book holds what its own were told and
 * nothing else.
 */
class SeveralBooksIT {

  private static final String PASSWORD = Program.PASSWORD;
  private static final List<String> TWO = List.of("ridge", "hollow");
  private static final int PEOPLE = 8;
  private static final int ERRANDS_EACH = 15;

  @TempDir Path folder;

  /** A token of the owner of each book: judging a password takes a new program seconds. */
  private final Map<String, String> tokens = new HashMap<>();

  @Test
  void two_sugarhouses_in_one_program_and_a_third_brought_up_beside() throws Exception {
    long seed = Long.getLong("barreltally.seed", 2026);
    System.out.println("SeveralBooksIT: seed " + seed);
    Path first = folder.resolve("first");
    try (Program one = Program.startAnew(alone(first)).awaitReady();
        Program other = Program.start(beside(first, "other", TWO)).awaitReady()) {
      List<Program> copies = List.of(one, other);
      TWO.forEach(book -> tokens.put(book, token(one, book)));
      each_host_name_has_its_own_book(one);
      what_opens_one_book_does_not_open_another(copies);
      Map<String, TreeSet<String>> acknowledged = people_of_both_at_once(copies, seed);
      for (String book : TWO) {
        assertEquals(acknowledged.get(book), tags(one, book));
        assertEquals(Integer.toString(acknowledged.get(book).size()), counted(first, book, "lots"));
        assertTrue(sound(other, book));
      }
      work_left_with_one_book_is_done_in_that_one(one);
      the_database_holds_the_wall(first);

      Path saved = saved(one, "ridge");
      List<String> three = List.of("ridge", "hollow", "orchard");
      command(beside(first, "restored", three), "restore", saved.toString(), "orchard");
      try (Program all = Program.start(beside(first, "all", three)).awaitReady()) {
        tokens.put("orchard", token(all, "orchard"));
        assertEquals(acknowledged.get("ridge"), tags(all, "orchard"));
        taken(all, "orchard", "orchard-alone");
        assertEquals(acknowledged.get("ridge"), tags(one, "ridge"));
        assertEquals(List.of(), all.errors());
      }
      assertEquals(List.of(), one.errors());
      assertEquals(List.of(), other.errors());
    }
  }

  private void each_host_name_has_its_own_book(Program program) {
    for (String book : TWO) {
      asks(program, book)
          .contentType("application/json")
          .header("Idempotency-Key", UUID.randomUUID())
          .body("{\"maker\": \"Maker at " + book + "\"}")
          .post("/api/settings")
          .then()
          .statusCode(200);
    }
    for (String book : TWO) {
      Response told = asks(program, book).get("/api/settings");
      assertTrue(told.asString().contains("Maker at " + book), told.asString());
    }
    for (String stranger : List.of("valley.sugar.example", "127.0.0.1", "ridge", "")) {
      Response answer = plain(program).header("Host", stranger).get("/sign-in");
      assertEquals(stranger.equals("ridge") ? 200 : 421, answer.statusCode(), stranger);
      plain(program).header("Host", stranger).get("/assets/barreltally.css").then().statusCode(200);
    }
  }

  private void what_opens_one_book_does_not_open_another(List<Program> copies) {
    String session =
        at(copies.get(0), "ridge")
            .formParam("username", "owner")
            .formParam("password", PASSWORD)
            .redirects()
            .follow(false)
            .post("/sign-in")
            .cookie("barreltally-session");
    for (Program copy : copies) {
      for (String book : TWO) {
        int api = book.equals("ridge") ? 200 : 401;
        for (int again = 0; again < 3; again++) {
          assertEquals(
              api,
              at(copy, book)
                  .header("Authorization", "Bearer " + tokens.get("ridge"))
                  .get("/api/barrels")
                  .statusCode());
          int page =
              at(copy, book)
                  .cookie("barreltally-session", session)
                  .redirects()
                  .follow(false)
                  .get("/barrels")
                  .statusCode();
          assertEquals(book.equals("ridge") ? 200 : 303, page);
        }
      }
    }
  }

  /** Each writes barrels of its book's name, reads the list and asks for settings in between. */
  private Map<String, TreeSet<String>> people_of_both_at_once(List<Program> copies, long seed)
      throws Exception {
    Map<String, TreeSet<String>> acknowledged = new ConcurrentHashMap<>();
    ExecutorService people = Executors.newFixedThreadPool(PEOPLE);
    List<Future<?>> days = new ArrayList<>();
    for (int person = 0; person < PEOPLE; person++) {
      String book = TWO.get(person % 2);
      Random random = new Random(seed + person);
      String prefix = book + "-" + person + "-";
      acknowledged.computeIfAbsent(book, name -> new TreeSet<>());
      days.add(
          people.submit(
              () -> {
                for (int n = 0; n < ERRANDS_EACH; n++) {
                  taken(copies.get(random.nextInt(2)), book, prefix + n);
                  synchronized (acknowledged) {
                    acknowledged.get(book).add(prefix + n);
                  }
                  Program asked = copies.get(random.nextInt(2));
                  TreeSet<String> seen = tags(asked, book);
                  assertTrue(seen.contains(prefix + n), () -> prefix + " in " + seen);
                  assertTrue(seen.stream().allMatch(t -> t.startsWith(book)), seen::toString);
                  String settings = asks(asked, book).get("/api/settings").asString();
                  assertTrue(settings.contains("Maker at " + book), settings);
                }
                return null;
              }));
    }
    people.shutdown();
    for (Future<?> day : days) {
      day.get();
    }
    assertEquals(
        PEOPLE * ERRANDS_EACH, acknowledged.values().stream().mapToInt(TreeSet::size).sum());
    return acknowledged;
  }

  /** The role that signs in sees no book by itself, and a book's role sees no other's. */
  private static void the_database_holds_the_wall(Path server) throws Exception {
    for (String query :
        List.of(
            "SELECT count(*) FROM ridge.items",
            "SET ROLE barreltally_hollow_app; SELECT count(*) FROM ridge.items",
            "SET ROLE barreltally_ridge_app; SELECT count(*) FROM hollow.users")) {
      SQLException refused =
          assertThrows(SQLException.class, () -> FolderDatabase.askedAsApplication(server, query));
      assertEquals("42501", refused.getSQLState(), refused.getMessage());
    }
    String members =
        "SELECT count(*) FROM pg_roles WHERE rolname LIKE 'barreltally%app' AND pg_has_role(rolname, 'barreltally', 'MEMBER')";
    assertEquals("0", FolderDatabase.asked(server, members));
  }

  private void work_left_with_one_book_is_done_in_that_one(Program program) {
    String id =
        asks(program, "hollow")
            .contentType("text/csv")
            .header("Idempotency-Key", UUID.randomUUID())
            .body(
                "kind,tag,season,filledOn,material,gross,tare,brix,transmittance,taste\n"
                    + "barrel,hollow-left,2025,2025-03-22,plastic,486.5 lb,42 lb,66.9,62,clean\n")
            .post("/api/errands/opening-stock/from-file")
            .then()
            .statusCode(202)
            .extract()
            .path("id");
    Program.await(
        () -> "done".equals(asks(program, "hollow").get("/api/errands/" + id).path("state")));
    assertTrue(tags(program, "hollow").contains("hollow-left"));
    asks(program, "ridge").get("/api/errands/" + id).then().statusCode(404);
    asks(program, "ridge").get("/api/barrels/hollow-left").then().statusCode(404);
  }

  private Path saved(Program program, String book) throws Exception {
    asks(program, book)
        .header("Idempotency-Key", UUID.randomUUID())
        .post("/api/backups")
        .then()
        .statusCode(201);
    Path backups = folder.resolve("first").resolve("backups");
    try (Stream<Path> files = Files.list(backups.resolve(book))) {
      Path saved = files.filter(f -> f.toString().endsWith(".zip")).findFirst().orElseThrow();
      assertEquals(List.of(backups.resolve(book)), Files.list(backups).toList());
      return saved;
    }
  }

  private static void command(Map<String, String> settings, String... arguments) throws Exception {
    try (Program program = Program.run(settings, arguments)) {
      Program.await(() -> !program.isAlive());
      assertEquals(List.of(), program.errors());
      assertTrue(program.output().contains("Restored"), program.output());
    }
  }

  private static Map<String, String> alone(Path folder) {
    Map<String, String> settings = new HashMap<>(Program.ownBook(folder));
    settings.put("BARRELTALLY_BOOKS", String.join(",", TWO));
    return settings;
  }

  /** A copy that shares the embedded database. */
  private Map<String, String> beside(Path server, String copy, List<String> books)
      throws Exception {
    Map<String, String> settings = new HashMap<>(FolderDatabase.beside(server));
    settings.putAll(Program.ownBook(folder.resolve(copy)));
    settings.put("BARRELTALLY_BOOKS", String.join(",", books));
    return settings;
  }

  private static RequestSpecification plain(Program program) {
    return given().baseUri("http://127.0.0.1").port(program.port());
  }

  private static RequestSpecification at(Program program, String book) {
    return plain(program).header("Host", book + ".sugar.example");
  }

  private RequestSpecification asks(Program program, String book) {
    return at(program, book).header("Authorization", "Bearer " + tokens.get(book));
  }

  private static String token(Program program, String book) {
    return at(program, book)
        .auth()
        .preemptive()
        .basic("owner", PASSWORD)
        .contentType("application/json")
        .header("Idempotency-Key", UUID.randomUUID())
        .body("{\"name\": \"scale\"}")
        .post("/api/tokens")
        .then()
        .statusCode(201)
        .extract()
        .path("token");
  }

  private void taken(Program program, String book, String tag) {
    asks(program, book)
        .contentType("application/json")
        .header("Idempotency-Key", UUID.randomUUID())
        .body(Owner.barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 70).replace('\'', '"'))
        .post("/api/barrels")
        .then()
        .statusCode(201);
  }

  private TreeSet<String> tags(Program program, String book) {
    List<String> tags = asks(program, book).get("/api/barrels?limit=500").path("items.tag");
    return new TreeSet<>(tags);
  }

  private static String counted(Path server, String book, String table) throws Exception {
    return FolderDatabase.asked(server, "SELECT count(*) FROM " + book + "." + table);
  }

  private boolean sound(Program program, String book) {
    List<List<Object>> found =
        asks(program, book).get("/api/ledger/invariants").path("items.violations");
    return found.stream().allMatch(List::isEmpty);
  }
}
