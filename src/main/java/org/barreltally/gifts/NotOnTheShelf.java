package org.barreltally.gifts;

import java.util.Map;
import java.util.stream.Collectors;
import org.barreltally.refusal.Refusal;

/** Promised jars are not at the place from which they were to be picked, or only held ones are. */
public final class NotOnTheShelf extends Refusal {

  /**
   * @param elsewhere pieces not held, at other own rooms
   */
  public NotOnTheShelf(
      int n, Jar jar, String place, long there, long wanted, Map<String, Long> elsewhere) {
    super(
        Kind.CONFLICT,
        "short-of-stock",
        "Not there to be picked",
        "For recipient %d, %d × %s are wanted and %d that are not held stand at %s. %s Nothing was picked."
            .formatted(
                n,
                wanted,
                jar.words(),
                there,
                place,
                elsewhere.isEmpty()
                    ? "Count the shelf, or look at what is held."
                    : "Name another place to pick from: "
                        + elsewhere.entrySet().stream()
                            .map(e -> e.getKey() + " has " + e.getValue())
                            .collect(Collectors.joining(", "))
                        + "."));
  }
}
