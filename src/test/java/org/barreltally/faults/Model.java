package org.barreltally.faults;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What stands where if everything acknowledged happened once and nothing else did.
 *
 * @param jars by own place, none of zero
 * @param barrels the tags
 * @param orders gift orders
 * @param owed dollars that the shop owes
 */
record Model(Map<String, Long> jars, int runs, Set<String> barrels, int orders, int owed) {

  static Model of(List<Wish> wishes) {
    Map<String, Long> jars = new TreeMap<>();
    Set<String> barrels = new TreeSet<>();
    int runs = 0;
    int orders = 0;
    int paid = 0;
    boolean counted = false;
    for (Wish wish : wishes) {
      if (wish.isAcknowledged()) {
        switch (wish.kind) {
          case FILL -> barrels.add(wish.about);
          case CAN -> {
            runs++;
            jars.merge("cool-room", wish.count, Long::sum);
          }
          case CARRY -> {
            jars.merge("cool-room", -wish.count, Long::sum);
            jars.merge("barrel-room", wish.count, Long::sum);
          }
          case WRITE_OFF -> jars.merge("cool-room", -wish.count, Long::sum);
          case PACK -> {
            jars.merge("cool-room", -wish.count, Long::sum);
            jars.merge(wish.about, wish.count, Long::sum);
          }
          case SELL -> jars.merge(wish.about, -wish.count, Long::sum);
          case ORDER -> orders++;
          case BRING -> {
            jars.merge("cool-room", -wish.count, Long::sum);
            jars.merge(wish.about, wish.count, Long::sum);
          }
          case COUNT -> {
            // every count finds the same, so the first alone takes away what was sold
            if (!counted) {
              jars.merge(wish.about, wish.count - Job.ON_THE_SHELF, Long::sum);
            }
            counted = true;
          }
          case PAY -> paid++;
        }
      }
    }
    jars.values().removeIf(count -> count == 0);
    return new Model(jars, runs, barrels, orders, (counted ? Job.OWED : 0) - paid);
  }
}
