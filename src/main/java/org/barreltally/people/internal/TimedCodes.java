package org.barreltally.people.internal;

import com.eatthepath.otp.HmacOneTimePasswordGenerator;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import javax.crypto.spec.SecretKeySpec;

/**
 * One-time codes by the clock as phones' apps make them: RFC 6238 over HMAC-SHA-1, six digits,
 * steps of 30 seconds.
 */
public final class TimedCodes {

  /** Digits of a code. */
  public static final int DIGITS = 6;

  /** How long a code is shown, counted from 1970 (RFC 6238, 4.1). */
  static final Duration STEP = Duration.ofSeconds(30);

  /**
   * How many steps a phone's clock may be before or behind; each also gives the time to type (RFC
   * 6238, 5.2 and 6).
   */
  private static final int STEPS_ASIDE = 1;

  private static final HmacOneTimePasswordGenerator GENERATOR =
      new HmacOneTimePasswordGenerator(DIGITS);

  private TimedCodes() {}

  /** The step of an instant. */
  static long step(Instant at) {
    return Math.floorDiv(at.getEpochSecond(), STEP.toSeconds());
  }

  /** The code of a step. */
  static String code(byte[] seed, long step) {
    try {
      return GENERATOR.generateOneTimePasswordString(
          new SecretKeySpec(seed, "RAW"), step, Locale.ROOT);
    } catch (InvalidKeyException e) {
      throw new IllegalStateException("HMAC takes any bytes for a key", e);
    }
  }

  /** The latest step about now whose code this is. */
  static OptionalLong fitting(byte[] seed, String code, Instant now) {
    long here = step(now);
    byte[] typed = code.getBytes(StandardCharsets.US_ASCII);
    return LongStream.rangeClosed(here - STEPS_ASIDE, here + STEPS_ASIDE)
        .filter(
            step ->
                MessageDigest.isEqual(code(seed, step).getBytes(StandardCharsets.US_ASCII), typed))
        .max();
  }
}
