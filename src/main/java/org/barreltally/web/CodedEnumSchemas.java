package org.barreltally.web;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.jboss.jandex.ClassInfo;
import org.jboss.jandex.DotName;
import org.jboss.jandex.IndexView;

/** Describes enumerations by the codes they travel under, not by the names of their constants. */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public class CodedEnumSchemas implements OASFilter {

  private final Map<List<Object>, List<Object>> codesByNames = new HashMap<>();

  public CodedEnumSchemas(IndexView index) {
    for (ClassInfo found : index.getAllKnownSubclasses(DotName.createSimple(Enum.class))) {
      if (found.name().toString().startsWith("org.barreltally.") && found.method("code") != null) {
        learn(found.name().toString());
      }
    }
  }

  @Override
  public Schema filterSchema(Schema schema) {
    List<Object> names = schema.getEnumeration();
    if (names != null) {
      schema.setEnumeration(codesByNames.getOrDefault(names, names));
    }
    return schema;
  }

  private void learn(String className) {
    try {
      Class<?> type = Class.forName(className, true, getClass().getClassLoader());
      List<Object> names = new ArrayList<>();
      List<Object> codes = new ArrayList<>();
      for (Object constant : type.getEnumConstants()) {
        names.add(((Enum<?>) constant).name());
        codes.add(type.getMethod("code").invoke(constant));
      }
      codesByNames.put(names, codes);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(className + " does not tell its codes", e);
    }
  }
}
