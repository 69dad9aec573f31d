package org.barreltally.people.internal;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;

/** Makes what must not be guessed, and the fast hash under which long random secrets are kept. */
@ApplicationScoped
public class Secrets {

  private static final int SECRET_BYTES = 32;
  private static final int SALT_BYTES = 16;
  private static final int GROUP = 5;

  /** Crockford's Base 32 alphabet in lower case: 5 bits a letter, none mistaken for another. */
  private static final String READABLE = "0123456789abcdefghjkmnpqrstvwxyz";

  private final SecureRandom random = new SecureRandom();

  /** 256 random bits as text that is fit for headers and cookies, after {@code prefix}. */
  public String secret(String prefix) {
    return prefix + Base64.getUrlEncoder().withoutPadding().encodeToString(bytes(SECRET_BYTES));
  }

  /** A salt for one password. */
  public byte[] salt() {
    return bytes(SALT_BYTES);
  }

  /** 100 random bits as four groups of five letters and digits that can be read out. */
  public String readablePassword() {
    return readable(4);
  }

  /** Random text that can be read out: groups of five letters and digits, 25 bits each. */
  public String readable(int groups) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < groups * GROUP; i++) {
      if (i > 0 && i % GROUP == 0) {
        text.append('-');
      }
      text.append(READABLE.charAt(random.nextInt(READABLE.length())));
    }
    return text.toString();
  }

  /** {@code count} random bytes. */
  public byte[] bytes(int count) {
    byte[] bytes = new byte[count];
    random.nextBytes(bytes);
    return bytes;
  }

  /** SHA-256 of a secret: enough because the secret is over 120 random bits, not chosen. */
  public static byte[] hash(String secret) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
