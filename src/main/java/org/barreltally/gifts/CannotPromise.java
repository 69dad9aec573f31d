package org.barreltally.gifts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.barreltally.refusal.Refusal;

/** Not everything that is wanted can be promised, substitutes counted; nothing was reserved. */
public final class CannotPromise extends Refusal {

  private static final int SHOWN_MAX = 200;

  private final transient List<Need> unmet;

  /**
   * @param unmet what is short, by recipient
   * @param available what could be promised of each jar
   */
  CannotPromise(List<Need> unmet, Map<Jar, Long> available) {
    super(
        Kind.CONFLICT,
        "short-of-stock",
        "Not enough to promise",
        said(unmet, available),
        unmet.stream()
            .limit(SHOWN_MAX)
            .map(
                need ->
                    new FieldError(
                        "recipients[" + (need.n() - 1) + "].box",
                        "%d × %s is short.".formatted(need.pieces(), words(need))))
            .toList());
    this.unmet = List.copyOf(unmet);
  }

  /** What is short, by recipient. */
  public List<Need> unmet() {
    return unmet;
  }

  private static String said(List<Need> unmet, Map<Jar, Long> available) {
    Map<List<Jar>, Long> byChoices = new LinkedHashMap<>();
    unmet.forEach(need -> byChoices.merge(need.choices(), need.pieces(), Long::sum));
    return byChoices.entrySet().stream()
            .map(
                short_ ->
                    "%d × %s short (can be promised: %s)"
                        .formatted(
                            short_.getValue(),
                            short_.getKey().get(0).words(),
                            short_.getKey().stream()
                                .map(
                                    jar ->
                                        "%s %d"
                                            .formatted(
                                                jar.words(), available.getOrDefault(jar, 0L)))
                                .collect(Collectors.joining(", "))))
            .collect(Collectors.joining("; "))
        + ". Nothing was reserved. Can more, allow a substitute, or take recipients out.";
  }

  private static String words(Need need) {
    String others =
        need.choices().stream().skip(1).map(Jar::words).collect(Collectors.joining(" or "));
    return others.isEmpty()
        ? need.wanted().words()
        : need.wanted().words() + " (or " + others + ")";
  }
}
