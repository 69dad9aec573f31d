package org.barreltally.stock.rounds;

import java.util.Collection;
import java.util.stream.Collectors;
import org.barreltally.refusal.Refusal;

/** A recount leaves out lines that differ, or has lines that were not asked for. */
public final class RecountIncomplete extends Refusal {

  private static final int MOST = 10;

  public RecountIncomplete(Collection<CountRound.Jar> missing, Collection<CountRound.Jar> beyond) {
    super(
        Kind.RULE,
        "recount-incomplete",
        "The recount has other lines",
        (missing.isEmpty() ? "" : "Still to be counted again: " + words(missing) + ". ")
            + (beyond.isEmpty() ? "" : "Agreed already, leave out: " + words(beyond) + "."),
        "lines");
  }

  private static String words(Collection<CountRound.Jar> jars) {
    return jars.stream()
        .sorted()
        .limit(MOST)
        .map(jar -> jar.container() + " of lot " + jar.lot())
        .collect(Collectors.joining(", "));
  }
}
