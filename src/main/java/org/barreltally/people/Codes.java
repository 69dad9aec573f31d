package org.barreltally.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import java.util.UUID;
import java.util.stream.Stream;
import org.apache.commons.codec.binary.Base32;
import org.barreltally.people.internal.CodeRows;
import org.barreltally.people.internal.RecentPasswords;
import org.barreltally.people.internal.Secrets;
import org.barreltally.people.internal.Sessions;
import org.barreltally.people.internal.TakenCodes;

/**
 * Codes beside the password, for whoever wants them: a phone makes one each half minute from a seed
 * and the clock (RFC 6238), with or without signal. Once they are confirmed, pages ask for one at
 * each sign-in, and a password alone opens nothing: scripts need a token. Spare codes, each good
 * once, are for the day on which the phone is lost.
 */
@ApplicationScoped
public class Codes {

  /** How many spare codes are made. */
  public static final int SPARE = 8;

  private static final int SPARE_GROUPS = 5;

  /** 160 bits, as RFC 4226 (4, R6) recommends. */
  private static final int SEED_BYTES = 20;

  private final Passwords passwords;
  private final CodeRows rows;
  private final TakenCodes taken;
  private final Secrets secrets;
  private final Sessions sessions;
  private final RecentPasswords recent;
  private final EntranceLog log;
  private final Clock clock;

  @Inject
  Codes(
      Passwords passwords,
      CodeRows rows,
      TakenCodes taken,
      Secrets secrets,
      Sessions sessions,
      RecentPasswords recent,
      EntranceLog log,
      Clock clock) {
    this.passwords = passwords;
    this.rows = rows;
    this.taken = taken;
    this.secrets = secrets;
    this.sessions = sessions;
    this.recent = recent;
    this.log = log;
    this.clock = clock;
  }

  /**
   * How it stands with somebody's codes.
   *
   * @param on whether they are asked for at sign-in
   * @param since null where they are not
   * @param spareLeft spare codes that were not used
   */
  public record State(boolean on, Instant since, int spareLeft) {}

  /**
   * What a phone needs to make codes.
   *
   * @param seed in Base 32 (RFC 4648), to be typed
   * @param address the same to be scanned, an {@code otpauth} address
   */
  public record Begun(String seed, String address) {}

  /** Whether anybody is asked for a code at sign-in. */
  public boolean areUsed() {
    return rows.any();
  }

  /** How it stands with somebody's codes. */
  public State state(UUID user) {
    return rows.of(user)
        .filter(CodeRows.Seed::isConfirmed)
        .map(seed -> new State(true, seed.confirmedAt(), rows.spareLeft(user)))
        .orElse(new State(false, null, 0));
  }

  /**
   * Makes a seed, which asks for nothing until a code of it is confirmed.
   *
   * @throws WrongPassword if {@code current} is not the present one
   * @throws CodesAlreadyOn if codes are asked for
   */
  @Transactional
  public Begun begin(String name, String current) {
    UUID user = passwords.present(name, current).person().id();
    byte[] seed = secrets.bytes(SEED_BYTES);
    if (!rows.begin(user, seed, clock.instant())) {
      throw new CodesAlreadyOn();
    }
    return begun(name, seed);
  }

  /**
   * The seed that waits for its first code.
   *
   * @throws NoCodesBegun if none does
   */
  public Begun waiting(UUID user, String name) {
    return begun(name, unconfirmed(user));
  }

  /**
   * Asks for codes from now on and ends the person's sessions.
   *
   * @return spare codes, shown here and never again
   * @throws NoCodesBegun if no seed was made
   * @throws WrongCode if the code is not of that seed and about now
   */
  @Transactional
  public List<String> confirm(UUID user, String code) {
    OptionalLong step = taken.step(unconfirmed(user), code);
    if (step.isEmpty() || !rows.confirm(user, step.getAsLong(), clock.instant())) {
      throw new WrongCode();
    }
    List<String> spare =
        Stream.generate(() -> secrets.readable(SPARE_GROUPS)).limit(SPARE).toList();
    rows.addSpare(user, spare.stream().map(TakenCodes::spareHash).toList());
    signOut(user);
    log.keepTogether(EntranceEvent.CODES_ON, user, null);
    return spare;
  }

  /**
   * Asks for codes no longer and ends the person's sessions.
   *
   * @throws WrongPassword if {@code current} is not the present one
   * @throws WrongCode if neither a code of the phone nor a spare one is given
   */
  public void stop(String name, String current, String code) {
    UUID user = passwords.presentWithCode(name, current, code).person().id();
    if (rows.remove(user)) {
      signOut(user);
      log.keepTogether(EntranceEvent.CODES_OFF, user, null);
    }
  }

  private byte[] unconfirmed(UUID user) {
    return rows.of(user)
        .filter(seed -> !seed.isConfirmed())
        .map(CodeRows.Seed::seed)
        .orElseThrow(NoCodesBegun::new);
  }

  private void signOut(UUID user) {
    recent.forget(user);
    sessions.endAllOf(user);
  }

  private static Begun begun(String name, byte[] seed) {
    String text = new Base32().encodeToString(seed);
    String person = URLEncoder.encode(name, StandardCharsets.UTF_8);
    return new Begun(
        text, "otpauth://totp/Barreltally:%s?secret=%s&issuer=Barreltally".formatted(person, text));
  }
}
