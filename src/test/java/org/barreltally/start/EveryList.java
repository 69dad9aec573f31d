package org.barreltally.start;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads all that the interface answers to a plain GET, as its description tells. */
final class EveryList {

  private static final ObjectMapper JSON = new ObjectMapper();

  private final HttpClient http = HttpClient.newHttpClient();
  private final String root;
  private final String login;

  /** Of a program that serves here, below this path, asked as its owner. */
  EveryList(int port, String login) {
    root = "http://127.0.0.1:" + port;
    this.login = login;
  }

  /** Every GET without an identity in its path that answers 200 in JSON: the answer, by path. */
  Map<String, String> told() throws IOException, InterruptedException {
    Map<String, String> told = new TreeMap<>();
    for (String path : paths()) {
      HttpResponse<String> answer = get(path);
      if (answer.statusCode() >= 500) {
        throw new AssertionError(path + " " + answer.statusCode() + " " + answer.body());
      }
      if (answer.statusCode() == 200) {
        told.put(path, whole(path, answer.body()));
      }
    }
    return told;
  }

  private List<String> paths() throws IOException, InterruptedException {
    List<String> paths = new ArrayList<>();
    JSON.readTree(get("/openapi?format=json").body())
        .get("paths")
        .fields()
        .forEachRemaining(
            path -> {
              JsonNode content = path.getValue().at("/get/responses/200/content");
              if (content.has("application/json") && !path.getKey().contains("{")) {
                paths.add(path.getKey());
              }
            });
    return paths;
  }

  /** A list in parts is read to its end. */
  private String whole(String path, String first) throws IOException, InterruptedException {
    StringBuilder all = new StringBuilder(first);
    JsonNode page = JSON.readTree(first);
    while (page.hasNonNull("next")) {
      String next = java.net.URLEncoder.encode(page.get("next").asText(), StandardCharsets.UTF_8);
      String text = get(path + (path.contains("?") ? "&" : "?") + "after=" + next).body();
      all.append('\n').append(text);
      page = JSON.readTree(text);
    }
    return all.toString();
  }

  HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return http.send(
        HttpRequest.newBuilder(URI.create(root + path)).header("Authorization", login).build(),
        HttpResponse.BodyHandlers.ofString());
  }

  HttpResponse<String> post(String path, String json) throws IOException, InterruptedException {
    return http.send(
        HttpRequest.newBuilder(URI.create(root + path))
            .header("Authorization", login)
            .header("Content-Type", "application/json")
            .header("Idempotency-Key", java.util.UUID.randomUUID().toString())
            .POST(HttpRequest.BodyPublishers.ofString(json))
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }
}
