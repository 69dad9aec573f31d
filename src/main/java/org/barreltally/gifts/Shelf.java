package org.barreltally.gifts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.barreltally.ledger.Item;

/** What stands at a place to be picked: the oldest packed first, nothing that is held. */
final class Shelf {

  private final String place;
  private final List<Item> oldestFirst;
  private final Map<UUID, Long> left;
  private final Function<Jar, Map<String, Long>> elsewhere;

  /**
   * @param oldestFirst items that are not held
   * @param left pieces at the place by item
   * @param elsewhere pieces of a jar at other rooms, for the words of a refusal
   */
  Shelf(
      String place,
      List<Item> oldestFirst,
      Map<UUID, Long> left,
      Function<Jar, Map<String, Long>> elsewhere) {
    this.place = place;
    this.oldestFirst = List.copyOf(oldestFirst);
    this.left = new HashMap<>(left);
    this.elsewhere = elsewhere;
  }

  String place() {
    return place;
  }

  /**
   * Takes what is promised, fixing the lots.
   *
   * @throws NotOnTheShelf if too few stand there
   */
  List<GiftJars> take(List<Promise> promised) {
    List<GiftJars> taken = new ArrayList<>();
    for (Promise promise : promised) {
      long open = promise.pieces();
      for (Item item : oldestFirst) {
        long pieces = Math.min(open, left.getOrDefault(item.id(), 0L));
        if (pieces > 0 && isOf(item, promise.jar())) {
          left.merge(item.id(), -pieces, Long::sum);
          taken.add(
              new GiftJars(
                  promise.n(),
                  item.id(),
                  item.lot(),
                  promise.jar(),
                  promise.wanted(),
                  Stage.SHELF,
                  pieces));
          open -= pieces;
        }
      }
      if (open > 0) {
        throw new NotOnTheShelf(
            promise.n(),
            promise.jar(),
            place,
            promise.pieces() - open,
            promise.pieces(),
            elsewhere.apply(promise.jar()));
      }
    }
    return taken;
  }

  private static boolean isOf(Item item, Jar jar) {
    return jar.container().equals(item.container()) && jar.grade().code().equals(item.grade());
  }
}
