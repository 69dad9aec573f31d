package org.barreltally.web.access;

import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import org.barreltally.people.AccessTokens;
import org.barreltally.people.PageSessions;

/** Finds who a token or a session stands for. */
@ApplicationScoped
class SecretIdentity implements IdentityProvider<SecretPresented> {

  private final AccessTokens tokens;
  private final PageSessions sessions;

  @Inject
  SecretIdentity(AccessTokens tokens, PageSessions sessions) {
    this.tokens = tokens;
    this.sessions = sessions;
  }

  @Override
  public Class<SecretPresented> getRequestType() {
    return SecretPresented.class;
  }

  @Override
  public Uni<SecurityIdentity> authenticate(
      SecretPresented presented, AuthenticationRequestContext context) {
    String secret = presented.secret();
    if (presented.kind() == SecretPresented.Kind.SESSION) {
      return Identities.judged(context, () -> sessions.holder(secret));
    }
    return tokens
        .recall(secret)
        .map(person -> Uni.createFrom().item(Identities.of(person)))
        .orElseGet(() -> Identities.judged(context, () -> tokens.holder(secret)));
  }
}
