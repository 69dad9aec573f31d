package org.barreltally.web.access;

import io.quarkus.arc.Arc;
import io.quarkus.arc.ManagedContext;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.smallrye.mutiny.Uni;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * Answers a form that came after its session had ended with the sign-in page, which carries what
 * was typed. Nothing of the form is done.
 */
final class EndedSession {

  private static final String FORM = "application/x-www-form-urlencoded";

  /** Passwords and codes are typed there, which no page is to carry along. */
  private static final Pattern OWN_SECRETS = Pattern.compile("/me(/.*)?");

  private EndedSession() {}

  /** Whether this is a form of a page whose input can be kept. */
  static boolean isForm(RoutingContext context) {
    String type = context.request().getHeader(HttpHeaders.CONTENT_TYPE);
    String accept = context.request().getHeader(HttpHeaders.ACCEPT);
    return context.request().method() == HttpMethod.POST
        && type != null
        && type.toLowerCase(Locale.ROOT).startsWith(FORM)
        && accept != null
        && accept.contains("text/html")
        && !LocalPath.of(context.request().uri()).equals("/")
        && !OWN_SECRETS.matcher(context.request().path()).matches();
  }

  /**
   * Reads the form, up to its bound, and answers with the sign-in page.
   *
   * @param otherwise answers where the form is more than is kept
   * @return done once the answer is sent
   */
  static Uni<Boolean> answer(RoutingContext context, Runnable otherwise) {
    return Uni.createFrom()
        .emitter(
            done ->
                read(
                    context,
                    kept -> {
                      if (kept.isEmpty()) {
                        otherwise.run();
                        done.complete(true);
                      } else {
                        show(context, kept, () -> done.complete(true));
                      }
                    }));
  }

  private static void read(RoutingContext context, Consumer<KeptForm> then) {
    Buffer body = Buffer.buffer();
    context
        .request()
        .handler(
            part -> {
              // what goes beyond is read to its end and thrown away
              if (body.length() <= KeptForm.BYTES_MAX) {
                body.appendBuffer(part);
              }
            })
        .endHandler(
            ended ->
                then.accept(
                    body.length() > KeptForm.BYTES_MAX
                        ? KeptForm.none()
                        : KeptForm.read(body.toString()).orElseGet(KeptForm::none)));
    context.request().resume();
  }

  private static void show(RoutingContext context, KeptForm kept, Runnable done) {
    String to = context.request().uri();
    context
        .vertx()
        .executeBlocking(
            () ->
                inRequest(
                    context,
                    () -> Arc.container().instance(SignInPage.class).get().ended(to, kept)))
        .onSuccess(
            page ->
                context
                    .response()
                    .setStatusCode(401)
                    .putHeader(HttpHeaders.CONTENT_TYPE, "text/html;charset=UTF-8")
                    .end(page))
        .onFailure(context::fail)
        .onComplete(shown -> done.run());
  }

  /** Pages are written in the language of the request at work. */
  private static String inRequest(RoutingContext context, Supplier<String> write) {
    ManagedContext work = Arc.container().requestContext();
    boolean begun = !work.isActive();
    if (begun) {
      work.activate();
    }
    try {
      Arc.container().instance(CurrentVertxRequest.class).get().setCurrent(context);
      return write.get();
    } finally {
      if (begun) {
        work.terminate();
      }
    }
  }
}
