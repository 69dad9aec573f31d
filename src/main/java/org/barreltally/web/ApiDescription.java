package org.barreltally.web;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.List;
import org.barreltally.web.problem.Problem;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.security.SecurityScheme;
import org.eclipse.microprofile.openapi.models.tags.Tag;

/** What holds for every operation: how to sign in, and that any of them may answer a problem. */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public class ApiDescription implements OASFilter {

  private static final String PROBLEM = "Problem";

  @Override
  public void filterOpenAPI(OpenAPI description) {
    description.setInfo(
        OASFactory.createInfo()
            .title("Barreltally")
            .version("0.1")
            .description(
                "Barrels, jars, show tables and shares of a small maple syrup maker, in one ledger."
                    + " It helps your records; your state agency, weights-and-measures office,"
                    + " inspector and tax preparer decide."));
    Components components =
        description.getComponents() == null
            ? OASFactory.createComponents()
            : description.getComponents();
    components.addSecurityScheme("basic", http("basic", "User name and password"));
    components.addSecurityScheme("token", http("bearer", "A token made by POST /api/tokens"));
    components.addSchema(PROBLEM, problem());
    components.addResponse(
        PROBLEM,
        OASFactory.createAPIResponse()
            .description("A refusal (4xx) or a fault (5xx), as RFC 9457 describes")
            .content(problemContent()));
    description.setComponents(components);
    description.addSecurityRequirement(OASFactory.createSecurityRequirement().addScheme("basic"));
    description.addSecurityRequirement(OASFactory.createSecurityRequirement().addScheme("token"));
    describe(description, "People", "Who is signed in, and their access tokens");
  }

  @Override
  public Operation filterOperation(Operation operation) {
    if (operation.getResponses() == null) {
      operation.setResponses(OASFactory.createAPIResponses());
    }
    operation
        .getResponses()
        .setDefaultValue(OASFactory.createAPIResponse().ref("#/components/responses/" + PROBLEM));
    return operation;
  }

  private static void describe(OpenAPI description, String tag, String words) {
    List<Tag> tags = description.getTags();
    if (tags != null) {
      tags.stream().filter(t -> t.getName().equals(tag)).forEach(t -> t.setDescription(words));
    }
  }

  private static SecurityScheme http(String scheme, String words) {
    return OASFactory.createSecurityScheme()
        .type(SecurityScheme.Type.HTTP)
        .scheme(scheme)
        .description(words);
  }

  private static Content problemContent() {
    return OASFactory.createContent()
        .addMediaType(
            Problem.MEDIA_TYPE,
            OASFactory.createMediaType()
                .schema(OASFactory.createSchema().ref("#/components/schemas/" + PROBLEM)));
  }

  private static Schema problem() {
    return object("type", "title", "detail", "code")
        .addProperty("status", typed(Schema.SchemaType.INTEGER))
        .addProperty("errors", typed(Schema.SchemaType.ARRAY).items(object("field", "message")))
        .required(List.of("type", "title", "status", "detail", "code"));
  }

  private static Schema object(String... texts) {
    Schema object = typed(Schema.SchemaType.OBJECT);
    for (String text : texts) {
      object.addProperty(text, typed(Schema.SchemaType.STRING));
    }
    return object;
  }

  private static Schema typed(Schema.SchemaType type) {
    return OASFactory.createSchema().addType(type);
  }
}
