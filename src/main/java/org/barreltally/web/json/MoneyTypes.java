package org.barreltally.web.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.math.BigDecimal;
import org.barreltally.pricing.Money;

/**
 * Money is {@code {"amount": 28.00, "currency": "USD"}}; it says itself which amounts it refuses.
 */
final class MoneyTypes extends SimpleModule {

  MoneyTypes() {
    super("money-types");
    addDeserializer(Money.class, new MoneyReader());
  }

  private record Typed(BigDecimal amount, String currency) {}

  private static final class MoneyReader extends StdDeserializer<Money> {
    MoneyReader() {
      super(Money.class);
    }

    @Override
    public Money deserialize(JsonParser parser, DeserializationContext context) throws IOException {
      if (!parser.hasToken(JsonToken.START_OBJECT)) {
        return (Money) context.handleUnexpectedToken(Money.class, parser);
      }
      Typed typed = context.readValue(parser, Typed.class);
      return new Money(typed.amount(), typed.currency());
    }
  }
}
