package org.barreltally.web.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Response;

/**
 * Writes a problem as its asker reads it: a page for a browser that opened a page, a problem
 * document for everyone else and always under {@code /api}.
 */
@ApplicationScoped
public class ProblemAnswer {

  @CheckedTemplate(basePath = "web")
  static class Templates {
    static native TemplateInstance problem(Problem problem);
  }

  private record Body(String mediaType, String text) {}

  private final ObjectMapper mapper;

  @Inject
  ProblemAnswer(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  /** The answer for REST resources and pages. */
  public Response response(Problem problem, RoutingContext context) {
    Body body = body(problem, context);
    Response.ResponseBuilder response =
        Response.status(problem.status()).entity(body.text()).type(body.mediaType());
    problem.headers().forEach(response::header);
    return response.build();
  }

  /** Answers a request that did not get as far as a resource. */
  public void send(Problem problem, RoutingContext context) {
    if (context.response().ended() || context.response().headWritten()) {
      return;
    }
    Body body = body(problem, context);
    problem.headers().forEach(context.response()::putHeader);
    context
        .response()
        .setStatusCode(problem.status())
        .putHeader("Content-Type", body.mediaType())
        .end(body.text());
  }

  private Body body(Problem problem, RoutingContext context) {
    if (wantsPage(context)) {
      return new Body("text/html;charset=UTF-8", Templates.problem(problem).render());
    }
    try {
      return new Body(Problem.MEDIA_TYPE, mapper.writeValueAsString(problem.document()));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a problem document is plain data", e);
    }
  }

  private static boolean wantsPage(RoutingContext context) {
    String accept = context.request().getHeader("Accept");
    String path = context.normalizedPath();
    return accept != null
        && accept.contains("text/html")
        && !path.equals("/api")
        && !path.startsWith("/api/");
  }
}
