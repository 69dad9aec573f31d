package org.barreltally.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What the owner should look at in a price list that was entered all the same. */
public final class Warnings {

  private Warnings() {}

  /** One sentence for each line or deal to look at, beginning with where it stands. */
  public static List<String> of(PriceList list, String farmCurrency) {
    List<String> found = new ArrayList<>();
    if (!list.currency().equals(farmCurrency)) {
      found.add(
          "The list is in %s, the farm counts in %s; nothing is converted."
              .formatted(list.currency(), farmCurrency));
    }
    for (int i = 0; i < list.lines().size(); i++) {
      PriceLine line = list.lines().get(i);
      if (line.price().signum() == 0) {
        found.add("lines[%d]: %s costs nothing.".formatted(i, line.container()));
      }
    }
    for (int i = 0; i < list.deals().size(); i++) {
      addDearer(list, i, found);
    }
    return found;
  }

  /** Compares a deal with its jars singly, the cheapest that it can take. */
  private static void addDearer(PriceList list, int index, List<String> found) {
    Deal deal = list.deals().get(index);
    PriceLine cheapest =
        list.pricing(deal).min(Comparator.comparing(line -> line.price().amount())).orElse(null);
    if (cheapest == null) {
      return;
    }
    Money singly = cheapest.price().times(BigDecimal.valueOf(deal.count()));
    int compared = deal.price().minus(singly).signum();
    if (compared >= 0) {
      found.add(
          "deals[%d]: %d × %s for %s %s %d singly%s (%s); it is never charged for those."
              .formatted(
                  index,
                  deal.count(),
                  deal.container(),
                  deal.price(),
                  compared > 0 ? "is dearer than" : "costs the same as",
                  deal.count(),
                  cheapest.grade() == null ? "" : " in " + cheapest.grade().code(),
                  singly));
    }
  }
}
