package org.barreltally.start;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * Gives every {@code @QuarkusTest} HTTPS beside HTTP with certificates made as in production, for a
 * name that is not localhost.
 */
@QuarkusTestResource(TestCertificates.class)
public class TestCertificates implements QuarkusTestResourceLifecycleManager {

  /** A name for home networks alone (RFC 8375); browsers under test find this machine by it. */
  public static final String NAME = "sugarhouse.home.arpa";

  /** Names the file of the authority that browsers under test are made to trust. */
  public static final String AUTHORITY = "barreltally.tls.authority";

  private Path folder;

  @Override
  public Map<String, String> start() {
    try {
      folder = Files.createTempDirectory("barreltally-tls");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    OwnCertificates own = new OwnCertificates(folder);
    own.ensure(List.of("localhost", "127.0.0.1", NAME), Instant.now());
    return Map.of(
        "quarkus.http.test-ssl-port",
        "0",
        "quarkus.http.insecure-requests",
        "enabled",
        "quarkus.http.tls-configuration-name",
        "pages",
        "quarkus.tls.pages.key-store.pem.0.cert",
        own.server().toString(),
        "quarkus.tls.pages.key-store.pem.0.key",
        own.serverKey().toString(),
        "barreltally.tls.port",
        "8443",
        AUTHORITY,
        own.authority().toString());
  }

  @Override
  public void stop() {
    try {
      DataFolder.delete(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
