package org.barreltally.web.access;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import io.vertx.core.http.HttpServerRequest;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
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
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.function.Function;
import org.barreltally.people.Codes;
import org.barreltally.people.EntranceEvent;
import org.barreltally.people.EntranceLog;
import org.barreltally.people.PageSessions;
import org.barreltally.people.TooManyAttempts;
import org.barreltally.web.pages.Words;
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

    static native TemplateInstance backToForm(String to, String token, KeptForm kept);
  }

  /**
   * What the form shows.
   *
   * @param username typed before
   * @param refusal what was wrong, or null
   * @param to where to go then
   * @param kept what was typed in a form before, to be carried along
   * @param codes whether anybody is asked for a code beside the password
   */
  record Form(String username, String refusal, String to, KeptForm kept, boolean codes) {}

  private final PageSessions sessions;
  private final Codes codes;
  private final EntranceLog log;
  private final HttpServerRequest request;

  @Inject
  SignInPage(PageSessions sessions, Codes codes, EntranceLog log, HttpServerRequest request) {
    this.sessions = sessions;
    this.codes = codes;
    this.log = log;
    this.request = request;
  }

  @GET
  @Path("sign-in")
  @Operation(hidden = true)
  public TemplateInstance form(@QueryParam("to") String to) {
    return Templates.signIn(typed("", to, KeptForm.none()));
  }

  @POST
  @Path("sign-in")
  @Operation(hidden = true)
  public Response signIn(
      @FormParam("username") String username,
      @FormParam("password") String password,
      @FormParam("code") String code,
      @FormParam("to") String to,
      @Context HttpHeaders headers,
      @Context UriInfo uri) {
    String before = secret(headers, uri);
    Form typed = typed(username, to, KeptForm.none());
    return judged(
        typed,
        password,
        code,
        before,
        secret ->
            Response.seeOther(URI.create(typed.to()))
                .cookie(SessionCookie.holding(secret, isHttps(uri)))
                .build());
  }

  /** Signs in who had typed in a form, and offers the way back to it. */
  @POST
  @Path("sign-in/back")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response signInAndBack(
      MultivaluedMap<String, String> said, @Context HttpHeaders headers, @Context UriInfo uri) {
    String before = secret(headers, uri);
    Form typed = typed(said.getFirst("username"), said.getFirst("to"), KeptForm.carried(said));
    return judged(
        typed,
        said.getFirst("password"),
        said.getFirst("code"),
        before,
        secret ->
            Response.ok(Templates.backToForm(typed.to(), FormToken.of(secret), typed.kept()))
                .cookie(SessionCookie.holding(secret, isHttps(uri)))
                .build());
  }

  /** The page for somebody whose session ended while they typed. */
  String ended(String to, KeptForm kept) {
    return Templates.signIn(typed("", to, kept)).render();
  }

  private Response judged(
      Form typed,
      String password,
      String code,
      String before,
      Function<String, Response> signedIn) {
    if (blank(typed.username()) || blank(password)) {
      return refused(typed, 400, Words.of("access.give-both")).build();
    }
    try {
      return sessions
          .begin(typed.username(), password, code, address())
          .map(begun -> signedIn.apply(instead(before, begun)))
          .orElseGet(() -> refused(typed, 401, doNotFit(typed)).build());
    } catch (TooManyAttempts attempts) {
      long seconds = attempts.retryAfter().toSeconds();
      return refused(typed, 429, Words.count("access.too-many", seconds))
          .header("Retry-After", seconds)
          .build();
    }
  }

  private static String doNotFit(Form typed) {
    return Words.of(typed.codes() ? "access.do-not-fit-codes" : "access.do-not-fit");
  }

  /** Ends the session before, if there is one, and gives the secret of the new one. */
  private String instead(String before, PageSessions.Begun begun) {
    if (!blank(before)) {
      sessions.end(before);
    }
    log.keep(EntranceEvent.SIGNED_IN, begun.person().id(), address());
    return begun.secret();
  }

  @POST
  @Path("sign-out")
  @Operation(hidden = true)
  public Response signOut(@Context HttpHeaders headers, @Context UriInfo uri) {
    String secret = secret(headers, uri);
    if (!blank(secret)) {
      sessions
          .holder(secret)
          .ifPresent(person -> log.keep(EntranceEvent.SIGNED_OUT, person.id(), address()));
      sessions.end(secret);
    }
    return Response.seeOther(URI.create("/sign-in"))
        .cookie(SessionCookie.dropped(isHttps(uri)))
        .build();
  }

  private String address() {
    return request.remoteAddress().hostAddress();
  }

  private Form typed(String username, String to, KeptForm kept) {
    return new Form(
        username == null ? "" : username, null, LocalPath.of(to), kept, codes.areUsed());
  }

  private static Response.ResponseBuilder refused(Form typed, int status, String refusal) {
    String name = typed.username();
    String bounded = name.substring(0, Math.min(name.length(), NAME_SHOWN_MAX));
    Form form = new Form(bounded, refusal, typed.to(), typed.kept(), typed.codes());
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
