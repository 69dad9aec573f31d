package org.barreltally.people;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.interceptor.Interceptor;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.books.Books;
import org.barreltally.people.internal.Secrets;
import org.barreltally.people.internal.Users;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * At the first start nobody could sign in, so the user {@code owner} is made: with the password of
 * {@code BARRELTALLY_OWNER_PASSWORD}, or with a random one that is printed once. When two copies
 * start at once, the one whose row stands prints.
 */
@ApplicationScoped
public class FirstOwner {

  /** The name the first owner signs in with. */
  public static final String NAME = "owner";

  private static final Logger LOG = Logger.getLogger(FirstOwner.class);

  private final Users users;
  private final Passwords passwords;
  private final Secrets secrets;
  private final Clock clock;
  private final Books books;
  private final Optional<String> chosen;

  @Inject
  FirstOwner(
      Users users,
      Passwords passwords,
      Secrets secrets,
      Clock clock,
      Books books,
      @ConfigProperty(name = "barreltally.owner-password") Optional<String> chosen) {
    this.users = users;
    this.passwords = passwords;
    this.secrets = secrets;
    this.clock = clock;
    this.books = books;
    this.chosen = chosen;
  }

  void onStart(@Observes @Priority(Interceptor.Priority.LIBRARY_BEFORE) StartupEvent start) {
    books.each(book -> welcome().map(book::before).ifPresent(System.out::println));
  }

  /** Makes the owner if there is no user yet; gives the line to print, if there is one. */
  Optional<String> welcome() {
    if (users.any()) {
      return Optional.empty();
    }
    chosen
        .filter(password -> password.length() < Passwords.LENGTH_MIN)
        .ifPresent(
            password ->
                LOG.warnf(
                    "BARRELTALLY_OWNER_PASSWORD has fewer than %d characters; change it soon",
                    Passwords.LENGTH_MIN));
    String password = chosen.orElseGet(secrets::readablePassword);
    Person owner = new Person(UUID.randomUUID(), NAME, "Owner", Role.OWNER);
    boolean added = users.add(owner, passwords.hash(password), clock.instant());
    return added && chosen.isEmpty()
        ? Optional.of("Sign in as " + NAME + " with password " + password)
        : Optional.empty();
  }
}
