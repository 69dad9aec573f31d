package org.barreltally.sugarbush.boiling;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.barreltally.measure.Uncertain;
import org.barreltally.sugarbush.boiling.internal.LogReading;

/** What stood in tanks at the end of days, each asked for once. */
final class TankLog {

  private record Evening(int season, LocalDate on) {}

  private final LogReading log;
  private final Map<Evening, Map<String, Uncertain>> evenings = new HashMap<>();

  TankLog(LogReading log) {
    this.log = log;
  }

  /** Those of the tanks that by the log held less than nothing that evening. */
  List<ShortTank> shortOnes(int season, LocalDate on, Collection<String> tanks) {
    if (tanks.isEmpty()) {
      return List.of();
    }
    Map<String, Uncertain> standing =
        evenings.computeIfAbsent(new Evening(season, on), day -> log.tanks(day.season(), day.on()));
    return new TreeSet<>(tanks)
        .stream()
            .filter(tank -> standing.containsKey(tank) && standing.get(tank).value() < 0)
            .map(tank -> new ShortTank(tank, standing.get(tank).times(-1)))
            .toList();
  }
}
