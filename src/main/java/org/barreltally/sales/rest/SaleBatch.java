package org.barreltally.sales.rest;

import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.barreltally.sales.SaidSale;

/**
 * Sales as devices tell them: a single one, or a list.
 *
 * @param one whether it was a single sale
 */
@JsonDeserialize(using = SaleBatch.Reader.class)
public record SaleBatch(List<SaidSale> sales, boolean one) {

  /** What was told, for comparing requests. */
  @JsonValue
  Object told() {
    return one ? sales.get(0) : sales;
  }

  /** Reads either form; fields are named as they were sent. */
  static final class Reader extends JsonDeserializer<SaleBatch> {
    @Override
    public SaleBatch deserialize(JsonParser json, DeserializationContext context)
        throws IOException {
      if (!json.isExpectedStartArrayToken()) {
        return new SaleBatch(List.of(context.readValue(json, SaidSale.class)), true);
      }
      // a null in the list is refused later, by its number
      return new SaleBatch(Arrays.asList(context.readValue(json, SaidSale[].class)), false);
    }
  }
}
