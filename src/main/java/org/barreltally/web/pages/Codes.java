package org.barreltally.web.pages;

/** The code of a value of a listed kind, as the interface writes it. */
final class Codes {

  private Codes() {}

  /** What {@code code()} says of an enumeration's constant; anything else as text. */
  static String of(Object value) {
    if (value instanceof Enum<?> constant) {
      try {
        return (String) constant.getDeclaringClass().getMethod("code").invoke(constant);
      } catch (ReflectiveOperationException e) {
        return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      }
    }
    return value.toString();
  }
}
