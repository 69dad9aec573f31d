package org.barreltally.start;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Base64;

/** Certificates and private keys as PEM files (RFC 7468). */
final class Pem {

  private static final Base64.Encoder LINES =
      Base64.getMimeEncoder(64, "\n".getBytes(StandardCharsets.US_ASCII));

  private Pem() {}

  static X509Certificate certificate(Path file) throws IOException, GeneralSecurityException {
    return (X509Certificate)
        CertificateFactory.getInstance("X.509")
            .generateCertificate(new ByteArrayInputStream(Files.readAllBytes(file)));
  }

  static PrivateKey key(Path file) throws IOException, GeneralSecurityException {
    String text = Files.readString(file).replaceAll("-----[A-Z ]+-----", "");
    return KeyFactory.getInstance("EC")
        .generatePrivate(new PKCS8EncodedKeySpec(Base64.getMimeDecoder().decode(text)));
  }

  static void write(Path file, X509Certificate... chain)
      throws IOException, GeneralSecurityException {
    StringBuilder text = new StringBuilder();
    for (X509Certificate certificate : chain) {
      text.append(block("CERTIFICATE", certificate.getEncoded()));
    }
    Path partial = file.resolveSibling(file.getFileName() + ".partial");
    Files.writeString(partial, text);
    move(partial, file);
  }

  /**
   * Writes a private key that only the owner of this computer's account reads, from its first
   * moment.
   */
  static void write(Path file, PrivateKey key) throws IOException {
    Path partial = file.resolveSibling(file.getFileName() + ".partial");
    Files.deleteIfExists(partial);
    DatabasePassword.createPrivate(partial);
    Files.writeString(partial, block("PRIVATE KEY", key.getEncoded()));
    move(partial, file);
  }

  private static void move(Path partial, Path file) throws IOException {
    Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private static String block(String what, byte[] bytes) {
    return "-----BEGIN %1$s-----%n%2$s%n-----END %1$s-----%n"
        .formatted(what, LINES.encodeToString(bytes))
        .replace("\r", "");
  }
}
