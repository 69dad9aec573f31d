package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.cert.CertPathValidator;
import java.security.cert.CertPathValidatorException;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Certificates of the tool's own making, judged by the JDK's own path validation (RFC 5280, section
 * 6).
 */
class OwnCertificatesTest {

  private static final Instant NOW = Instant.parse("2026-10-03T12:00:00Z");
  private static final List<String> NAMES = List.of("localhost", "127.0.0.1", "pan.home.arpa");

  @TempDir Path data;

  private X509Certificate authority() throws Exception {
    return Pem.certificate(data.resolve("tls/authority.pem"));
  }

  private X509Certificate server() throws Exception {
    return Pem.certificate(data.resolve("tls/server.pem"));
  }

  /** Java heeds the limits of an authority that stands in the path, not of the anchor itself. */
  private static void validate(X509Certificate server, X509Certificate authority, Instant at)
      throws Exception {
    PKIXParameters parameters = new PKIXParameters(Set.of(new TrustAnchor(authority, null)));
    parameters.setRevocationEnabled(false);
    parameters.setDate(Date.from(at));
    CertPathValidator.getInstance("PKIX")
        .validate(
            CertificateFactory.getInstance("X.509").generateCertPath(List.of(server, authority)),
            parameters);
  }

  @Test
  void are_made_once_with_keys_that_only_their_owner_reads() throws Exception {
    OwnCertificates own = new OwnCertificates(data);
    assertTrue(own.ensure(NAMES, NOW), "a new authority");
    byte[] before = Files.readAllBytes(own.server());
    assertFalse(own.ensure(NAMES, NOW.plus(Duration.ofDays(300))));
    assertArrayEquals(before, Files.readAllBytes(own.server()));
    for (String key : List.of("authority-key.pem", "server-key.pem")) {
      assertEquals(
          "rw-------",
          PosixFilePermissions.toString(
              Files.getPosixFilePermissions(data.resolve("tls").resolve(key))),
          key);
    }
    validate(server(), authority(), NOW);
    assertEquals(
        List.of("127.0.0.1", "localhost", "pan.home.arpa"),
        server().getSubjectAlternativeNames().stream().map(n -> n.get(1)).sorted().toList());
  }

  @Test
  void the_servers_is_renewed_near_its_end_and_for_other_names_under_the_same_authority()
      throws Exception {
    OwnCertificates own = new OwnCertificates(data);
    own.ensure(NAMES, NOW);
    X509Certificate authority = authority();
    X509Certificate first = server();
    // 397 days less 60: on day 337 it still lasts, on day 338 it is made anew
    assertFalse(own.ensure(NAMES, NOW.plus(Duration.ofDays(336))));
    assertEquals(first, server());
    assertFalse(own.ensure(NAMES, NOW.plus(Duration.ofDays(338))));
    X509Certificate second = server();
    assertFalse(second.equals(first));
    assertFalse(own.ensure(List.of("localhost", "192.168.4.7"), NOW.plus(Duration.ofDays(338))));
    assertFalse(server().equals(second));
    assertEquals(authority, authority());
    validate(server(), authority(), NOW.plus(Duration.ofDays(338)));
  }

  @Test
  void the_authority_is_made_anew_near_its_end_and_for_a_name_outside_its_limits()
      throws Exception {
    OwnCertificates own = new OwnCertificates(data);
    own.ensure(NAMES, NOW);
    assertFalse(own.ensure(List.of("other.home.arpa", "10.1.2.3"), NOW));
    assertTrue(own.ensure(List.of("syrup.example.org"), NOW));
    assertTrue(own.ensure(List.of("syrup.example.org"), NOW.plus(Duration.ofDays(3650 - 429))));
  }

  @Test
  void the_authority_signs_in_vain_for_what_it_is_not_limited_to() throws Exception {
    OwnCertificates own = new OwnCertificates(data);
    own.ensure(NAMES, NOW);
    CertificateMaker.Made authority =
        new CertificateMaker.Made(authority(), Pem.key(data.resolve("tls/authority-key.pem")));
    for (String foreign : List.of("bank.example.com", "8.8.8.8")) {
      X509Certificate forged =
          new CertificateMaker().server(authority, List.of(foreign), NOW).certificate();
      assertThrows(
          CertPathValidatorException.class, () -> validate(forged, authority(), NOW), foreign);
    }
  }

  @Test
  void settings_say_what_to_mend() {
    TlsSettings usual = TlsSettings.from(Map.of(), 8080);
    assertEquals(8443, usual.port());
    assertFalse(usual.chosen());
    assertFalse(TlsSettings.from(Map.of("HTTPS_PORT", "off"), 8080).isOn());
    assertFalse(TlsSettings.from(Map.of(), 8443).isOn(), "HTTP has the usual port");
    for (Map<String, String> wrong :
        List.of(
            Map.of("HTTPS_PORT", "many"),
            Map.of("HTTPS_PORT", "70000"),
            Map.of("HTTPS_PORT", "8080"),
            Map.of("BARRELTALLY_TLS_CERT", "/nowhere/cert.pem"),
            Map.of("BARRELTALLY_NAMES", "a b; c"))) {
      CannotStart refusal =
          assertThrows(CannotStart.class, () -> TlsSettings.from(wrong, 8080), wrong.toString());
      assertTrue(refusal.getMessage().startsWith(wrong.keySet().iterator().next()));
    }
  }
}
