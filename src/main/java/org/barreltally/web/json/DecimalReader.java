package org.barreltally.web.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import java.io.IOException;
import java.math.BigDecimal;
import org.barreltally.refusal.InvalidField;

/**
 * Reads a decimal number exactly. Numbers that could not be written out in some 40 digits, such as
 * 1e999, are refused here so that no later arithmetic grows with them; tighter bounds belong to the
 * field.
 */
final class DecimalReader extends StdScalarDeserializer<BigDecimal> {

  private static final int DIGITS_MAX = 40;

  DecimalReader() {
    super(BigDecimal.class);
  }

  @Override
  public BigDecimal deserialize(JsonParser parser, DeserializationContext context)
      throws IOException {
    if (!parser.currentToken().isNumeric()) {
      return (BigDecimal) context.handleUnexpectedToken(BigDecimal.class, parser);
    }
    BigDecimal number = parser.getDecimalValue();
    long whole = (long) number.precision() - number.scale();
    if (number.scale() > DIGITS_MAX || whole > DIGITS_MAX) {
      throw new InvalidField("", "Give a number of fewer digits.");
    }
    return number.scale() < 0 ? number.setScale(0) : number;
  }
}
