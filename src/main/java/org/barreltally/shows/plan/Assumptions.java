package org.barreltally.shows.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says what a plan takes for granted because nobody said better, so that the owner can mend it. */
final class Assumptions {

  private final List<String> said = new ArrayList<>();

  Assumptions(
      PlanQuestion asked,
      Worth worth,
      Map<JarKind, PackedJar> packed,
      Planning.Load load,
      Map<JarKind, Forecast> forecasts) {
    costs(asked.costs());
    String unpriced =
        packed.keySet().stream()
            .filter(jar -> worth.price(jar).isEmpty())
            .map(JarKind::words)
            .collect(Collectors.joining(", "));
    note(!unpriced.isEmpty(), "No price is known for " + unpriced + ": weighed by its contents.");
    String guessed =
        packed.entrySet().stream()
            .filter(jar -> jar.getValue().emptyIsGuessed())
            .map(jar -> jar.getKey().container())
            .distinct()
            .collect(Collectors.joining(", "));
    note(!guessed.isEmpty(), "What " + guessed + " weighs empty is guessed: give emptyWeight.");
    note(load.carries() == null, "Nobody said what the vehicle carries: weight cuts nothing.");
    note(
        asked.displayPercent() == null,
        "15 % of the shelves is kept for awards and pictures (displayPercent).");
    note(
        asked.refills() == null,
        "All jars stand on the table at once; say refills if it is filled up from boxes.");
    note(
        asked.jarsPer100Visitors() == null
            && forecasts.values().stream()
                .anyMatch(f -> f.isGuessedOnly() && f.guess() == Forecast.Guess.SHARED),
        "The first guess is two jars to a hundred visitors, shared over all kinds alike; nobody"
            + " measured it (jarsPer100Visitors, firstGuess).");
  }

  List<String> said() {
    return List.copyOf(said);
  }

  private void costs(PlanQuestion.CostsSaid costs) {
    note(costs.marginPercent() == null, "Half the price is taken as margin (costs.marginPercent).");
    note(
        costs.runningOut() == null,
        "Running out costs the margin and nothing more (costs.runningOut).");
    note(
        costs.cartingBack() == null,
        "Carting a jar back costs a twentieth of its price (costs.cartingBack).");
  }

  private void note(boolean taken, String words) {
    if (taken) {
      said.add(words);
    }
  }
}
