package org.barreltally.web.access;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.people.PersonFixture;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/**
 * Every operation of the interface by every role, by a paired phone and by nobody: let in or not as
 * {@code role-matrix.txt} says, which is written by hand and knows nothing of the rules in the
 * program.
 */
@QuarkusTest
class RoleMatrixTest {

  private static final String PASSWORD = "to each their own part";
  private static final List<String> ROLES = List.of("bookkeeper", "canning", "packing", "table");
  private static final String NO_ONE = "01a0c0de-7000-7000-8000-000000000001";

  @TestHTTPResource("/")
  URI program;

  @Inject PersonFixture people;

  private final HttpClient http =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  /** Operations by {@code METHOD path}, and who may. */
  private static Map<String, Set<String>> table() throws IOException {
    Map<String, Set<String>> table = new TreeMap<>();
    try (InputStream file = RoleMatrixTest.class.getResourceAsStream("/role-matrix.txt")) {
      for (String line : new String(file.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
        if (!line.isBlank() && !line.startsWith("#")) {
          String[] parts = line.split("\\|");
          table.put(
              parts[0].strip().replaceAll(" +", " "),
              new TreeSet<>(List.of(parts[1].strip().split(" +"))));
        }
      }
    }
    return table;
  }

  /**
   * Operations by {@code METHOD path}, and the media type of what they are sent; empty for none.
   */
  private static Map<String, String> operations() throws IOException {
    JsonNode paths =
        new ObjectMapper()
            .readTree(Owner.asks().get("/openapi?format=json").asString())
            .get("paths");
    Map<String, String> all = new TreeMap<>();
    paths
        .fields()
        .forEachRemaining(
            path -> {
              if (!path.getKey().startsWith("/api/tried")) { // a resource of the tests
                path.getValue()
                    .fields()
                    .forEachRemaining(
                        said ->
                            all.put(
                                said.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey(),
                                mediaType(said.getValue())));
              }
            });
    return all;
  }

  private static String mediaType(JsonNode operation) {
    Iterator<String> types = operation.path("requestBody").path("content").fieldNames();
    return types.hasNext() ? types.next() : "";
  }

  /** Asks with this login, or with none; plainly, since it is asked some two thousand times. */
  private int asks(Optional<String> login, String operation, String mediaType) {
    String[] parts = operation.split(" ");
    HttpRequest.Builder request =
        HttpRequest.newBuilder(program.resolve(parts[1].replaceAll("\\{[^}]*}", NO_ONE)))
            .header("Idempotency-Key", UUID.randomUUID().toString());
    login.ifPresent(said -> request.header("Authorization", said));
    HttpRequest.BodyPublisher body = HttpRequest.BodyPublishers.noBody();
    if (parts[0].equals("POST") || !mediaType.isEmpty()) {
      request.header("Content-Type", mediaType.isEmpty() ? "application/json" : mediaType);
      body = HttpRequest.BodyPublishers.ofString("{}");
    }
    try {
      return http.send(
              request.method(parts[0], body).build(), HttpResponse.BodyHandlers.discarding())
          .statusCode();
    } catch (IOException e) {
      throw new UncheckedIOException(operation, e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static String basic(String name, String password) {
    return "Basic "
        + Base64.getEncoder()
            .encodeToString((name + ":" + password).getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void each_operation_lets_in_whom_the_table_names() throws IOException {
    Map<String, Optional<String>> logins = new LinkedHashMap<>();
    logins.put("anyone", Optional.empty());
    logins.put("phone", Optional.of("Bearer " + phone()));
    for (String role : ROLES) {
      logins.put(role, Optional.of(basic(people.with(role, PASSWORD), PASSWORD)));
    }
    logins.put("owner", Optional.of(basic("owner", "only for the tests")));
    Map<String, Set<String>> expected = table();
    Map<String, Set<String>> found = new TreeMap<>();
    for (Map.Entry<String, String> asked : operations().entrySet()) {
      Set<String> may = new TreeSet<>();
      logins.forEach(
          (who, login) -> {
            if (let(asks(login, asked.getKey(), asked.getValue()), asked.getKey())) {
              may.add(who);
            }
          });
      found.put(asked.getKey(), may);
    }
    assertEquals(text(expected), text(found));
  }

  private static String text(Map<String, Set<String>> table) {
    StringBuilder text = new StringBuilder();
    table.forEach(
        (operation, may) ->
            text.append(operation).append(" | ").append(String.join(" ", may)).append('\n'));
    return text.toString();
  }

  private static boolean let(int status, String operation) {
    assertTrue(status < 500, operation + " " + status);
    return status != 401 && status != 403;
  }

  private static String phone() {
    String code =
        Owner.posts("/api/phones", "{\"name\": \"Matrix\"}").statusCode(201).extract().path("code");
    return given()
        .contentType("application/json")
        .body(Map.of("code", code))
        .post("/api/table/pairing")
        .then()
        .statusCode(201)
        .extract()
        .path("token");
  }

  @Test
  void the_menu_shows_what_a_role_may_read_and_nothing_else() {
    Set<String> owners = menu(PageReader.owner());
    assertTrue(owners.size() > 25, "the owner's menu: " + owners);
    for (String role : ROLES) {
      PageReader reader = PageReader.as(people.with(role, PASSWORD), PASSWORD);
      Set<String> shown = menu(reader);
      Set<String> readable = new TreeSet<>();
      for (String path : owners) {
        Response answer =
            given()
                .cookie("barreltally-session", reader.session())
                .header("Accept", "text/html")
                .get(path);
        if (answer.statusCode() == 200) {
          readable.add(path);
        } else {
          assertEquals(403, answer.statusCode(), role + " " + path);
        }
      }
      assertEquals(readable, shown, role);
      assertTrue(shown.size() < owners.size(), role);
    }
  }

  private static Set<String> menu(PageReader reader) {
    Set<String> paths = new TreeSet<>();
    for (Element link : reader.reads("/").select("nav.menu ul a")) {
      paths.add(link.attr("href"));
    }
    return paths;
  }
}
