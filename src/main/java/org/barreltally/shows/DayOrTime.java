package org.barreltally.shows;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.function.Function;
import org.barreltally.refusal.InvalidField;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A day, or an instant where the hour matters; exactly one of the two is there.
 *
 * @param day as {@code 2026-10-03}
 * @param at as {@code 2026-10-03T11:00:00Z}
 */
@Schema(
    type = SchemaType.STRING,
    implementation = String.class,
    description = "A date, or an instant (RFC 3339) where the hour matters")
public record DayOrTime(LocalDate day, Instant at) {

  private static final int DATE_LENGTH = 10;
  private static final String MEND =
      "Give a date such as 2026-10-03, or an instant such as 2026-10-03T11:00:00Z.";

  public DayOrTime {
    if ((day == null) == (at == null)) {
      throw new IllegalArgumentException("a day or an instant");
    }
  }

  public static DayOrTime on(LocalDate day) {
    return new DayOrTime(day, null);
  }

  /**
   * From text alone, which no object can take the place of.
   *
   * @throws InvalidField if it is neither
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  static DayOrTime of(JsonNode said) {
    if (!said.isTextual()) {
      throw new InvalidField("", MEND);
    }
    String text = said.textValue();
    try {
      return text.length() == DATE_LENGTH
          ? on(LocalDate.parse(text))
          : new DayOrTime(null, OffsetDateTime.parse(text).toInstant());
    } catch (DateTimeException neither) {
      throw new InvalidField("", MEND);
    }
  }

  /** The day it is on, by a calendar that tells the day of an instant. */
  public LocalDate dayBy(Function<Instant, LocalDate> calendar) {
    return day != null ? day : calendar.apply(at);
  }

  @Override
  @JsonValue
  public String toString() {
    return day != null ? day.toString() : at.toString();
  }
}
