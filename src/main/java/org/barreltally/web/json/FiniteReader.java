package org.barreltally.web.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import java.io.IOException;

/**
 * Reads a number that goes into the physics. One too large to be written out, such as 1e999, is
 * refused as {@link DecimalReader} refuses it, instead of becoming infinite.
 */
final class FiniteReader extends StdScalarDeserializer<Double> {

  private final DecimalReader decimals = new DecimalReader();

  FiniteReader() {
    super(Double.class);
  }

  @Override
  public Double deserialize(JsonParser parser, DeserializationContext context) throws IOException {
    return parser.currentToken().isNumeric()
        ? (Double) decimals.deserialize(parser, context).doubleValue()
        : (Double) context.handleUnexpectedToken(Double.class, parser);
  }
}
