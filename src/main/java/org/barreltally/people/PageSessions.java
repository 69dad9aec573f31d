package org.barreltally.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.Optional;
import org.barreltally.people.internal.Secrets;
import org.barreltally.people.internal.Sessions;
import org.barreltally.people.internal.Users;

/** Lets a browser stay signed in: the browser holds a random secret, the database its hash. */
@ApplicationScoped
public class PageSessions {

  private final Passwords passwords;
  private final Sessions sessions;
  private final Secrets secrets;

  @Inject
  PageSessions(Passwords passwords, Sessions sessions, Secrets secrets) {
    this.passwords = passwords;
    this.sessions = sessions;
    this.secrets = secrets;
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
    return passwords.judge(name, password, code, address).flatMap(this::begin);
  }

  /** Empty if the password on which somebody was judged was replaced meanwhile. */
  Optional<Begun> begin(Users.Known judged) {
    String secret = secrets.secret("");
    return sessions.begin(Secrets.hash(secret), judged.person().id(), judged.passwordHash())
        ? Optional.of(new Begun(judged.person(), secret))
        : Optional.empty();
  }

  /** Who holds this secret; empty when the session ended: after 12 hours unused or 30 days. */
  public Optional<Person> holder(String secret) {
    return sessions.use(Secrets.hash(secret));
  }

  /** Ends the session, if there is one. */
  public void end(String secret) {
    sessions.end(Secrets.hash(secret));
  }

  /** How long a browser may keep the secret at most. */
  public static Duration longest() {
    return Sessions.AGE_MAX;
  }
}
