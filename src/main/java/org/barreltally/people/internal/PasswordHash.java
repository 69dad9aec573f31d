package org.barreltally.people.internal;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.text.Normalizer;
import java.util.Base64;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/**
 * A slow salted hash of a password with the parameters it was made with, in one string: {@code
 * pbkdf2-sha256$iterations$salt$hash}, salt and hash in Base64.
 *
 * <p>PBKDF2 (RFC 8018) with HMAC-SHA-256. Passwords are brought to Unicode form NFKC first (RFC
 * 8265 and NIST SP 800-63B ask for a stable form), so that a phone and a laptop type the same one.
 */
public final class PasswordHash {

  /**
   * Iterations for new hashes: 600,000, the OWASP Password Storage Cheat Sheet's figure for
   * PBKDF2-HMAC-SHA-256 (2023). Grows with the years; older hashes are renewed at sign-in.
   */
  public static final int ITERATIONS = 600_000;

  private static final String SCHEME = "pbkdf2-sha256";
  private static final int HASH_BITS = 256;

  private final int iterations;
  private final byte[] salt;
  private final byte[] hash;

  private PasswordHash(int iterations, byte[] salt, byte[] hash) {
    this.iterations = iterations;
    this.salt = salt;
    this.hash = hash;
  }

  /** Hashes {@code password} with a fresh random {@code salt} of at least 16 bytes. */
  public static PasswordHash of(String password, byte[] salt, int iterations) {
    return new PasswordHash(iterations, salt, derive(password, salt, iterations));
  }

  /** The hash of a user who does not exist: costs the usual time to try and fits no password. */
  static PasswordHash ofNobody(Secrets secrets, int iterations) {
    return new PasswordHash(iterations, secrets.salt(), secrets.bytes(HASH_BITS / 8));
  }

  /** Reads a stored hash; the text is our own, so anything unreadable is a defect. */
  public static PasswordHash read(String stored) {
    String[] parts = stored.split("\\$");
    if (parts.length != 4 || !parts[0].equals(SCHEME)) {
      throw new IllegalStateException("a stored password hash has an unknown form");
    }
    Base64.Decoder base64 = Base64.getDecoder();
    return new PasswordHash(
        Integer.parseInt(parts[1]), base64.decode(parts[2]), base64.decode(parts[3]));
  }

  /** Whether {@code password} is the one that was hashed; takes the same time either way. */
  public boolean matches(String password) {
    return MessageDigest.isEqual(hash, derive(password, salt, iterations));
  }

  /** Whether this hash was made with fewer iterations than new ones are. */
  public boolean isWeakerThan(int iterationsNow) {
    return iterations < iterationsNow;
  }

  /** The one string that is stored. */
  public String stored() {
    Base64.Encoder base64 = Base64.getEncoder();
    return String.join(
        "$",
        SCHEME,
        Integer.toString(iterations),
        base64.encodeToString(salt),
        base64.encodeToString(hash));
  }

  private static byte[] derive(String password, byte[] salt, int iterations) {
    char[] normal = Normalizer.normalize(password, Normalizer.Form.NFKC).toCharArray();
    PBEKeySpec spec = new PBEKeySpec(normal, salt, iterations, HASH_BITS);
    try {
      return SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256").generateSecret(spec).getEncoded();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("this Java cannot hash passwords", e);
    } finally {
      spec.clearPassword();
    }
  }
}
