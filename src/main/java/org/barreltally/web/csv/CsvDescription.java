package org.barreltally.web.csv;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;

/** Says of every list in the description of the interface that it is also answered as CSV. */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public class CsvDescription implements OASFilter {

  private static final String JSON = "application/json";
  private static final String SCHEMAS = "#/components/schemas/";

  @Override
  public void filterOpenAPI(OpenAPI description) {
    for (PathItem path : description.getPaths().getPathItems().values()) {
      Operation reading = path.getGET();
      if (reading != null && reading.getResponses() != null) {
        APIResponse answer = reading.getResponses().getAPIResponse("200");
        if (answer != null && answersItems(answer, description)) {
          describe(reading, answer);
        }
      }
    }
  }

  private static void describe(Operation reading, APIResponse answer) {
    answer
        .getContent()
        .addMediaType(
            "text/csv",
            OASFactory.createMediaType()
                .schema(OASFactory.createSchema().addType(Schema.SchemaType.STRING)));
    reading.addParameter(
        OASFactory.createParameter()
            .name("as")
            .in(Parameter.In.QUERY)
            .description(
                "csv answers the list as a table (RFC 4180, with a byte order mark for"
                    + " spreadsheets), as Accept: text/csv does without the mark: the whole list,"
                    + " or one part if limit is given, the header Link then naming the next.")
            .schema(
                OASFactory.createSchema()
                    .addType(Schema.SchemaType.STRING)
                    .addEnumeration("json")
                    .addEnumeration("csv")));
  }

  private static boolean answersItems(APIResponse answer, OpenAPI description) {
    if (answer.getContent() == null) {
      return false;
    }
    MediaType json = answer.getContent().getMediaType(JSON);
    Schema schema = json == null ? null : named(json.getSchema(), description);
    Map<String, Schema> fields = schema == null ? null : schema.getProperties();
    Schema items = fields == null ? null : named(fields.get("items"), description);
    return items != null
        && items.getType() != null
        && items.getType().contains(Schema.SchemaType.ARRAY);
  }

  /** The schema itself, where it only names one among the components. */
  private static Schema named(Schema schema, OpenAPI description) {
    if (schema == null || schema.getRef() == null || description.getComponents() == null) {
      return schema;
    }
    return description
        .getComponents()
        .getSchemas()
        .get(schema.getRef().replaceFirst("^" + SCHEMAS, ""));
  }
}
