package org.barreltally.people;

import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.util.UUID;
import org.barreltally.people.internal.Users;

/** Makes people for tests, each with a name of their own. */
@Singleton
public class PersonFixture {

  @Inject Users users;
  @Inject Passwords passwords;
  @Inject Clock clock;

  /** A new person of this role, by name. */
  public String with(String role, String password) {
    String name = "p" + UUID.randomUUID().toString().substring(0, 8);
    users.add(
        new Person(UUID.randomUUID(), name, "A person", Role.of(role)),
        passwords.hash(password),
        clock.instant());
    return name;
  }
}
