package org.barreltally.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.barreltally.people.CurrentUser;
import org.barreltally.web.request.CanonicalJson;
import org.barreltally.web.request.Requests;

/**
 * Said once, happened once: does what a request asks the first time its id is seen and gives the
 * first answer, byte for byte, at every repeat. All in one transaction: a repeat that arrives while
 * the first is at work waits for it; a refusal rolls everything back and is not remembered.
 */
@RequestScoped
public class Once {

  private static final Pattern UUID_FORM =
      Pattern.compile("\"?([0-9a-fA-F]{8}(?:-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12})\"?");

  private final Requests requests;
  private final CanonicalJson canonical;
  private final CurrentUser user;
  private final HttpServerRequest http;
  private final ObjectMapper mapper;

  @Inject
  Once(
      Requests requests,
      CanonicalJson canonical,
      CurrentUser user,
      HttpServerRequest http,
      ObjectMapper mapper) {
    this.requests = requests;
    this.canonical = canonical;
    this.user = user;
    this.http = http;
    this.mapper = mapper;
  }

  /**
   * Runs {@code action} unless this user's request with this id was answered before.
   *
   * @param idempotencyKey the header Idempotency-Key: a UUID, with or without the quotes of a
   *     structured field
   * @param request what was asked, as read from the body; compared as canonical JSON
   * @param action does the work and says the answer; what it refuses is thrown on
   * @throws IdMissing if the id is missing or no UUID
   * @throws IdReused if the id belongs to an earlier request with other content or address
   */
  public Response answer(String idempotencyKey, Object request, Supplier<Answer> action) {
    return answerWith(idempotencyKey, request, closing -> closing.close(action.get()));
  }

  /** Keeps the answer to a request. */
  public interface Closing {

    /** Keeps it together with what else the action writes, and spares a round trip. */
    void close(Answer answer, Requests.Writing write);

    /** Keeps it by itself. */
    void close(Answer answer);
  }

  /**
   * As {@link #answer}, for an action that keeps its answer together with its own rows.
   *
   * @param action does the work and closes with its answer, once
   */
  public Response answerWith(String idempotencyKey, Object request, Consumer<Closing> action) {
    UUID key = key(idempotencyKey);
    Requests.Asked asked =
        new Requests.Asked(
            user.id(), key, http.method().name() + " " + http.path(), canonical.hash(request));
    return QuarkusTransaction.joiningExisting().call(() -> response(asked, action));
  }

  private Response response(Requests.Asked asked, Consumer<Closing> action) {
    if (!requests.open(asked)) {
      return written(requests.answerTo(asked).orElseThrow(() -> new IdReused(asked.key())));
    }
    Kept kept = new Kept(asked);
    action.accept(kept);
    return written(kept.said);
  }

  private final class Kept implements Closing {
    private final Requests.Asked asked;
    private Requests.Said said;

    private Kept(Requests.Asked asked) {
      this.asked = asked;
    }

    @Override
    public void close(Answer answer, Requests.Writing write) {
      say(answer);
      requests.close(asked, said, write);
    }

    @Override
    public void close(Answer answer) {
      say(answer);
      requests.close(asked, said);
    }

    private void say(Answer answer) {
      said =
          new Requests.Said(
              answer.status(),
              answer.location() == null ? null : answer.location().toString(),
              json(answer.body()));
    }
  }

  private static Response written(Requests.Said said) {
    Response.ResponseBuilder response = Response.status(said.status());
    if (said.location() != null) {
      response.location(URI.create(said.location()));
    }
    if (said.body() != null) {
      response.entity(said.body()).type(MediaType.APPLICATION_JSON_TYPE);
    }
    return response.build();
  }

  private String json(Object body) {
    try {
      return body == null ? null : mapper.writeValueAsString(body);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("an answer cannot be written", e);
    }
  }

  private static UUID key(String header) {
    var form = UUID_FORM.matcher(header == null ? "" : header.strip());
    if (!form.matches()) {
      throw new IdMissing();
    }
    return UUID.fromString(form.group(1));
  }
}
