package org.barreltally.web.access;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.Optional;
import org.barreltally.people.PageSessions;
import org.barreltally.people.Passwords;
import org.barreltally.people.Person;
import org.barreltally.people.TooManyAttempts;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Signing in to the pages, and out again. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SignInPage {

  private static final int NAME_SHOWN_MAX = 80;

  @CheckedTemplate(basePath = "web")
  static class Templates {
    static native TemplateInstance signIn(Form form);
  }

  /**
   * What the form shows: the name typed before, what was wrong beside its field, and where to go
   * then.
   */
  record Form(String username, String refusal, String to) {}

  private final Passwords passwords;
  private final PageSessions sessions;

  @Inject
  SignInPage(Passwords passwords, PageSessions sessions) {
    this.passwords = passwords;
    this.sessions = sessions;
  }

  @GET
  @Path("sign-in")
  @Operation(hidden = true)
  public TemplateInstance form(@QueryParam("to") String to) {
    return Templates.signIn(new Form("", null, LocalPath.of(to)));
  }

  @POST
  @Path("sign-in")
  @Operation(hidden = true)
  public Response signIn(
      @FormParam("username") String username,
      @FormParam("password") String password,
      @FormParam("to") String to,
      @Context HttpHeaders headers,
      @Context UriInfo uri) {
    String before = secret(headers, uri);
    if (blank(username) || blank(password)) {
      return refused(username, to, 400, "Give both the user name and the password.").build();
    }
    Optional<Person> person;
    try {
      person = passwords.judge(username, password);
    } catch (TooManyAttempts attempts) {
      long seconds = attempts.retryAfter().toSeconds();
      return refused(
              username, to, 429, "Too many wrong passwords. Try again in " + seconds + " seconds.")
          .header("Retry-After", seconds)
          .build();
    }
    if (person.isEmpty()) {
      return refused(username, to, 401, "User name and password do not fit. Try again.").build();
    }
    if (!blank(before)) {
      sessions.end(before);
    }
    return Response.seeOther(URI.create(LocalPath.of(to)))
        .cookie(SessionCookie.holding(sessions.begin(person.get()), isHttps(uri)))
        .build();
  }

  @POST
  @Path("sign-out")
  @Operation(hidden = true)
  public Response signOut(@Context HttpHeaders headers, @Context UriInfo uri) {
    String secret = secret(headers, uri);
    if (!blank(secret)) {
      sessions.end(secret);
    }
    return Response.seeOther(URI.create("/sign-in"))
        .cookie(SessionCookie.dropped(isHttps(uri)))
        .build();
  }

  private static Response.ResponseBuilder refused(
      String username, String to, int status, String refusal) {
    String shown = username == null ? "" : username;
    String bounded = shown.substring(0, Math.min(shown.length(), NAME_SHOWN_MAX));
    Form form = new Form(bounded, refusal, LocalPath.of(to));
    return Response.status(status).entity(Templates.signIn(form));
  }

  private static boolean blank(String text) {
    return text == null || text.isBlank();
  }

  private static String secret(HttpHeaders headers, UriInfo uri) {
    Cookie cookie = headers.getCookies().get(SessionCookie.name(isHttps(uri)));
    return cookie == null ? null : cookie.getValue();
  }

  private static boolean isHttps(UriInfo uri) {
    return "https".equals(uri.getRequestUri().getScheme());
  }
}
