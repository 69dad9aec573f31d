package org.barreltally.shows.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.barreltally.measure.ColorClass;

/**
 * How long a plan takes without database and web: forecasts of 12 kinds of jars from 200 past shows
 * (40 shows, five years each; about a third of the takings sold out), the newsvendor's numbers, and
 * the cut to load and table where both are scarce. Run by {@code plan.sh}.
 */
public final class PlanBench {

  private static final String[] SIZES = {"GAL", "HGAL", "QT", "PT", "HP", "G250"};
  private static final LocalDate DAY = LocalDate.of(2026, 10, 3);

  private PlanBench() {}

  public static void main(String[] arguments) {
    List<JarKind> kinds = new ArrayList<>();
    for (String size : SIZES) {
      kinds.add(new JarKind(size, ColorClass.AMBER));
      kinds.add(new JarKind(size, ColorClass.DARK));
    }
    List<PastTaking> past = past(kinds);
    ComingShow coming = new ComingShow("fair 7", DAY, 2, 2_500);
    FirstGuess guess = new FirstGuess(Map.of(), 2);
    double[] ms = new double[300];
    double[] cut = new double[ms.length];
    Allotment last = null;
    for (int n = 0; n < ms.length; n++) {
      long begin = System.nanoTime();
      Map<JarKind, Forecast> forecasts =
          Forecasting.of(coming, past, new TreeMap<>(byKind(kinds)).keySet(), guess);
      long forecast = System.nanoTime();
      last = Sharing.of(candidates(forecasts), 150, 240);
      long end = System.nanoTime();
      ms[n] = (end - begin) / 1e6;
      cut[n] = (end - forecast) / 1e6;
    }
    System.out.printf("takings %d, sold out %d%n", past.size(), soldOut(past));
    System.out.printf("first plan of a new JVM %.1f ms, tenth %.1f ms%n", ms[0], ms[9]);
    double[] warm = Arrays.copyOfRange(ms, 100, ms.length);
    double[] warmCut = Arrays.copyOfRange(cut, 100, ms.length);
    Arrays.sort(warm);
    Arrays.sort(warmCut);
    System.out.printf(
        "warm: median %.1f ms, 99 %% within %.1f ms; of it the cut %.1f ms (median)%n",
        warm[warm.length / 2], warm[warm.length * 99 / 100], warmCut[warm.length / 2]);
    System.out.printf(
        "pieces %s, gain %.2f, no way gains more than %.2f%n",
        last.pieces(), last.gain(), last.bound());
  }

  private static Map<JarKind, Integer> byKind(List<JarKind> kinds) {
    Map<JarKind, Integer> byKind = new TreeMap<>();
    kinds.forEach(kind -> byKind.put(kind, 0));
    return byKind;
  }

  private static List<PastTaking> past(List<JarKind> kinds) {
    Random random = new Random(200);
    List<PastTaking> past = new ArrayList<>();
    for (int show = 0; show < 40; show++) {
      double level = 0.5 + random.nextDouble();
      int visitors = 500 + random.nextInt(5_000);
      for (int year = 1; year <= 5; year++) {
        for (int kind = 0; kind < kinds.size(); kind++) {
          double mean = level * visitors / 1_000.0 * (3 + 2 * kind);
          long wanted = Math.max(0, Math.round(mean * (1 + 0.5 * random.nextGaussian())));
          long taken = Math.max(1, Math.round(mean * 1.2));
          past.add(
              new PastTaking(
                  "fair " + show,
                  DAY.minusYears(year).minusDays(show),
                  kinds.get(kind),
                  taken,
                  Math.min(wanted, taken),
                  wanted >= taken,
                  2,
                  visitors));
        }
      }
    }
    return past;
  }

  private static long soldOut(List<PastTaking> past) {
    return past.stream().filter(PastTaking::soldOut).count();
  }

  private static List<Candidate> candidates(Map<JarKind, Forecast> forecasts) {
    List<Candidate> candidates = new ArrayList<>();
    forecasts.forEach(
        (jar, forecast) -> {
          double kg = 0.4 + candidates.size() / 2 * 0.6;
          Costs costs = new Costs(3 + 3 * kg, 0.6);
          candidates.add(
              new Candidate(
                  forecast.demand(),
                  costs,
                  Newsvendor.quantity(forecast.demand(), costs),
                  500,
                  kg,
                  2.5 + kg / 2,
                  kg < 1 ? 4 : 2));
        });
    return candidates;
  }
}
