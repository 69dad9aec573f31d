package org.barreltally.web.access;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.AuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.quarkus.vertx.http.runtime.security.HttpCredentialTransport;
import io.smallrye.mutiny.Uni;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.barreltally.people.Person;
import org.barreltally.people.TokenScope;
import org.barreltally.people.TooManyAttempts;
import org.barreltally.web.problem.Problem;
import org.barreltally.web.problem.ProblemAnswer;
import org.barreltally.web.problem.Problems;
import org.jboss.logging.Logger;

/**
 * Asks at each door for what is due there. Without it a machine gets a problem document that says
 * how to sign in, and a browser is sent to the sign-in page; a form comes with what was typed in
 * it.
 */
@ApplicationScoped
class Doorkeeper implements HttpAuthenticationMechanism {

  private static final Logger LOG = Logger.getLogger(Doorkeeper.class);

  private static final String FAILURE = Doorkeeper.class.getName() + ".failure";
  private static final String CHALLENGE =
      "Basic realm=\"Barreltally\", charset=\"UTF-8\", Bearer realm=\"Barreltally\"";

  private final Problems problems;
  private final ProblemAnswer answer;

  @Inject
  Doorkeeper(Problems problems, ProblemAnswer answer) {
    this.problems = problems;
    this.answer = answer;
  }

  @Override
  public Uni<SecurityIdentity> authenticate(
      RoutingContext context, IdentityProviderManager identities) {
    return switch (Entrance.of(context)) {
      case OPEN -> Uni.createFrom().nullItem();
      case MACHINE ->
          isReadFromPage(context) ? bySession(context, identities) : byHeader(context, identities);
      case PAGE -> bySession(context, identities);
    };
  }

  /** Papers and lists under /api that a page links to: read with the page's session. */
  private static boolean isReadFromPage(RoutingContext context) {
    return context.request().getHeader("Authorization") == null
        && (context.request().method() == HttpMethod.GET
            || context.request().method() == HttpMethod.HEAD);
  }

  private static Uni<SecurityIdentity> byHeader(
      RoutingContext context, IdentityProviderManager identities) {
    String header = context.request().getHeader("Authorization");
    if (header == null) {
      return Uni.createFrom().nullItem();
    }
    return AuthorizationHeader.read(header, context.request().remoteAddress().hostAddress())
        .map(identities::authenticate)
        .orElseGet(() -> Uni.createFrom().failure(new AuthenticationFailedException()))
        .invoke(identity -> withinScope(identity, context))
        .onFailure(TooManyAttempts.class)
        .transform(
            tooMany -> {
              context.put(FAILURE, tooMany);
              return new AuthenticationFailedException();
            });
  }

  private static void withinScope(SecurityIdentity identity, RoutingContext context) {
    if (identity.getPrincipal() instanceof Person person
        && person.scope() == TokenScope.TABLE
        && !TableDoor.leadsTo(context.request().method().name(), context.normalizedPath())) {
      LOG.infof(
          "Refused by a phone's token: %s asked %s %s",
          person.id(), context.request().method(), context.request().path());
      context.put(FAILURE, new TokenTooNarrow());
      throw new AuthenticationFailedException();
    }
  }

  /** An ended session is nobody's: the sign-in page must open with it too. */
  private static Uni<SecurityIdentity> bySession(
      RoutingContext context, IdentityProviderManager identities) {
    Cookie cookie = context.request().getCookie(SessionCookie.name(context.request().isSSL()));
    if (cookie == null || cookie.getValue().isEmpty()) {
      return Uni.createFrom().nullItem();
    }
    return identities
        .authenticate(new SecretPresented(SecretPresented.Kind.SESSION, cookie.getValue()))
        .onFailure(AuthenticationFailedException.class)
        .recoverWithNull();
  }

  @Override
  public Uni<Boolean> sendChallenge(RoutingContext context) {
    if (Entrance.of(context) == Entrance.MACHINE) {
      answer.send(problem(context), context);
    } else if (EndedSession.isForm(context)) {
      return EndedSession.answer(context, () -> sendToSignIn(context));
    } else {
      sendToSignIn(context);
    }
    return Uni.createFrom().item(true);
  }

  private static void sendToSignIn(RoutingContext context) {
    context.response().setStatusCode(303).putHeader("Location", signIn(context)).end();
  }

  private Problem problem(RoutingContext context) {
    Throwable failure = context.get(FAILURE);
    return failure != null
        ? problems.of(failure)
        : problems.of(new AuthenticationFailedException()).with("WWW-Authenticate", CHALLENGE);
  }

  private static String signIn(RoutingContext context) {
    String wanted = context.request().uri();
    return context.request().method() != HttpMethod.GET || LocalPath.of(wanted).equals("/")
        ? "/sign-in"
        : "/sign-in?to=" + URLEncoder.encode(wanted, StandardCharsets.UTF_8);
  }

  @Override
  public Uni<ChallengeData> getChallenge(RoutingContext context) {
    return Uni.createFrom().item(new ChallengeData(401, "WWW-Authenticate", CHALLENGE));
  }

  @Override
  public Uni<HttpCredentialTransport> getCredentialTransport(RoutingContext context) {
    return Uni.createFrom()
        .item(
            new HttpCredentialTransport(
                HttpCredentialTransport.Type.AUTHORIZATION, "Basic, Bearer or session"));
  }

  @Override
  public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
    return Set.of(PasswordPresented.class, SecretPresented.class);
  }
}
