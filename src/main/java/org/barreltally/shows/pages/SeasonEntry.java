package org.barreltally.shows.pages;

import io.quarkus.qute.TemplateData;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.barreltally.shows.Booking;
import org.barreltally.shows.DayOrTime;
import org.barreltally.shows.Due;
import org.barreltally.shows.ShowClash;
import org.barreltally.shows.ShowState;
import org.barreltally.shows.rest.SeasonApi;
import org.barreltally.shows.rest.ShowView;

/**
 * Something of the season that stands on days: a show, its set-up, a day by which something is due.
 *
 * @param at the time of day by the farm's clock, or null
 * @param open whether it is still to be done
 * @param clashes what of the show is at another one then
 */
@TemplateData
public record SeasonEntry(
    Kind kind,
    LocalDate from,
    LocalDate to,
    Instant at,
    ShowView show,
    boolean open,
    List<String> clashes) {

  /** What stands there. */
  public enum Kind {
    APPLY,
    PAY,
    SET_UP,
    SHOW;

    /** {@code apply, pay, set-up, show}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public boolean isOff() {
    return show.state() == ShowState.DECLINED || show.state() == ShowState.CALLED_OFF;
  }

  static List<SeasonEntry> of(
      SeasonApi.View season,
      Map<UUID, List<ShowClash.Bound>> bound,
      Function<Instant, LocalDate> calendar) {
    List<SeasonEntry> entries = new ArrayList<>();
    for (SeasonApi.Entry entry : season.shows()) {
      ShowView show = entry.show();
      Booking booking = show.booking();
      List<String> clashes =
          bound.getOrDefault(show.id(), List.of()).stream().map(ShowClash.Bound::sentence).toList();
      entries.add(
          new SeasonEntry(
              Kind.SHOW,
              booking.starts(),
              booking.ends(),
              null,
              show,
              show.state().binds(),
              clashes));
      add(entries, Kind.SET_UP, booking.setUp(), show, show.state().binds(), calendar);
      if (booking.deadlines() != null) {
        add(
            entries,
            Kind.APPLY,
            booking.deadlines().apply(),
            show,
            isDue(season, show, Due.What.APPLY),
            calendar);
        add(
            entries,
            Kind.PAY,
            booking.deadlines().pay(),
            show,
            isDue(season, show, Due.What.PAY),
            calendar);
      }
    }
    entries.sort(Comparator.comparing(SeasonEntry::from).thenComparing(SeasonEntry::kind));
    return entries;
  }

  private static void add(
      List<SeasonEntry> entries,
      Kind kind,
      DayOrTime when,
      ShowView show,
      boolean open,
      Function<Instant, LocalDate> calendar) {
    if (when != null) {
      LocalDate day = when.dayBy(calendar);
      entries.add(new SeasonEntry(kind, day, day, when.at(), show, open, List.of()));
    }
  }

  private static boolean isDue(SeasonApi.View season, ShowView show, Due.What what) {
    return season.due().stream()
        .anyMatch(due -> due.what() == what && due.show().equals(show.id()));
  }
}
