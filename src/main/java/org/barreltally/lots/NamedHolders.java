package org.barreltally.lots;

import java.util.Collection;
import java.util.List;

/**
 * Tells who holds jars or syrup of lots by name: buyers, shops, people who were given some,
 * landowners. Implemented where they are known, because lots do not know them; names are read at
 * every question, so that one removed since is not told.
 */
public interface NamedHolders {

  /**
   * What somebody holds of a lot.
   *
   * @param channel how it came there, for example {@code farm, post, wholesale, bulk}
   * @param name of the person or business; never null
   * @param address line by line; empty where it is not known
   * @param contact a telephone number or the like; null where it is not known
   * @param place the place or outside account of the book at which it stands
   * @param container null for syrup in bulk
   * @param amount pieces, or grams of syrup in bulk; above zero
   * @param exact false where nobody wrote the lot down, so that it may be another
   * @param booked whether it stands under this lot in the book; false where the book says another
   *     lot that nobody wrote down
   */
  record Holding(
      String channel,
      String name,
      List<String> address,
      String contact,
      String place,
      String lot,
      String container,
      long amount,
      boolean exact,
      boolean booked) {

    public Holding {
      address = List.copyOf(address);
    }
  }

  /** Who holds what of some lots; what was taken back or came back is left out. */
  List<Holding> of(Collection<String> lots);
}
