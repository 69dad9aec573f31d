package org.barreltally.gifts;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A carrier's zones and days, as the owner read them and from when they hold.
 *
 * @param name of the carrier
 * @param validFrom null for today
 * @param weekdays on which it takes parcels and brings them; Monday to Friday if null
 * @param closed days on which it does neither; none if null
 */
public record CarrierTable(
    String name,
    LocalDate validFrom,
    List<Weekday> weekdays,
    List<LocalDate> closed,
    List<Zone> zones) {

  private static final Set<Weekday> USUAL = EnumSet.range(Weekday.MON, Weekday.FRI);

  /** A year of closed days does not happen: the search for a carrying day ends here. */
  private static final int DAYS_SEARCHED = 400;

  /** The zone that describes an address most closely; of equals the first. */
  Optional<Zone> zone(Address address) {
    return zones.stream()
        .filter(zone -> zone.closeness(address) >= 0)
        .max(
            Comparator.comparingInt((Zone zone) -> zone.closeness(address))
                .thenComparingInt(zone -> -zones.indexOf(zone)));
  }

  /**
   * The latest day on which a parcel can be handed over to arrive by a day: from the last carrying
   * day on or before it, so many carrying days back. Empty where the carrier does not carry.
   */
  Optional<LocalDate> latestSend(LocalDate wantedBy, Zone zone) {
    Optional<LocalDate> day = carryingDay(wantedBy);
    for (int back = 0; back < zone.days() && day.isPresent(); back++) {
      day = carryingDay(day.get().minusDays(1));
    }
    return day;
  }

  private Optional<LocalDate> carryingDay(LocalDate from) {
    for (int back = 0; back < DAYS_SEARCHED; back++) {
      LocalDate day = from.minusDays(back);
      if (carries(day)) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  private boolean carries(LocalDate day) {
    boolean open =
        weekdays == null
            ? USUAL.stream().anyMatch(w -> w.day() == day.getDayOfWeek())
            : weekdays.stream().anyMatch(w -> w.day() == day.getDayOfWeek());
    return open && (closed == null || !closed.contains(day));
  }
}
