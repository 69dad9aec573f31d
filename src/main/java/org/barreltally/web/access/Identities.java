package org.barreltally.web.access;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.smallrye.mutiny.Uni;
import java.util.Optional;
import java.util.function.Supplier;
import org.barreltally.people.Person;

/** Makes the framework's identity of a person. */
final class Identities {

  private Identities() {}

  static SecurityIdentity of(Person person) {
    return QuarkusSecurityIdentity.builder()
        .setPrincipal(person)
        .addRole(person.role().code())
        .build();
  }

  /** The identity of whom {@code slow} finds on a thread that may wait; fails if nobody. */
  static Uni<SecurityIdentity> judged(
      AuthenticationRequestContext context, Supplier<Optional<Person>> slow) {
    return context.runBlocking(
        () -> slow.get().map(Identities::of).orElseThrow(AuthenticationFailedException::new));
  }
}
