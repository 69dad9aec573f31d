package org.barreltally.pricing.rest;

import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.barreltally.pricing.Audience;
import org.barreltally.pricing.ProductClass;
import org.barreltally.refusal.InvalidField;

/** Reads parameters of a query, refusing by name what cannot be read. */
final class Asked {

  private Asked() {}

  static Audience audience(String code) {
    return oneOf(Audience.values(), Audience::code, code, "audience");
  }

  static ProductClass productClass(String code) {
    return oneOf(ProductClass.values(), ProductClass::code, code, "productClass");
  }

  private static <T> T oneOf(T[] all, Function<T, String> codeOf, String code, String name) {
    return Arrays.stream(all)
        .filter(one -> codeOf.apply(one).equals(code))
        .findFirst()
        .orElseThrow(
            () ->
                new InvalidField(
                    name,
                    Arrays.stream(all)
                        .map(codeOf)
                        .collect(Collectors.joining(", ", "Give one of ", "."))));
  }
}
