package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Finds helpers, vehicles and table kits that would be at two shows at once. */
@ApplicationScoped
public class Clashes {

  /** Taken by whoever books, so that two bookings at one moment see each other. */
  private static final String ONE_AT_A_TIME =
      "SELECT CAST(pg_advisory_xact_lock(hashtext('shows are booked one at a time')) AS text)";

  /** Something that can be at one place only: its field, its word and where a booking names it. */
  private record Kind(String field, String what, Function<Booking, String> name) {}

  private static final List<Kind> KINDS =
      List.of(
          new Kind("helper", "Helper", Booking::helper),
          new Kind("vehicle", "Vehicle", Booking::vehicle),
          new Kind("tableKit", "Table kit", Booking::tableKit));

  private final EntityManager entities;
  private final Shows shows;

  Clashes(EntityManager entities, Shows shows) {
    this.entities = entities;
    this.shows = shows;
  }

  /** Lets one booking at a time go on, until its transaction ends. */
  void queue() {
    entities.createNativeQuery(ONE_AT_A_TIME).getSingleResult();
  }

  /**
   * Refuses a show whose helper, vehicle or kit is bound elsewhere; set-up time counts.
   *
   * @throws ShowClash naming each and the other show
   */
  void refuse(Show show) {
    List<ShowClash.Bound> bound = boundElsewhere(show);
    if (!bound.isEmpty()) {
      throw new ShowClash(bound);
    }
  }

  /** What of a show is bound to another one at the same time; nothing where it binds nothing. */
  @Transactional
  public List<ShowClash.Bound> boundElsewhere(Show show) {
    List<ShowClash.Bound> bound = new ArrayList<>();
    if (!show.state().binds()) {
      return bound;
    }
    for (Show other : shows.boundBetween(show.boundFrom(), show.boundTo())) {
      if (other.id().equals(show.id())) {
        continue;
      }
      for (Kind kind : KINDS) {
        String name = kind.name().apply(show.booking());
        if (name != null && same(name, kind.name().apply(other.booking()))) {
          bound.add(new ShowClash.Bound(kind.field(), kind.what(), name, other));
        }
      }
    }
    return bound;
  }

  /** Whether a change binds anything anew, so that it must be looked at again. */
  static boolean bindsMore(Show before, Show after) {
    return after.state().binds()
        && (!before.state().binds()
            || after.boundFrom().isBefore(before.boundFrom())
            || after.boundTo().isAfter(before.boundTo())
            || KINDS.stream()
                .anyMatch(
                    kind -> {
                      String name = kind.name().apply(after.booking());
                      return name != null && !same(name, kind.name().apply(before.booking()));
                    }));
  }

  private static boolean same(String one, String other) {
    return other != null && key(one).equals(key(other));
  }

  private static String key(String name) {
    return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }
}
