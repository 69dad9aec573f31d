package org.barreltally.people.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.UUID;
import java.util.regex.Pattern;

/** Takes codes at sign-in: each once, and no endless guessing. */
@ApplicationScoped
public class TakenCodes {

  /**
   * After so many wrong ones in a row beside the right password only a spare code is taken (NIST SP
   * 800-63B, 5.2.2: no more than 100).
   */
  static final int MISSES_MAX = 100;

  private static final Pattern TIMED = Pattern.compile("[0-9]{" + TimedCodes.DIGITS + "}");
  private static final Pattern BETWEEN = Pattern.compile("[\\s-]");

  /** More than any code with what people put between its groups. */
  private static final int TYPED_MAX = 60;

  private final CodeRows rows;
  private final Clock clock;

  @Inject
  TakenCodes(CodeRows rows, Clock clock) {
    this.rows = rows;
    this.clock = clock;
  }

  /**
   * Whether what was typed is a code of the person's phone or a spare one, not taken before; it is
   * taken then. Call it only beside the right password: who has not even that is not to use up
   * another's misses.
   */
  public boolean take(UUID user, String typed) {
    if (typed == null || typed.isBlank() || typed.length() > TYPED_MAX) {
      return false;
    }
    boolean taken = isTimed(typed) ? takeTimed(user, bare(typed)) : takeSpare(user, typed);
    if (!taken) {
      rows.miss(user);
    }
    return taken;
  }

  /** The step of a code for a seed that is being set up. */
  public OptionalLong step(byte[] seed, String typed) {
    return typed != null && typed.length() <= TYPED_MAX && isTimed(typed)
        ? TimedCodes.fitting(seed, bare(typed), clock.instant())
        : OptionalLong.empty();
  }

  /** Under what a spare code is kept, however its letters and groups were typed. */
  public static byte[] spareHash(String code) {
    return Secrets.hash(
        bare(code).toLowerCase(Locale.ROOT).replace('o', '0').replace('i', '1').replace('l', '1'));
  }

  private boolean takeTimed(UUID user, String code) {
    return rows.of(user)
        .filter(seed -> seed.isConfirmed() && seed.misses() < MISSES_MAX)
        .map(seed -> TimedCodes.fitting(seed.seed(), code, clock.instant()))
        .filter(step -> step.isPresent() && rows.take(user, step.getAsLong()))
        .isPresent();
  }

  private boolean takeSpare(UUID user, String typed) {
    return rows.takeSpare(user, spareHash(typed), clock.instant());
  }

  private static boolean isTimed(String typed) {
    return TIMED.matcher(bare(typed)).matches();
  }

  private static String bare(String typed) {
    return BETWEEN.matcher(typed).replaceAll("");
  }
}
