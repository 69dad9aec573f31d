package org.barreltally.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.UUID;

/** Calls the tool's own interface with a bearer token. */
final class RestCaller {

  private static final Duration PATIENCE = Duration.ofSeconds(30);

  private final HttpClient http = HttpClient.newHttpClient();
  private final String address;
  private final String token;
  private final ObjectMapper json;

  RestCaller(String address, String token, ObjectMapper json) {
    this.address = address;
    this.token = token;
    this.json = json;
  }

  JsonNode get(String path) throws IOException, InterruptedException {
    return send(request(path).GET());
  }

  JsonNode post(String path, UUID id, String body) throws IOException, InterruptedException {
    return send(
        request(path)
            .header("Content-Type", "application/json")
            .header("Idempotency-Key", id.toString())
            .POST(HttpRequest.BodyPublishers.ofString(body)));
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(address + path))
        .timeout(PATIENCE)
        .header("Authorization", "Bearer " + token);
  }

  private JsonNode send(HttpRequest.Builder request) throws IOException, InterruptedException {
    HttpResponse<String> answer = http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() >= 400) {
      throw new IOException(
          "%s answered %d: %s"
              .formatted(answer.uri().getPath(), answer.statusCode(), answer.body()));
    }
    return json.readTree(answer.body());
  }
}
