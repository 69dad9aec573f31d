package org.barreltally.start;

import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Date;
import java.util.List;
import java.util.stream.Stream;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.CertIOException;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * Makes certificates (RFC 5280) with keys on the curve P-256. The authority may sign only for this
 * machine's names, names that exist in home networks alone, and private addresses, so that whoever
 * trusts it trusts it for nothing on the public network.
 */
final class CertificateMaker {

  /** An authority or a server with its key. */
  record Made(X509Certificate certificate, PrivateKey key) {}

  static final Duration AUTHORITY_LIFE = Duration.ofDays(3650);

  /**
   * Less than the 825 days that iPhones allow a certificate (Apple support note 103769, from
   * memory).
   */
  static final Duration SERVER_LIFE = Duration.ofDays(397);

  /** In home networks: RFC 6762, RFC 8375, and ICANN's reservation of internal. */
  private static final List<String> HOME_DOMAINS = List.of("local", "home.arpa", "internal", "lan");

  /** RFC 1918, loopback and link-local, as address and mask. */
  private static final List<String> HOME_NETWORKS =
      List.of("10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "127.0.0.0/8", "169.254.0.0/16");

  private static final String SIGNATURE = "SHA256withECDSA";

  private final SecureRandom random = new SecureRandom();

  /** An authority that may sign for these names. */
  Made authority(String farm, Collection<String> names, Instant now)
      throws GeneralSecurityException, CertIOException, OperatorCreationException {
    KeyPair keys = keys();
    X500Principal self = new X500Principal("CN=Barreltally on " + farm + ", O=Barreltally");
    JcaX509v3CertificateBuilder builder =
        new JcaX509v3CertificateBuilder(
            self, serial(), day(now), Date.from(now.plus(AUTHORITY_LIFE)), self, keys.getPublic());
    JcaX509ExtensionUtils extensions = new JcaX509ExtensionUtils();
    builder
        .addExtension(Extension.basicConstraints, true, new BasicConstraints(0))
        .addExtension(
            Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign))
        .addExtension(Extension.nameConstraints, true, constraints(names))
        .addExtension(
            Extension.subjectKeyIdentifier,
            false,
            extensions.createSubjectKeyIdentifier(keys.getPublic()));
    return signed(builder, keys, keys.getPrivate());
  }

  /** A server's certificate for these names. */
  Made server(Made authority, Collection<String> names, Instant now)
      throws GeneralSecurityException, CertIOException, OperatorCreationException {
    KeyPair keys = keys();
    JcaX509v3CertificateBuilder builder =
        new JcaX509v3CertificateBuilder(
            authority.certificate().getSubjectX500Principal(),
            serial(),
            day(now),
            Date.from(now.plus(SERVER_LIFE)),
            new X500Principal("CN=Barreltally"),
            keys.getPublic());
    JcaX509ExtensionUtils extensions = new JcaX509ExtensionUtils();
    builder
        .addExtension(Extension.basicConstraints, true, new BasicConstraints(false))
        .addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature))
        .addExtension(
            Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth))
        .addExtension(
            Extension.authorityKeyIdentifier,
            false,
            extensions.createAuthorityKeyIdentifier(authority.certificate()))
        .addExtension(
            Extension.subjectAlternativeName,
            false,
            new GeneralNames(
                names.stream().map(CertificateMaker::name).toArray(GeneralName[]::new)));
    return signed(builder, keys, authority.key());
  }

  /** Whether an authority made by {@link #authority} for some names may sign for another. */
  static boolean maySign(Collection<String> forNames, String name) {
    if (MachineNames.isAddress(name)) {
      return forNames.contains(name)
          || name.matches("(10|127|192\\.168|169\\.254|172\\.(1[6-9]|2[0-9]|3[01]))\\..*");
    }
    return Stream.concat(HOME_DOMAINS.stream(), forNames.stream())
        .anyMatch(domain -> name.equals(domain) || name.endsWith("." + domain));
  }

  private static NameConstraints constraints(Collection<String> names) {
    List<GeneralSubtree> allowed = new ArrayList<>();
    HOME_DOMAINS.forEach(
        domain -> allowed.add(new GeneralSubtree(new GeneralName(GeneralName.dNSName, domain))));
    HOME_NETWORKS.forEach(
        net -> allowed.add(new GeneralSubtree(new GeneralName(GeneralName.iPAddress, net))));
    for (String name : names) {
      if (MachineNames.isAddress(name)) {
        allowed.add(new GeneralSubtree(new GeneralName(GeneralName.iPAddress, name + "/32")));
      } else {
        allowed.add(new GeneralSubtree(new GeneralName(GeneralName.dNSName, name)));
      }
    }
    return new NameConstraints(allowed.toArray(GeneralSubtree[]::new), null);
  }

  private static GeneralName name(String name) {
    return new GeneralName(
        MachineNames.isAddress(name) ? GeneralName.iPAddress : GeneralName.dNSName, name);
  }

  private Made signed(JcaX509v3CertificateBuilder builder, KeyPair keys, PrivateKey signer)
      throws GeneralSecurityException, OperatorCreationException {
    return new Made(
        new JcaX509CertificateConverter()
            .getCertificate(builder.build(new JcaContentSignerBuilder(SIGNATURE).build(signer))),
        keys.getPrivate());
  }

  private KeyPair keys() throws GeneralSecurityException {
    KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
    generator.initialize(new ECGenParameterSpec("secp256r1"), random);
    return generator.generateKeyPair();
  }

  private BigInteger serial() {
    return new BigInteger(127, random).add(BigInteger.ONE);
  }

  /** A day ago, so that a phone whose clock is behind takes it too. */
  private static Date day(Instant now) {
    return Date.from(now.minus(Duration.ofDays(1)));
  }
}
