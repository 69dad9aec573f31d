package org.barreltally.web.json;

import com.fasterxml.jackson.databind.module.SimpleModule;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.UUID;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Dates, instants, identities, text and decimals, each in one form only. */
final class PlainTypes extends SimpleModule {

  private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  /** RFC 3339: seconds and offset are there, the fraction may be. */
  private static final Pattern INSTANT =
      Pattern.compile(
          "\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}(\\.\\d{1,9})?(Z|[+-]\\d{2}:\\d{2})");

  private static final Pattern IDENTITY =
      Pattern.compile("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}");

  PlainTypes() {
    super("plain-types");
    text(LocalDate.class, DATE, LocalDate::parse, "Give a date such as 2026-03-14.");
    text(
        Instant.class,
        INSTANT,
        text -> OffsetDateTime.parse(text).toInstant(),
        "Give an instant such as 2026-03-14T21:05:00Z.");
    text(
        UUID.class,
        IDENTITY,
        UUID::fromString,
        "Give a UUID such as 017f22e2-79b0-7cc3-98c4-dc0c0c07398f.");
    addDeserializer(
        String.class,
        new StrictText<>(
            String.class,
            PlainTypes::storable,
            "Remove control characters other than tab and line end."));
    addDeserializer(BigDecimal.class, new DecimalReader());
    addDeserializer(Double.class, new FiniteReader());
  }

  private <T> void text(Class<T> type, Pattern form, Function<String, T> reading, String mend) {
    addDeserializer(
        type, new StrictText<>(type, text -> reading.apply(matching(text, form)), mend));
  }

  private static String matching(String text, Pattern form) {
    if (!form.matcher(text).matches()) {
      throw new IllegalArgumentException("not of the form");
    }
    return text;
  }

  private static String storable(String text) {
    boolean bad =
        text.codePoints()
            .anyMatch(
                c ->
                    Character.getType(c) == Character.SURROGATE
                        || Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r');
    if (bad) {
      throw new IllegalArgumentException("a character that cannot be stored");
    }
    return text;
  }
}
