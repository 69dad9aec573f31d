package org.barreltally.web.access;

import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import org.barreltally.people.Passwords;

/** Finds who a name and password belong to: at once if it was judged lately, else slowly. */
@ApplicationScoped
class PasswordIdentity implements IdentityProvider<PasswordPresented> {

  private final Passwords passwords;

  @Inject
  PasswordIdentity(Passwords passwords) {
    this.passwords = passwords;
  }

  @Override
  public Class<PasswordPresented> getRequestType() {
    return PasswordPresented.class;
  }

  @Override
  public Uni<SecurityIdentity> authenticate(
      PasswordPresented presented, AuthenticationRequestContext context) {
    return passwords
        .recall(presented.name(), presented.password())
        .map(person -> Uni.createFrom().item(Identities.of(person)))
        .orElseGet(
            () ->
                Identities.judged(
                    context,
                    () ->
                        passwords.judge(
                            presented.name(), presented.password(), presented.address())));
  }
}
