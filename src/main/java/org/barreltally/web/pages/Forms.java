package org.barreltally.web.pages;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.barreltally.web.access.FormToken;
import org.barreltally.web.problem.Problem;
import org.barreltally.web.problem.Problems;
import org.barreltally.web.problem.Refused;

/**
 * Takes what a form sends: as the JSON of the interface, done by the interface's own resource, so
 * that a page knows every rule and refusal that the interface knows. Done, the browser is sent on
 * to a page that can be loaded again; refused, the form comes back with what was typed and with
 * what to mend beside each field.
 */
@ApplicationScoped
public class Forms {

  private final ObjectMapper mapper;
  private final Problems problems;
  private final FormToken token;
  private final PageFarm farm;

  @Inject
  Forms(ObjectMapper mapper, Problems problems, FormToken token, PageFarm farm) {
    this.mapper = mapper;
    this.problems = problems;
    this.token = token;
    this.farm = farm;
  }

  /** Does what a form asks, and says where the browser goes then. */
  @FunctionalInterface
  public interface Doing<T> {

    /**
     * @param key the form's id, the Idempotency-Key of what it asks
     * @param said what was typed, read as the interface reads JSON
     */
    URI does(String key, T said);
  }

  /**
   * Takes a form.
   *
   * @param said the fields as the browser sent them
   * @param record what the interface reads
   * @param again the page with the form, shown after a refusal
   */
  public <T> Response take(
      MultivaluedMap<String, String> said,
      Class<T> record,
      Doing<T> doing,
      Function<Form, TemplateInstance> again) {
    return take(said, record, record, doing, again);
  }

  /**
   * Takes a form for a record that is written otherwise than its parts are named.
   *
   * @param shape the record that says which fields are numbers, quantities and lists
   * @param record what the interface reads
   */
  public <T> Response take(
      MultivaluedMap<String, String> said,
      Class<?> shape,
      Class<T> record,
      Doing<T> doing,
      Function<Form, TemplateInstance> again) {
    return attempted(
        said,
        again,
        (form, typed) ->
            Response.seeOther(doing.does(form.id(), read(typed, shape, record))).build());
  }

  /** Does what a form asks, and answers with a page that cannot be loaded again. */
  @FunctionalInterface
  public interface Answering<T> {
    TemplateInstance answers(String key, T said);
  }

  /** Takes a form whose answer is shown once and kept nowhere, such as a new password. */
  public <T> Response answer(
      MultivaluedMap<String, String> said,
      Class<T> record,
      Answering<T> answering,
      Function<Form, TemplateInstance> again) {
    return attempted(
        said,
        again,
        (form, typed) ->
            Response.ok(answering.answers(form.id(), read(typed, record, record))).build());
  }

  /**
   * Takes a form whose resource reads the JSON itself.
   *
   * @param shape the record that says which fields are numbers, quantities and lists
   */
  public Response takeJson(
      MultivaluedMap<String, String> said,
      Class<?> shape,
      Doing<ObjectNode> doing,
      Function<Form, TemplateInstance> again) {
    return attempted(
        said,
        again,
        (form, typed) -> Response.seeOther(doing.does(form.id(), json(typed, shape))).build());
  }

  /** What a form in progress would ask, for a page that reckons along while somebody types. */
  public <T> T peek(MultivaluedMap<String, String> said, Class<T> record) {
    token.check(said.getFirst(FormToken.FIELD));
    return read(Typed.of(said), record, record);
  }

  /** The form as it was typed. */
  public Form form(MultivaluedMap<String, String> said) {
    return Form.typed(id(said), Typed.of(said));
  }

  /** The form as it was typed, with why it was refused. */
  public Form refused(MultivaluedMap<String, String> said, RuntimeException refusal) {
    return form(said).refused(mendable(refusal));
  }

  /** Why JSON cannot be read, as a refusal that comes back with the form. */
  public RuntimeException refusal(JsonProcessingException misread) {
    return new Refused(problems.of(misread));
  }

  private interface Attempt {
    Response of(Form form, Map<String, String> typed);
  }

  private Response attempted(
      MultivaluedMap<String, String> said,
      Function<Form, TemplateInstance> again,
      Attempt attempt) {
    token.check(said.getFirst(FormToken.FIELD));
    Map<String, String> typed = Typed.of(said);
    Form form = Form.typed(id(said), typed);
    if (typed.containsKey(FormToken.RESUMED)) {
      return Response.ok(again.apply(form)).build();
    }
    try {
      return attempt.of(form, typed);
    } catch (RuntimeException refusal) {
      Problem problem = mendable(refusal);
      return Response.status(problem.status()).entity(again.apply(form.refused(problem))).build();
    }
  }

  /** A defect goes on to the page for defects. */
  private Problem mendable(RuntimeException thrown) {
    Problem problem = problems.of(thrown);
    if (problem.status() >= 500) {
      throw new Refused(problem);
    }
    return problem;
  }

  private <T> T read(Map<String, String> typed, Class<?> shape, Class<T> record) {
    try {
      return mapper.readValue(mapper.writeValueAsBytes(json(typed, shape)), record);
    } catch (JsonProcessingException e) {
      throw refusal(e);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private ObjectNode json(Map<String, String> typed, Class<?> shape) {
    return new FormJson(typed, farm).of(shape);
  }

  private static String id(MultivaluedMap<String, String> said) {
    try {
      return UUID.fromString(said.getFirst("form")).toString();
    } catch (IllegalArgumentException | NullPointerException e) {
      return UUID.randomUUID().toString();
    }
  }
}
