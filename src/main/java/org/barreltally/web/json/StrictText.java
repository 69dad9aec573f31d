package org.barreltally.web.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import java.io.IOException;
import java.time.DateTimeException;
import java.util.function.Function;
import org.barreltally.refusal.InvalidField;

/** Reads a value that is written as text in exactly one form; nothing but text is taken. */
final class StrictText<T> extends StdScalarDeserializer<T> {

  private final transient Function<String, T> reading;
  private final String mend;

  /**
   * @param reading reads the text or throws an {@link IllegalArgumentException} or {@link
   *     DateTimeException}, which becomes a refusal of the field, or a refusal
   * @param mend the sentence that says what to give
   */
  StrictText(Class<T> type, Function<String, T> reading, String mend) {
    super(type);
    this.reading = reading;
    this.mend = mend;
  }

  @Override
  public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
    if (!parser.hasToken(JsonToken.VALUE_STRING)) {
      return type().cast(context.handleUnexpectedToken(type(), parser));
    }
    try {
      return reading.apply(parser.getText());
    } catch (IllegalArgumentException | DateTimeException e) {
      throw new InvalidField("", mend);
    }
  }

  @SuppressWarnings("unchecked")
  private Class<T> type() {
    return (Class<T>) handledType();
  }
}
