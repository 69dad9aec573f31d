package org.barreltally.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.people.internal.Secrets;
import org.barreltally.people.internal.Sessions;
import org.barreltally.people.internal.Users;

/** Lets a browser stay signed in: the browser holds a random secret, the database its hash. */
@ApplicationScoped
public class PageSessions {

  /** Enough to tell one person's sessions apart. */
  private static final int ID_BYTES = 8;

  private final Passwords passwords;
  private final Sessions sessions;
  private final Secrets secrets;
  private final EntranceLog log;

  @Inject
  PageSessions(Passwords passwords, Sessions sessions, Secrets secrets, EntranceLog log) {
    this.passwords = passwords;
    this.sessions = sessions;
    this.secrets = secrets;
    this.log = log;
  }

  /**
   * A session that began.
   *
   * @param secret for the browser to hold
   */
  public record Begun(Person person, String secret) {}

  /**
   * Begins a session if name, password and, where one is asked for, code belong together.
   *
   * @param code of the person's phone or a spare one; may be null
   * @param address of the network it came from; null if that is not known
   * @throws TooManyAttempts if too many wrong ones were tried for this name or from this network
   */
  public Optional<Begun> begin(String name, String password, String code, String address) {
    return passwords.judge(name, password, code, address).flatMap(judged -> begin(judged, address));
  }

  /** Empty if what somebody was judged on was changed meanwhile. */
  Optional<Begun> begin(Users.Known judged, String address) {
    String secret = secrets.secret("");
    return sessions.begin(Secrets.hash(secret), judged, address)
        ? Optional.of(new Begun(judged.person(), secret))
        : Optional.empty();
  }

  /** Who holds this secret; empty when the session ended: after 12 hours unused or 30 days. */
  public Optional<Person> holder(String secret) {
    return sessions.use(Secrets.hash(secret));
  }

  /**
   * A session of somebody.
   *
   * @param id to name it by; tells nothing of its secret
   * @param usedAt exact to some minutes
   * @param from the address of the network it began from; null where that is not known
   * @param here whether it is the one that asks
   */
  public record Open(String id, Instant since, Instant usedAt, String from, boolean here) {}

  /**
   * Somebody's sessions, the last used first.
   *
   * @param secret of the session that asks; null if none does
   */
  public List<Open> of(UUID user, String secret) {
    return sessions.of(user).stream()
        .map(
            row ->
                new Open(id(row), row.createdAt(), row.usedAt(), row.address(), isOf(row, secret)))
        .toList();
  }

  /**
   * Ends one of somebody's sessions, or all but the one that asks.
   *
   * @param current the present password
   * @param session its id; null for all but the one that asks
   * @param secret of the session that asks; null if none does
   * @throws WrongPassword if {@code current} is not the present one
   * @throws UnknownSession if the person has none of that id
   */
  public void end(String name, String current, String session, String secret) {
    UUID user = passwords.present(name, current).person().id();
    List<Sessions.Row> ended =
        sessions.of(user).stream()
            .filter(row -> session == null ? !isOf(row, secret) : id(row).equals(session))
            .toList();
    if (session != null && ended.isEmpty()) {
      throw new UnknownSession();
    }
    ended.forEach(row -> sessions.end(row.hash()));
    if (!ended.isEmpty()) {
      log.keep(EntranceEvent.SIGNED_OUT, user, null);
    }
  }

  private static String id(Sessions.Row row) {
    return HexFormat.of().formatHex(row.hash(), 0, ID_BYTES);
  }

  private static boolean isOf(Sessions.Row row, String secret) {
    return secret != null && MessageDigest.isEqual(row.hash(), Secrets.hash(secret));
  }

  /** Ends the session, if there is one. */
  public void end(String secret) {
    sessions.end(Secrets.hash(secret));
  }

  /** How many one person may have at once; one more ends the one that was used longest ago. */
  public static int most() {
    return Sessions.PER_PERSON_MAX;
  }

  /** How long a browser may keep the secret at most. */
  public static Duration longest() {
    return Sessions.AGE_MAX;
  }
}
