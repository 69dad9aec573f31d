package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barreltally.Owner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Reading from a streaming hot standby: a copy of the program answers there what the copy that
 * writes answers, takes nothing, goes on when the other server is gone, and once the standby is
 * promoted a copy on it writes where the other one ended.
 */
class StandbyIT {

  /** What a copy tells of itself, or notes while it is asked. */
  private static final List<String> OF_THE_COPY =
      List.of("/api/backups", "/api/entrance-log", "/api/errands");

  @TempDir Path folder;

  @Test
  void a_season_is_read_at_a_standby_that_outlives_the_server_it_follows() throws Exception {
    Optional<Path> programs = DebianServer.programs();
    assumeTrue(programs.isPresent(), "PostgreSQL's server is not installed (Debian: postgresql)");
    try (DebianServer primary = DebianServer.primary(programs.get(), folder.resolve("primary"));
        DebianServer standby = DebianServer.following(primary, folder.resolve("standby"))) {
      refusesBeforeThereIsABook(standby);
      Map<String, String> told;
      try (Program writer = Program.start(copy(primary, "writer", true)).awaitReady()) {
        Program.await(() -> writer.output().contains("Shows settled"));
        String session = session(writer);
        standby.awaitAll(primary);
        try (Program reader = Program.start(copy(standby, "reader", true)).awaitReady()) {
          told = answers(reader);
          assertEquals(answers(writer), told);
          assertTrue(told.size() >= 40, "answers compared: " + told.keySet());
          takesNothing(reader);
          followsTheWriter(primary, standby, writer, reader);
          primary.fall();
          told = answers(reader);
          assertTrue(page(reader, "/", session).contains("This copy only reads"));
          assertTrue(page(reader, "/barrels", session).contains("W-1"));
          assertEquals(List.of(), reader.errors());
        }
      }
      standby.promote();
      try (Program writer = Program.start(copy(standby, "promoted", false)).awaitReady()) {
        assertEquals(told, answers(writer));
        assertEquals(201, filled(writer, "W-2").statusCode());
        assertTrue(
            new EveryList(writer.port(), Program.loginByPassword())
                .get("/api/ledger/invariants")
                .body()
                .replaceAll("\"violations\":\\[\\]", "")
                .contains("\"items\""));
      }
    }
  }

  private void refusesBeforeThereIsABook(DebianServer standby) throws Exception {
    try (Program early = Program.start(copy(standby, "early", false))) {
      assertEquals(1, early.exitCode());
      assertTrue(
          early.errors().get(0).contains("does not know the role"), early.errors()::toString);
    }
  }

  private Map<String, String> copy(DebianServer server, String name, boolean demo) {
    Map<String, String> settings = new HashMap<>(Program.ownBook(folder.resolve(name)));
    settings.putAll(server.settings());
    settings.put("BARRELTALLY_DEMO", Boolean.toString(demo));
    return settings;
  }

  private static Map<String, String> answers(Program program) throws Exception {
    Map<String, String> answers = new EveryList(program.port(), Program.loginByPassword()).told();
    assertTrue(answers.keySet().removeAll(OF_THE_COPY));
    answers.replaceAll((path, answer) -> answer.replaceAll("\"now\":\"[^\"]*\"", "\"now\""));
    return answers;
  }

  private static void takesNothing(Program reader) throws Exception {
    HttpResponse<String> refused = filled(reader, "N-1");
    assertEquals(503, refused.statusCode());
    assertTrue(refused.body().contains("\"copy-only-reads\""), refused.body());
    HttpResponse<String> signIn =
        sent(
            reader,
            "/sign-in",
            HttpRequest.newBuilder()
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("username=owner&password=x")));
    assertEquals(503, signIn.statusCode());
    assertTrue(signIn.body().contains("This copy only reads"), signIn.body());
  }

  private static void followsTheWriter(
      DebianServer primary, DebianServer standby, Program writer, Program reader) throws Exception {
    assertEquals(201, filled(writer, "W-1").statusCode());
    standby.awaitAll(primary);
    assertEquals(
        200,
        new EveryList(reader.port(), Program.loginByPassword())
            .get("/api/barrels/W-1")
            .statusCode());
  }

  private static HttpResponse<String> filled(Program program, String tag) throws Exception {
    String barrel = Owner.barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 70);
    return new EveryList(program.port(), Program.loginByPassword())
        .post("/api/barrels", barrel.replace('\'', '"'));
  }

  /** Signs in by the form, for a cookie that is good at every copy. */
  private static String session(Program writer) throws Exception {
    HttpResponse<String> answer =
        sent(
            writer,
            "/sign-in",
            HttpRequest.newBuilder()
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        "username=owner&password=" + Program.PASSWORD.replace(' ', '+'))));
    return answer.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
  }

  private static String page(Program reader, String path, String session) throws Exception {
    HttpResponse<String> answer =
        sent(reader, path, HttpRequest.newBuilder().header("Cookie", session).GET());
    assertEquals(200, answer.statusCode(), path);
    return answer.body();
  }

  private static HttpResponse<String> sent(
      Program program, String path, HttpRequest.Builder request) throws Exception {
    return HttpClient.newHttpClient()
        .send(
            request
                .uri(URI.create("http://localhost:" + program.port() + path))
                .header("Accept", "text/html")
                .build(),
            HttpResponse.BodyHandlers.ofString());
  }
}
