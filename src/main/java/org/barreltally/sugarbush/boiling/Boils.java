package org.barreltally.sugarbush.boiling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.sugarbush.boiling.internal.Entry;
import org.barreltally.sugarbush.boiling.internal.LogReading;

/** Boils with all that was said of them. */
@ApplicationScoped
public class Boils {

  private final LogReading log;

  Boils(LogReading log) {
    this.log = log;
  }

  /**
   * One boil.
   *
   * @throws UnknownEntry if there is none of that id
   */
  @Transactional
  public Boil at(UUID id) {
    Entry boil =
        log.find(id, EntryKind.BOIL).orElseThrow(() -> new UnknownEntry("boil", id, "/api/boils"));
    return whole(List.of(boil), null).get(0);
  }

  /** The newest first, of a season or of all (null), after an id (or null), at most so many. */
  @Transactional
  public List<Boil> list(Integer season, UUID after, int limit) {
    return whole(log.list(EntryKind.BOIL, season, after, limit), null);
  }

  /** All that count of a season. */
  public List<Boil> counting(int season) {
    return counting(season, null);
  }

  /**
   * All that count of a season. What tanks are short of is as the whole log has it, and no part of
   * what was known at a time.
   *
   * @param asOf what was entered and taken back by then counts; null for all
   */
  @Transactional
  public List<Boil> counting(int season, Instant asOf) {
    return whole(log.counting(EntryKind.BOIL, season, asOf), asOf);
  }

  private List<Boil> whole(List<Entry> boils, Instant asOf) {
    Map<UUID, List<Entry>> parts =
        log.parts(boils.stream().map(Entry::id).toList(), asOf).stream()
            .collect(Collectors.groupingBy(Entry::boil));
    TankLog tanks = new TankLog(log);
    return boils.stream()
        .map(boil -> boil(boil, parts.getOrDefault(boil.id(), List.of()), tanks))
        .toList();
  }

  private Boil boil(Entry boil, List<Entry> parts, TankLog tanks) {
    List<Boil.Fed> feeds = new ArrayList<>();
    List<Boil.Drawn> drawn = new ArrayList<>();
    List<Boil.Noted> notes = new ArrayList<>();
    for (Entry part : parts) {
      switch (part.kind()) {
        case FEED ->
            feeds.add(
                new Boil.Fed(
                    part.id(),
                    log.said(part, Feed.class),
                    part.bush(),
                    part.amount(Role.BOILED),
                    part.reversed()));
        case DRAW_OFF ->
            drawn.add(
                new Boil.Drawn(
                    part.id(),
                    log.said(part, DrawOff.class),
                    part.amount(Role.DRAWN),
                    part.reversed()));
        case NOTE ->
            notes.add(new Boil.Noted(part.id(), log.said(part, BoilNote.class), part.reversed()));
        default -> throw new IllegalStateException("no part of a boil: " + part.kind());
      }
    }
    return new Boil(
        boil.id(),
        boil.season(),
        boil.on(),
        log.said(boil, StartBoil.class),
        feeds,
        drawn,
        notes,
        boil.reversed() == null
            ? tanks.shortOnes(boil.season(), boil.on(), tanks(feeds))
            : List.of(),
        boil.reversed());
  }

  private static List<String> tanks(List<Boil.Fed> feeds) {
    return feeds.stream()
        .filter(fed -> fed.reversed() == null && fed.amount().tank() != null)
        .map(fed -> fed.amount().tank())
        .toList();
  }
}
