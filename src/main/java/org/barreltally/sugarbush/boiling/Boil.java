package org.barreltally.sugarbush.boiling;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;

/**
 * A boil with its parts, those taken back included.
 *
 * @param said as it was begun, with the target that held; its feeds stand in {@code feeds}
 * @param shortTanks tanks it took from that by the log hold less than nothing at the day's end
 * @param reversed null while it counts
 */
public record Boil(
    UUID id,
    int season,
    LocalDate on,
    StartBoil said,
    List<Fed> feeds,
    List<Drawn> drawOffs,
    List<Noted> notes,
    List<ShortTank> shortTanks,
    Reversed reversed) {

  /** What went into the pan. */
  public record Fed(UUID id, Feed said, String bush, Amount amount, Reversed reversed) {}

  /** What was drawn off. */
  public record Drawn(UUID id, DrawOff said, Amount amount, Reversed reversed) {}

  /** What was said of it later. */
  public record Noted(UUID id, BoilNote said, Reversed reversed) {}

  public Boil {
    feeds = List.copyOf(feeds);
    drawOffs = List.copyOf(drawOffs);
    notes = List.copyOf(notes);
    shortTanks = List.copyOf(shortTanks);
  }

  /** When it ended; null while it goes on. */
  public Instant endedAt() {
    return newest(BoilNote::endedAt, said.endedAt());
  }

  /** The fuel burnt, in the maker's own measure; may be null. */
  public String fuel() {
    return newest(BoilNote::fuel, said.fuel());
  }

  private <T> T newest(Function<BoilNote, T> part, T first) {
    return notes.stream()
        .filter(note -> note.reversed() == null)
        .map(note -> part.apply(note.said()))
        .filter(Objects::nonNull)
        .reduce((one, later) -> later)
        .orElse(first);
  }

  /** What could be expected of its feeds, beside what was drawn. */
  public ExpectedSyrup expected() {
    return ExpectedSyrup.of(
        feeds.stream().filter(fed -> fed.reversed() == null).map(Fed::amount).toList(),
        drawOffs.stream().filter(drawn -> drawn.reversed() == null).map(Drawn::amount).toList(),
        said.targetBrix().doubleValue());
  }
}
