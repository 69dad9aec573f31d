package org.barreltally.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bouncycastle.operator.OperatorCreationException;

/**
 * The certificates of the tool's own making, in the folder {@code tls} beside the data:
 *
 * <pre>
 * authority.pem        what phones are asked to trust; may be shown to anybody
 * authority-key.pem    signs server certificates; for the owner of this computer's account only
 * authority-names      the names it was made for
 * server.pem           for the names of this machine, signed by the authority
 * server-key.pem       its key; as private
 * </pre>
 *
 * The server's is made anew when it nears its end or the machine's names change, which phones do
 * not notice. The authority is made anew only near its end or for a name outside those it may sign
 * for; then phones have to trust it anew.
 */
final class OwnCertificates {

  private static final Duration SERVER_LEFT = Duration.ofDays(60);
  private static final Duration AUTHORITY_LEFT = Duration.ofDays(430);

  private final Path folder;
  private final CertificateMaker maker = new CertificateMaker();

  OwnCertificates(Path data) {
    this.folder = data.resolve("tls");
  }

  Path authority() {
    return folder.resolve("authority.pem");
  }

  Path server() {
    return folder.resolve("server.pem");
  }

  Path serverKey() {
    return folder.resolve("server-key.pem");
  }

  private Path authorityKey() {
    return folder.resolve("authority-key.pem");
  }

  private Path authorityNames() {
    return folder.resolve("authority-names");
  }

  /**
   * Makes what is missing, too old or for other names.
   *
   * @return whether phones have to trust a new authority
   * @throws CannotStart when the folder cannot be written or what lies there cannot be read
   */
  boolean ensure(Collection<String> names, Instant now) {
    try {
      Files.createDirectories(folder);
      boolean fresh = !authorityStands(names, now);
      if (fresh) {
        CertificateMaker.Made made = maker.authority(machine(names), names, now);
        Pem.write(authorityKey(), made.key());
        Pem.write(authority(), made.certificate());
        Files.write(authorityNames(), names);
        Files.deleteIfExists(server());
      }
      if (!serverStands(names, now)) {
        CertificateMaker.Made signer =
            new CertificateMaker.Made(Pem.certificate(authority()), Pem.key(authorityKey()));
        CertificateMaker.Made made = maker.server(signer, names, now);
        Pem.write(serverKey(), made.key());
        Pem.write(server(), made.certificate(), signer.certificate());
      }
      return fresh;
    } catch (IOException | GeneralSecurityException | OperatorCreationException e) {
      throw new CannotStart(
          "The certificates in %s cannot be made or read (%s); mend or remove that folder, or set HTTPS_PORT to off."
              .formatted(folder, e.getClass().getSimpleName()),
          e);
    }
  }

  private boolean authorityStands(Collection<String> names, Instant now)
      throws IOException, GeneralSecurityException {
    if (!Files.exists(authority())
        || !Files.exists(authorityKey())
        || !Files.exists(authorityNames())) {
      return false;
    }
    List<String> made = Files.readAllLines(authorityNames());
    return lasts(Pem.certificate(authority()), AUTHORITY_LEFT, now)
        && names.stream().allMatch(name -> CertificateMaker.maySign(made, name));
  }

  private boolean serverStands(Collection<String> names, Instant now)
      throws IOException, GeneralSecurityException {
    if (!Files.exists(server()) || !Files.exists(serverKey())) {
      return false;
    }
    X509Certificate certificate = Pem.certificate(server());
    Set<String> held = new TreeSet<>();
    if (certificate.getSubjectAlternativeNames() != null) {
      certificate.getSubjectAlternativeNames().forEach(name -> held.add((String) name.get(1)));
    }
    return lasts(certificate, SERVER_LEFT, now) && held.equals(new TreeSet<>(names));
  }

  private static boolean lasts(X509Certificate certificate, Duration left, Instant now) {
    return certificate.getNotAfter().toInstant().isAfter(now.plus(left));
  }

  private static String machine(Collection<String> names) {
    return names.stream()
        .filter(name -> !name.equals("localhost") && !MachineNames.isAddress(name))
        .findFirst()
        .orElse("this machine")
        .replaceAll("[^A-Za-z0-9.-]", " ");
  }
}
