package org.barreltally.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
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
 * request} is an example of what is sent.
 */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public class AnswerExamples implements OASFilter {

  private static final String FILE = "openapi/examples.json";
  private static final String JSON = "application/json";

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
      put(operation.getRequestBody().getContent(), examples.get(key + " request"));
    }
    if (examples.has(key)) {
      operation.getResponses().getAPIResponses().entrySet().stream()
          .filter(answer -> answer.getKey().startsWith("2"))
          .map(Map.Entry::getValue)
          .findFirst()
          .ifPresent(answer -> put(contentOf(answer), examples.get(key)));
    }
  }

  private static Content contentOf(APIResponse answer) {
    if (answer.getContent() == null) {
      answer.setContent(OASFactory.createContent());
    }
    return answer.getContent();
  }

  private static void put(Content content, JsonNode example) {
    MediaType type = content.getMediaType(JSON);
    if (type == null) {
      type = OASFactory.createMediaType();
      content.addMediaType(JSON, type);
    }
    type.setExample(example);
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
