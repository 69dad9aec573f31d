package org.barreltally.shows;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Where a show stands between the application and the settlement. */
public enum ShowState {
  APPLIED,
  ACCEPTED,
  DECLINED,
  PAID,
  PACKED,
  RUNNING,
  CLOSED,
  SETTLED,
  CALLED_OFF;

  /**
   * What may follow what. A show that was declined may still get a place from the waiting list; one
   * that is settled may be opened for a late count; only calling off ends it for good.
   */
  private static final Map<ShowState, Set<ShowState>> NEXT = new EnumMap<>(ShowState.class);

  static {
    NEXT.put(APPLIED, EnumSet.of(ACCEPTED, DECLINED, PAID, CALLED_OFF));
    NEXT.put(ACCEPTED, EnumSet.of(DECLINED, PAID, PACKED, RUNNING, CALLED_OFF));
    NEXT.put(DECLINED, EnumSet.of(ACCEPTED));
    NEXT.put(PAID, EnumSet.of(PACKED, RUNNING, CALLED_OFF));
    NEXT.put(PACKED, EnumSet.of(RUNNING, CLOSED, CALLED_OFF));
    NEXT.put(RUNNING, EnumSet.of(CLOSED, CALLED_OFF));
    NEXT.put(CLOSED, EnumSet.of(SETTLED));
    NEXT.put(SETTLED, EnumSet.of(CLOSED));
    NEXT.put(CALLED_OFF, EnumSet.noneOf(ShowState.class));
  }

  /** {@code applied, accepted, declined, paid, packed, running, closed, settled, called-off}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The state with that code; the database keeps no other. */
  public static ShowState of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** The states that may follow this one. */
  public Set<ShowState> next() {
    return Set.copyOf(NEXT.get(this));
  }

  /** Whether a show may be booked in this state: nothing has been packed for it yet. */
  public boolean isBookable() {
    return this == APPLIED || this == ACCEPTED || this == DECLINED || this == PAID;
  }

  /** Whether jars may be packed out to it. */
  public boolean takesJars() {
    return this == ACCEPTED || this == PAID || this == PACKED || this == RUNNING;
  }

  /** Whether it has its place and nothing went there yet. */
  public boolean awaitsPackOut() {
    return this == ACCEPTED || this == PAID;
  }

  /** Whether jars may have been at its table. */
  public boolean mayHaveStood() {
    return this != APPLIED && this != DECLINED;
  }

  /** Whether it binds its helper, vehicle and kit for its days. */
  public boolean binds() {
    return this != DECLINED && this != CALLED_OFF;
  }
}
