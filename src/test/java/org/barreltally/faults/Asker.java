package org.barreltally.faults;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.UUID;

/** Asks the program as the owner; an answer that does not come is no answer. */
final class Asker {

  private final HttpClient http =
      HttpClient.newBuilder()
          .version(HttpClient.Version.HTTP_1_1)
          .connectTimeout(Duration.ofSeconds(2))
          .build();
  private final String login;
  private volatile int port;

  Asker(String login, int port) {
    this.login = login;
    this.port = port;
  }

  void at(int other) {
    port = other;
  }

  /** Sends a wish and notes the first answer that settles it. */
  void send(Wish wish) throws InterruptedException {
    HttpResponse<String> answer = post(wish);
    if (answer != null && wish.isOpen()) {
      wish.answer = answer.body();
      wish.status = answer.statusCode();
    }
  }

  /** The answer, or null if none came. */
  HttpResponse<String> post(Wish wish) throws InterruptedException {
    return sent(
        request(wish.path)
            .header("Content-Type", "application/json")
            .header("Idempotency-Key", wish.id.toString())
            .POST(HttpRequest.BodyPublishers.ofString(wish.json))
            .build());
  }

  /** Makes what nobody disturbs; it must be taken. */
  String make(String path, String json) throws InterruptedException {
    HttpResponse<String> answer =
        sent(
            request(path)
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .POST(HttpRequest.BodyPublishers.ofString(json))
                .build());
    if (answer == null || answer.statusCode() != 201) {
      throw new AssertionError(path + " " + (answer == null ? "no answer" : answer.body()));
    }
    return answer.body();
  }

  String get(String path) throws InterruptedException {
    HttpResponse<String> answer = sent(request(path).GET().build());
    if (answer == null || answer.statusCode() != 200) {
      throw new AssertionError(path + " " + (answer == null ? "no answer" : answer.body()));
    }
    return answer.body();
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
        .timeout(Duration.ofSeconds(30))
        .header("Authorization", login);
  }

  private HttpResponse<String> sent(HttpRequest request) throws InterruptedException {
    try {
      return http.send(request, HttpResponse.BodyHandlers.ofString());
    } catch (IOException lost) {
      return null;
    }
  }
}
