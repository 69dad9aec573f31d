package org.barreltally.web;

import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;

/**
 * Gives out the description of the interface (OpenAPI 3.0.3) as the build wrote it: YAML, or JSON
 * for who asks for that by {@code format=json}, by the header Accept or by the path's end. Quarkus
 * would read it at each start, and write it anew in both ways, whether or not somebody asks.
 */
@ApplicationScoped
public class WrittenDescription {

  /** Where the build puts it, less {@code JSON} or {@code YAML}. */
  public static final String FILE = "META-INF/quarkus-generated-openapi-doc.";

  /** Before Quarkus's own answer, behind everything that looks at a request first. */
  private static final int ORDER = 0;

  void register(@Observes Router router) {
    router
        .routeWithRegex("/openapi(\\.json|\\.yaml|\\.yml)?/?")
        .order(ORDER)
        .blockingHandler(this::answer, false);
  }

  private void answer(RoutingContext context) {
    if (context.request().method() == HttpMethod.OPTIONS) {
      context.next();
      return;
    }
    String format = asksForJson(context) ? "json" : "yaml";
    context
        .response()
        .putHeader("Content-Type", "application/" + format + ";charset=UTF-8")
        .end(Buffer.buffer(written(format)));
  }

  private static boolean asksForJson(RoutingContext context) {
    String path = context.normalizedPath();
    if (path.contains(".")) {
      return path.contains(".json");
    }
    String format = context.request().getParam("format");
    String accept = context.request().getHeader("Accept");
    return format == null
        ? accept != null && accept.contains("application/json")
        : format.equalsIgnoreCase("json");
  }

  private static byte[] written(String format) {
    ClassLoader classes = Thread.currentThread().getContextClassLoader();
    try (InputStream file = classes.getResourceAsStream(FILE + format.toUpperCase(Locale.ROOT))) {
      return file.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
