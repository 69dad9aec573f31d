package org.barreltally.watch;

import java.time.LocalDate;
import java.util.Locale;
import org.barreltally.measure.ColorClass;

/**
 * Something to look at. What does not belong to its kind is null.
 *
 * @param about what it is, within its kind: lot, tag, place, pool or supply
 * @param since from when on it counts
 * @param days how long that is
 * @param reason in plain words, with what to do
 * @param note what else is known of such a case, with where it comes from
 */
public record WatchItem(
    Kind kind,
    String about,
    String lot,
    String tag,
    String place,
    String container,
    ColorClass grade,
    String supply,
    LocalDate since,
    Long days,
    String reason,
    String note) {

  /** Why it is on the list, the most pressing first. */
  public enum Kind {
    POOL_BELOW_ZERO,
    STOREROOM_WARM,
    SUPPLY_LOW,
    NEAR_GRADE_LINE,
    JARS_BY_AGE,
    BARREL_BY_AGE,
    HELD_LONG;

    /** {@code pool-below-zero, storeroom-warm, …}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  static WatchItem ofLot(
      Kind kind, StandingLot lot, LocalDate since, Long days, String reason, String note) {
    return new WatchItem(
        kind,
        lot.name(),
        lot.lot(),
        lot.tag(),
        null,
        null,
        lot.grade(),
        null,
        since,
        days,
        reason,
        note);
  }

  static WatchItem ofPool(String container, ColorClass grade, String reason) {
    String about = container + " " + grade.code();
    return new WatchItem(
        Kind.POOL_BELOW_ZERO,
        about,
        null,
        null,
        null,
        container,
        grade,
        null,
        null,
        null,
        reason,
        null);
  }

  static WatchItem ofPlace(String place, LocalDate since, String reason, String note) {
    return new WatchItem(
        Kind.STOREROOM_WARM, place, null, null, place, null, null, null, since, null, reason, note);
  }

  static WatchItem ofSupply(String supply, String reason) {
    return new WatchItem(
        Kind.SUPPLY_LOW, supply, null, null, null, null, null, supply, null, null, reason, null);
  }

  /** Its place in the list. */
  public String key() {
    return kind.ordinal() + " " + about;
  }
}
