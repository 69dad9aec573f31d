package org.barreltally.shows.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Tells the demand for each kind of jar at a show to come. The records of all shows, weighted by
 * likeness, give the mean rate and its spread (maximum likelihood, sold-out shows censored); the
 * other shows alone give what is held likely of this one (empirical Bayes); this show's own records
 * then update it.
 */
final class Forecasting {

  /**
   * A guess, however little stands behind it, is taken to be right within a half of itself (the
   * square of that). No source: without it a first guess of 30 would ask for a hundred jars.
   */
  private static final double MOST_DOUBT = 0.25;

  /** The guess of a kind of jar, in pieces per unit of exposure. */
  private record Guessed(double rate, Forecast.Guess from) {}

  private final ComingShow coming;
  private final ShowSize size;
  private final Map<JarKind, ItemHistory> histories;
  private final FirstGuess guess;

  private Forecasting(
      ComingShow coming, ShowSize size, Map<JarKind, ItemHistory> histories, FirstGuess guess) {
    this.coming = coming;
    this.size = size;
    this.histories = histories;
    this.guess = guess;
  }

  /**
   * Forecasts of the kinds asked for. A kind is left out where nothing at all is known of it: no
   * history of any kind and no visitors to guess by.
   *
   * @param past takings of all kinds at all shows before this one
   */
  static Map<JarKind, Forecast> of(
      ComingShow coming, List<PastTaking> past, Set<JarKind> kinds, FirstGuess guess) {
    ShowSize size = ShowSize.of(past, coming);
    Map<JarKind, ItemHistory> histories = new TreeMap<>();
    past.stream()
        .collect(Collectors.groupingBy(PastTaking::jar))
        .forEach((jar, takings) -> histories.put(jar, ItemHistory.of(takings, coming, size)));
    return new Forecasting(coming, size, histories, guess).forecasts(kinds);
  }

  private Map<JarKind, Forecast> forecasts(Set<JarKind> kinds) {
    Set<JarKind> known = new TreeSet<>(histories.keySet());
    known.addAll(kinds);
    Map<JarKind, Fit> fits = new TreeMap<>();
    Map<JarKind, Guessed> guesses = new TreeMap<>();
    for (JarKind jar : known) {
      guessed(jar, known.size())
          .ifPresent(
              guessed -> {
                guesses.put(jar, guessed);
                fits.put(jar, Fitting.likeliest(history(jar).counts(), beforehand(guessed)));
              });
    }
    double share = share(fits);
    Map<JarKind, Forecast> forecasts = new TreeMap<>();
    for (JarKind jar : kinds) {
      if (fits.containsKey(jar)) {
        forecasts.put(jar, forecast(history(jar), fits.get(jar), guesses.get(jar), share));
      }
    }
    return forecasts;
  }

  private Forecast forecast(ItemHistory history, Fit fit, Guessed guessed, double share) {
    List<CensoredCount> others = history.othersCounts();
    double mean = Fitting.likeliestMean(others, fit.shape(), beforehand(guessed));
    double shows =
        Beforehand.GUESS_WEIGHT + others.stream().mapToDouble(CensoredCount::weight).sum();
    double exposure = size.of(coming);
    double doubtOfMean = Math.min(MOST_DOUBT, (1 / fit.shape() + 1 / (mean * exposure)) / shows);
    ShowRate rate = ShowRate.of(mean, Spread.of(fit.shape(), share), doubtOfMean);
    for (CensoredCount count : history.ownCounts()) {
      rate = rate.after(count);
    }
    return new Forecast(rate.demand(exposure), history.own(), others.size(), guessed.from());
  }

  private double share(Map<JarKind, Fit> fits) {
    List<BetweenShows.Revisited> revisited = new ArrayList<>();
    fits.forEach(
        (jar, fit) -> {
          List<List<CensoredCount>> repeats = history(jar).repeats();
          if (!repeats.isEmpty()) {
            revisited.add(new BetweenShows.Revisited(fit, repeats));
          }
        });
    return BetweenShows.share(revisited);
  }

  private ItemHistory history(JarKind jar) {
    return histories.getOrDefault(jar, ItemHistory.of(List.of(), coming, size));
  }

  private Beforehand beforehand(Guessed guessed) {
    return Beforehand.guessing(guessed.rate(), size.of(coming));
  }

  private Optional<Guessed> guessed(JarKind jar, int kinds) {
    Double own = guess.per100Visitors().get(jar);
    if (own != null && own > 0 && coming.visitors() != null) {
      return Optional.of(new Guessed(perExposure(own), Forecast.Guess.OWNER));
    }
    double like = likeRate(jar);
    if (like > 0) {
      return Optional.of(new Guessed(like, Forecast.Guess.OTHER_KINDS));
    }
    if (coming.visitors() == null || !(guess.allPer100Visitors() > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new Guessed(
            perExposure(guess.allPer100Visitors() / Math.max(1, kinds)), Forecast.Guess.SHARED));
  }

  private double perExposure(double per100Visitors) {
    double pieces = per100Visitors * coming.visitors() / ShowSize.HUNDRED;
    return pieces / size.of(coming);
  }

  /** What other grades of this container sold on average; without them, what all kinds did. */
  private double likeRate(JarKind jar) {
    double container = meanRate(jar.container());
    return container > 0 ? container : meanRate(null);
  }

  private double meanRate(String container) {
    return histories.entrySet().stream()
        .filter(e -> container == null || e.getKey().container().equals(container))
        .filter(e -> !e.getValue().all().isEmpty())
        .mapToDouble(e -> e.getValue().plainRate())
        .average()
        .orElse(0);
  }
}
