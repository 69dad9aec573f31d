package org.barreltally.web.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.type.LogicalType;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;

/**
 * Reads JSON strictly: what a field takes is what it must be given, a field that does not exist is
 * refused, and sizes are bounded. Writes it plainly: no nulls, no exponents, dates as text.
 */
@Singleton
public class StrictJson implements ObjectMapperCustomizer {

  /**
   * Sizes beyond anything a sugarhouse writes, small enough to read without harm. Numbers may be
   * long here, because their field judges them and so can be named.
   */
  private static final StreamReadConstraints BOUNDS =
      StreamReadConstraints.builder()
          .maxNestingDepth(20)
          .maxStringLength(10_000)
          .maxNumberLength(1_000)
          .maxNameLength(200)
          .maxDocumentLength(1_000_000)
          .build();

  /** After all other customizers, so that none loosens this. */
  @Override
  public int priority() {
    return MINIMUM_PRIORITY;
  }

  @Override
  public void customize(ObjectMapper mapper) {
    mapper.getFactory().setStreamReadConstraints(BOUNDS);
    refuseWhatIsNotMeant(mapper);
    refuseCoercion(mapper);
    mapper
        .setDefaultPropertyInclusion(JsonInclude.Include.NON_NULL)
        .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
        .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
        .registerModule(new PlainTypes())
        .registerModule(new CodedEnums())
        .registerModule(new MeasureTypes())
        .registerModule(new MoneyTypes());
  }

  private static void refuseWhatIsNotMeant(ObjectMapper mapper) {
    mapper
        .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
        .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
        .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
        .enable(DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
        .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
        .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT);
  }

  @SuppressWarnings("deprecation") // setting a mapper feature after building has no other way
  private static void refuseCoercion(ObjectMapper mapper) {
    mapper.disable(MapperFeature.ALLOW_COERCION_OF_SCALARS);
    for (CoercionInputShape shape : CoercionInputShape.values()) {
      mapper.coercionConfigDefaults().setCoercion(shape, CoercionAction.Fail);
    }
    for (LogicalType type : new LogicalType[] {LogicalType.Float, LogicalType.Textual}) {
      mapper
          .coercionConfigFor(type)
          .setCoercion(
              CoercionInputShape.Integer,
              type == LogicalType.Float ? CoercionAction.TryConvert : CoercionAction.Fail);
    }
  }
}
