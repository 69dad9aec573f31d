package org.barreltally.start;

import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;

/**
 * HTTPS beside HTTP. A port that nobody chose and another program has is not worth ending a start:
 * then there is no HTTPS, and that is said.
 */
final class Tls {

  private static final Logger LOG = Logger.getLogger(Tls.class);

  /** What is said beside the addresses, once pages and interface answer. */
  private static final String SAID = "barreltally.tls.said";

  private static final long HOURS_BETWEEN_LOOKS = 6;

  private Tls() {}

  /**
   * Prepares certificates and says how the framework finds them; no HTTPS means a port of 0.
   *
   * @throws CannotStart when a chosen port is taken or certificates cannot be made
   */
  static Map<String, String> prepare(TlsSettings settings, Path data) {
    Map<String, String> properties = new LinkedHashMap<>();
    properties.put("barreltally.tls.port", "0");
    if (!settings.isOn() || !portIsFree(settings, properties)) {
      return properties;
    }
    Path certificate;
    Path key;
    if (settings.certificate().isPresent()) {
      certificate = settings.certificate().get();
      key = settings.key().orElseThrow();
    } else {
      OwnCertificates own = new OwnCertificates(data);
      if (own.ensure(MachineNames.all(settings.names()), Instant.now())) {
        properties.put(
            SAID,
            "a certificate authority of this machine's own was made; phones have to trust it");
      }
      keepFresh(own, settings);
      certificate = own.server();
      key = own.serverKey();
      properties.put("barreltally.tls.authority", own.authority().toString());
    }
    properties.put("barreltally.tls.port", Integer.toString(settings.port()));
    Set<String> names = new LinkedHashSet<>(settings.names());
    names.addAll(MachineNames.addresses());
    names.addAll(MachineNames.all(List.of()));
    names.removeAll(List.of("localhost", "127.0.0.1"));
    if (!names.isEmpty()) {
      properties.put("barreltally.tls.names", String.join(",", names));
    }
    properties.put("quarkus.http.ssl-port", Integer.toString(settings.port()));
    properties.put("quarkus.http.insecure-requests", "enabled");
    properties.put("quarkus.http.tls-configuration-name", "pages");
    properties.put("quarkus.tls.pages.key-store.pem.0.cert", certificate.toString());
    properties.put("quarkus.tls.pages.key-store.pem.0.key", key.toString());
    properties.put("quarkus.tls.pages.reload-period", "1h");
    return properties;
  }

  private static boolean portIsFree(TlsSettings settings, Map<String, String> properties) {
    try {
      HttpPort.mustBeFree(settings.port(), "HTTPS_PORT");
      return true;
    } catch (CannotStart taken) {
      if (settings.chosen()) {
        throw taken;
      }
      properties.put(
          SAID,
          "port %d is taken by another program, so there is no HTTPS; choose another with HTTPS_PORT"
              .formatted(settings.port()));
      return false;
    }
  }

  /**
   * A program that runs for a year outlives its certificate; the framework reads it anew hourly.
   */
  private static void keepFresh(OwnCertificates own, TlsSettings settings) {
    ScheduledExecutorService looks =
        Executors.newSingleThreadScheduledExecutor(
            work -> {
              Thread thread = new Thread(work, "certificates");
              thread.setDaemon(true);
              return thread;
            });
    looks.scheduleWithFixedDelay(
        () -> {
          try {
            own.ensure(MachineNames.all(settings.names()), Instant.now());
          } catch (CannotStart e) {
            LOG.warn(e.getMessage());
          }
        },
        HOURS_BETWEEN_LOOKS,
        HOURS_BETWEEN_LOOKS,
        TimeUnit.HOURS);
  }
}
