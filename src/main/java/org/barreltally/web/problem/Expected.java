package org.barreltally.web.problem;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** What a field takes, in a person's words instead of a class name. */
@ApplicationScoped
class Expected {

  private static final Map<Class<?>, String> WORDS =
      Map.of(
          String.class, "a text in quotes",
          LocalDate.class, "a date in quotes, such as \"2026-03-14\"",
          Instant.class, "an instant in quotes, such as \"2026-03-14T21:05:00Z\"",
          UUID.class, "a UUID in quotes",
          Boolean.class, "true or false, without quotes",
          boolean.class, "true or false, without quotes");

  private static final Set<Class<?>> WHOLE =
      Set.of(int.class, Integer.class, long.class, Long.class, short.class, BigInteger.class);

  private static final Set<Class<?>> DECIMAL =
      Set.of(BigDecimal.class, double.class, Double.class, float.class, Float.class);

  private final ObjectMapper mapper;

  @Inject
  Expected(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  /** For example "a whole number, without quotes". */
  String of(Class<?> type) {
    if (type == null) {
      return "a value of another type";
    }
    if (WORDS.containsKey(type)) {
      return WORDS.get(type);
    }
    if (WHOLE.contains(type)) {
      return "a whole number, without quotes";
    }
    if (DECIMAL.contains(type)) {
      return "a number, without quotes";
    }
    if (type.isEnum()) {
      return "one of " + allowed(type) + ", in quotes";
    }
    return Collection.class.isAssignableFrom(type) || type.isArray()
        ? "a list in [ ]"
        : "an object in { }";
  }

  /** The sentence for a text that is none of an enumeration's values. */
  Optional<String> unknownValue(MismatchedInputException mismatch) {
    Class<?> type = mismatch.getTargetType();
    return type != null
            && type.isEnum()
            && mismatch instanceof InvalidFormatException format
            && format.getValue() instanceof String
        ? Optional.of("Give one of " + allowed(type) + ".")
        : Optional.empty();
  }

  private String allowed(Class<?> type) {
    return Arrays.stream(type.getEnumConstants())
        .map(constant -> mapper.convertValue(constant, String.class))
        .collect(Collectors.joining(", "));
  }
}
