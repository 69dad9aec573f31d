package org.barreltally.load;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.UUID;

/** Copies of the program before one database, asked at random. */
final class Copies {

  static final ObjectMapper JSON = new ObjectMapper();

  private final HttpClient http =
      HttpClient.newBuilder()
          .version(HttpClient.Version.HTTP_1_1)
          .connectTimeout(Duration.ofSeconds(5))
          .build();
  private final List<Integer> ports;
  private final String owner;

  Copies(List<Integer> ports, String owner) {
    this.ports = ports;
    this.owner = owner;
  }

  String owner() {
    return owner;
  }

  /** Posts JSON with an id to a copy chosen at random; -1 where no answer came. */
  HttpResponse<String> post(Random random, String login, String path, String json, UUID id)
      throws IOException, InterruptedException {
    return http.send(
        request(random, login, path)
            .header("Content-Type", "application/json")
            .header("Idempotency-Key", id.toString())
            .POST(HttpRequest.BodyPublishers.ofString(json))
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }

  HttpResponse<String> get(Random random, String login, String path)
      throws IOException, InterruptedException {
    return http.send(
        request(random, login, path).GET().build(), HttpResponse.BodyHandlers.ofString());
  }

  /** Reads a page as a browser that is signed in. */
  HttpResponse<String> page(Random random, String session, String path)
      throws IOException, InterruptedException {
    return http.send(
        HttpRequest.newBuilder(address(random, path))
            .timeout(Duration.ofSeconds(30))
            .header("Accept", "text/html")
            .header("Cookie", "barreltally-session=" + session)
            .GET()
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }

  /** Signs in to the pages, for a cookie that is good at every copy. */
  String session(String password) throws IOException, InterruptedException {
    HttpResponse<String> answer =
        http.send(
            HttpRequest.newBuilder(address(new Random(0), "/sign-in"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        "username=owner&password=" + password.replace(" ", "+")))
                .build(),
            HttpResponse.BodyHandlers.ofString());
    return answer
        .headers()
        .firstValue("Set-Cookie")
        .orElseThrow(() -> new AssertionError(answer.statusCode() + answer.body()))
        .replaceFirst("barreltally-session=([^;]*).*", "$1");
  }

  /** Posts as the owner what must be taken. */
  JsonNode taken(String path, String json) throws IOException, InterruptedException {
    HttpResponse<String> answer = post(new Random(0), owner, path, json, UUID.randomUUID());
    if (answer.statusCode() / 100 != 2) {
      throw new AssertionError(path + " " + answer.statusCode() + " " + answer.body());
    }
    return JSON.readTree(answer.body());
  }

  /** Reads as the owner what must be there. */
  JsonNode read(String path) throws IOException, InterruptedException {
    HttpResponse<String> answer = get(new Random(0), owner, path);
    if (answer.statusCode() != 200) {
      throw new AssertionError(path + " " + answer.statusCode() + " " + answer.body());
    }
    return JSON.readTree(answer.body());
  }

  private HttpRequest.Builder request(Random random, String login, String path) {
    return HttpRequest.newBuilder(address(random, path))
        .timeout(Duration.ofSeconds(30))
        .header("Authorization", login);
  }

  private URI address(Random random, String path) {
    return URI.create("http://127.0.0.1:" + ports.get(random.nextInt(ports.size())) + path);
  }
}
