package org.barreltally.gifts;

import java.time.LocalDate;
import java.util.List;
import org.barreltally.measure.ColorClass;

/**
 * Jars that are spoken for elsewhere by a day and are not reserved in the ledger: shows booked in
 * between, for example. Implemented beside whoever knows of them; none, one or several may be.
 */
public interface BookedJars {

  /**
   * One booking.
   *
   * @param what for people: {@code Fernby Fair}
   * @param on the first day on which the jars are gone
   */
  record Booking(String what, LocalDate on, String container, ColorClass grade, long pieces) {}

  /** Bookings whose jars are gone on or before a day, from today on. */
  List<Booking> until(LocalDate day);
}
