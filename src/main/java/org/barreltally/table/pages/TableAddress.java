package org.barreltally.table.pages;

import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Under which addresses phones reach this program. */
@ApplicationScoped
class TableAddress {

  private static final Set<String> HERE = Set.of("localhost", "127.0.0.1", "[::1]");

  private final int http;
  private final int https;
  private final List<String> names;

  TableAddress(
      @ConfigProperty(name = "quarkus.http.port") int http,
      @ConfigProperty(name = "barreltally.tls.port") int https,
      @ConfigProperty(name = "barreltally.tls.names") Optional<List<String>> names) {
    this.http = http;
    this.https = https;
    this.names = names.orElse(List.of());
  }

  /** Whether the program answers over HTTPS itself. */
  boolean hasHttps() {
    return https != 0;
  }

  /** Names to choose from: the one the owner came by first, unless only this machine knows it. */
  List<String> choices(HttpServerRequest request) {
    Set<String> all = new LinkedHashSet<>();
    String came = request.authority() == null ? "" : request.authority().host();
    if (!HERE.contains(came) && !came.isEmpty()) {
      all.add(came);
    }
    all.addAll(names);
    return all.isEmpty() ? List.of("localhost") : new ArrayList<>(all);
  }

  /** Where a phone learns to trust the program; over HTTP, since it does not trust it yet. */
  String trust(String name) {
    return "http://" + name + ":" + http + "/phones/trust";
  }

  /** Where the application of the table is. */
  String table(String name) {
    return hasHttps()
        ? "https://" + name + ":" + https + "/table/"
        : "http://" + name + ":" + http + "/table/";
  }
}
