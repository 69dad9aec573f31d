package org.barreltally.web.problem;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.Map;

/** The noes of HTTP itself, by status. */
final class HttpProblems {

  private static final Map<Integer, Problem> BY_STATUS =
      Map.ofEntries(
          entry(400, "bad-request", "The request cannot be read", "Mend its form and send again."),
          entry(
              401,
              "not-signed-in",
              "Sign in first",
              "Send a user name and password (HTTP Basic) or an access token (Bearer) that is"
                  + " valid. Who is asked for codes at sign-in needs a token."),
          entry(403, "not-allowed", "Not allowed", "Your role may not do this. Ask the owner."),
          entry(
              404,
              "not-found",
              "Nothing here",
              "There is nothing at this address. Look for a slip in it, or begin at the start."),
          entry(
              405,
              "method-not-allowed",
              "Not done this way",
              "This address does not take this method; the Allow header lists those it takes."),
          entry(
              406,
              "not-acceptable",
              "No such form of answer",
              "This address does not answer in the form that the Accept header asks for. Ask for"
                  + " application/json, where it is a list also text/csv, or send no Accept header."),
          entry(
              413,
              "body-too-large",
              "Too much at once",
              "The body is larger than this program reads. Send it in smaller parts."),
          entry(
              415,
              "unsupported-media-type",
              "No such form of body",
              "This address does not read bodies of this Content-Type. Send application/json."));

  private HttpProblems() {}

  /** The problem of a status below 500; a status without words of its own gets those of 400. */
  static Problem of(int status) {
    Problem known = BY_STATUS.get(status);
    if (known != null) {
      return known;
    }
    Problem plain = BY_STATUS.get(400);
    return new Problem(status, plain.code(), plain.title(), plain.detail());
  }

  /** The problem of a refused request; where the method was wrong, with those that are right. */
  static Problem of(Response refused) {
    Problem problem = of(refused.getStatus());
    return refused.getStatus() == Response.Status.METHOD_NOT_ALLOWED.getStatusCode()
        ? problem.with(HttpHeaders.ALLOW, AllowedMethods.here())
        : problem;
  }

  private static Map.Entry<Integer, Problem> entry(
      int status, String code, String title, String detail) {
    return Map.entry(status, new Problem(status, code, title, detail));
  }
}
