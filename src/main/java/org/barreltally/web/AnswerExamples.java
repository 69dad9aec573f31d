package org.barreltally.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;

/**
 * Puts answers of the invented season into the description, so that every operation shows an
 * example. They lie in {@code openapi/examples.json} by method and path; a key that ends in {@code
 * request} is an example of what is sent, one that ends in {@code text/csv} of a list as CSV.
 */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public class AnswerExamples implements OASFilter {

  private static final String FILE = "openapi/examples.json";
  private static final String JSON = "application/json";
  private static final String CSV = "text/csv";

  @Override
  public void filterOpenAPI(OpenAPI description) {
    JsonNode examples = read();
    description
        .getPaths()
        .getPathItems()
        .forEach(
            (path, item) ->
                item.getOperations()
                    .forEach((method, operation) -> add(examples, method, path, operation)));
  }

  private static void add(
      JsonNode examples, PathItem.HttpMethod method, String path, Operation operation) {
    String key = method.name() + " " + path;
    if (examples.has(key + " request")) {
      put(operation.getRequestBody().getContent(), JSON, examples.get(key + " request"));
    }
    for (String form : List.of(JSON, CSV)) {
      String answered = form.equals(JSON) ? key : key + " " + form;
      if (examples.has(answered)) {
        operation.getResponses().getAPIResponses().entrySet().stream()
            .filter(answer -> answer.getKey().startsWith("2"))
            .map(Map.Entry::getValue)
            .findFirst()
            .ifPresent(answer -> put(contentOf(answer), form, examples.get(answered)));
      }
    }
  }

  private static Content contentOf(APIResponse answer) {
    if (answer.getContent() == null) {
      answer.setContent(OASFactory.createContent());
    }
    return answer.getContent();
  }

  private static void put(Content content, String form, JsonNode example) {
    MediaType type = content.getMediaType(form);
    if (type == null) {
      type = OASFactory.createMediaType();
      content.addMediaType(form, type);
    }
    type.setExample(example.isTextual() ? example.textValue() : example);
  }

  private static JsonNode read() {
    try (InputStream in =
        Thread.currentThread().getContextClassLoader().getResourceAsStream(FILE)) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
