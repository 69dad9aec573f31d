package org.barreltally.measure;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.barreltally.refusal.InvalidField;

/** The kebab-case codes by which enum constants are known outside: {@code VERY_DARK, very-dark}. */
final class Codes {

  private Codes() {}

  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The constant of a code, or a refusal that names the field and lists the codes. */
  static <E extends Enum<E>> E find(Class<E> type, String code, String field) {
    for (E constant : type.getEnumConstants()) {
      if (of(constant).equals(code)) {
        return constant;
      }
    }
    throw new InvalidField(
        field,
        Arrays.stream(type.getEnumConstants())
            .map(Codes::of)
            .collect(Collectors.joining(", ", "Give one of ", ".")));
  }
}
