package org.barreltally.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.Optional;
import org.barreltally.people.internal.Secrets;
import org.barreltally.people.internal.Sessions;

/** Lets a browser stay signed in: the browser holds a random secret, the database its hash. */
@ApplicationScoped
public class PageSessions {

  private final Sessions sessions;
  private final Secrets secrets;

  @Inject
  PageSessions(Sessions sessions, Secrets secrets) {
    this.sessions = sessions;
    this.secrets = secrets;
  }

  /** Begins a session for {@code person} and gives the secret for the browser to hold. */
  public String begin(Person person) {
    String secret = secrets.secret("");
    sessions.begin(Secrets.hash(secret), person.id());
    return secret;
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
