package org.barreltally.table.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.util.HexFormat;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The authority that phones are asked to trust, if the certificates are of the tool's own making.
 */
@ApplicationScoped
class Authority {

  private final Optional<String> file;

  Authority(@ConfigProperty(name = "barreltally.tls.authority") Optional<String> file) {
    this.file = file;
  }

  Optional<X509Certificate> certificate() {
    return file.map(Path::of).map(Authority::read);
  }

  /** SHA-256 over the certificate, as phones show it: pairs of digits. */
  static String fingerprint(X509Certificate certificate) {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded());
      return HexFormat.ofDelimiter(" ").withUpperCase().formatHex(hash);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  private static X509Certificate read(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return (X509Certificate) CertificateFactory.getInstance("X.509").generateCertificate(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("the authority's certificate cannot be read", e);
    }
  }
}
