package org.barreltally.people;

import java.time.Instant;
import java.util.Optional;
import javax.sql.DataSource;
import org.barreltally.people.internal.PasswordHash;
import org.barreltally.people.internal.Secrets;
import org.barreltally.people.internal.Users;

/**
 * Lets somebody in again who has lost password or phone and whom no other owner can help: from the
 * machine itself, past the program. Whoever may read its data folder can do that.
 */
public final class LettingIn {

  private final Users users;
  private final int iterations;
  private final Secrets secrets = new Secrets();

  /**
   * @param book opens connections that may change people
   */
  public LettingIn(DataSource book) {
    this(book, PasswordHash.ITERATIONS);
  }

  LettingIn(DataSource book, int iterations) {
    this.users = new Users(book);
    this.iterations = iterations;
  }

  /**
   * Gives somebody a new password, asks for codes no longer and ends their sessions; the entrance
   * log keeps it. A program that runs may take the old password for five minutes more.
   *
   * @return the new password, kept nowhere; empty if nobody signs in by that name
   */
  public Optional<String> letIn(String name, Instant at) {
    String password = secrets.readablePassword();
    String hash = PasswordHash.of(password, secrets.salt(), iterations).stored();
    return users.letIn(name, hash, at) ? Optional.of(password) : Optional.empty();
  }
}
