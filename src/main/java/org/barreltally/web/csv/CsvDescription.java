package org.barreltally.web.csv;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.jboss.jandex.AnnotationInstance;
import org.jboss.jandex.AnnotationTarget;
import org.jboss.jandex.ClassInfo;
import org.jboss.jandex.DotName;
import org.jboss.jandex.IndexView;
import org.jboss.jandex.MethodInfo;
import org.jboss.jandex.RecordComponentInfo;

/** Says of every list in the description of the interface that it is also answered as CSV. */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public class CsvDescription implements OASFilter {

  private static final String CSV = "text/csv";
  private static final DotName READING = DotName.createSimple(GET.class);
  private static final DotName ADDRESS = DotName.createSimple(Path.class);
  private static final DotName LIST = DotName.createSimple(List.class);

  private final Set<String> lists;

  public CsvDescription(IndexView index) {
    lists =
        index.getAnnotations(READING).stream()
            .map(AnnotationInstance::target)
            .filter(target -> target.kind() == AnnotationTarget.Kind.METHOD)
            .map(AnnotationTarget::asMethod)
            .filter(method -> answersItems(method, index))
            .map(CsvDescription::address)
            .collect(Collectors.toSet());
  }

  @Override
  public void filterOpenAPI(OpenAPI description) {
    description
        .getPaths()
        .getPathItems()
        .forEach(
            (address, path) -> {
              if (lists.contains(address)) {
                describe(path.getGET(), path.getGET().getResponses().getAPIResponse("200"));
              }
            });
  }

  private static void describe(Operation reading, APIResponse answer) {
    MediaType table = answer.getContent().getMediaType(CSV);
    if (table == null) {
      table = OASFactory.createMediaType();
      answer.getContent().addMediaType(CSV, table);
    }
    table.setSchema(OASFactory.createSchema().addType(Schema.SchemaType.STRING));
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

  private static boolean answersItems(MethodInfo method, IndexView index) {
    ClassInfo answered = index.getClassByName(method.returnType().name());
    RecordComponentInfo items =
        answered == null || !answered.isRecord() ? null : answered.recordComponent("items");
    return items != null && items.type().name().equals(LIST);
  }

  private static String address(MethodInfo method) {
    AnnotationInstance above = method.declaringClass().declaredAnnotation(ADDRESS);
    AnnotationInstance own = method.annotation(ADDRESS);
    String whole =
        (above == null ? "" : above.value().asString())
            + "/"
            + (own == null ? "" : own.value().asString());
    return ("/" + whole).replaceAll("/+", "/").replaceAll("(?<=.)/$", "");
  }
}
