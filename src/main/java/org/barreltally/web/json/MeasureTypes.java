package org.barreltally.web.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.math.BigDecimal;
import org.barreltally.measure.Pressure;
import org.barreltally.measure.PressureUnit;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;

/**
 * A quantity is {@code {"value": 486.5, "unit": "lb"}}; the measure itself says what it refuses.
 */
final class MeasureTypes extends SimpleModule {

  MeasureTypes() {
    super("measure-types");
    addDeserializer(Quantity.class, new QuantityReader());
    addDeserializer(Pressure.class, new PressureReader());
  }

  private record Typed(BigDecimal value, String unit) {}

  private static final class QuantityReader extends StdDeserializer<Quantity> {
    QuantityReader() {
      super(Quantity.class);
    }

    @Override
    public Quantity deserialize(JsonParser parser, DeserializationContext context)
        throws IOException {
      if (!parser.hasToken(JsonToken.START_OBJECT)) {
        return (Quantity) context.handleUnexpectedToken(Quantity.class, parser);
      }
      Typed typed = context.readValue(parser, Typed.class);
      return new Quantity(typed.value(), Unit.of(typed.unit()));
    }
  }

  private static final class PressureReader extends StdDeserializer<Pressure> {
    PressureReader() {
      super(Pressure.class);
    }

    @Override
    public Pressure deserialize(JsonParser parser, DeserializationContext context)
        throws IOException {
      if (!parser.hasToken(JsonToken.START_OBJECT)) {
        return (Pressure) context.handleUnexpectedToken(Pressure.class, parser);
      }
      Typed typed = context.readValue(parser, Typed.class);
      return new Pressure(typed.value(), PressureUnit.of(typed.unit()));
    }
  }
}
