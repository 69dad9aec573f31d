package org.barreltally.gifts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.barreltally.Owner;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.Test;

/** Orders race for the last jars: what is promised is never more than there is. */
@QuarkusTest
class LastJarsTest {

  private static final int ORDERS = 24;

  @Inject GiftShelf shelf;

  @Test
  void of_many_orders_at_once_only_as_many_are_promised_as_there_are_jars() throws Exception {
    String size = GiftShelf.newSize("8", "floz");
    shelf.lot(size, "golden", 10, "2024-06-20");
    shelf.lot(size, "amber", 7, "2024-06-20");
    // Each wants 3 golden, or amber in their stead: of 17 jars 5 orders can be met.
    String box = GiftShelf.box("Race " + size, "22.00", size + " golden 3/amber");
    List<Integer> answers =
        atOnce(order -> Owner.posts(order + "/reserve", "{}").extract().statusCode(), box);
    assertEquals(5, answers.stream().filter(status -> status == 200).count());
    assertEquals(ORDERS - 5, answers.stream().filter(status -> status == 409).count());
    assertEquals(15, shelf.reserved(size, "golden") + shelf.reserved(size, "amber"));
    assertEquals(2, shelf.available(size, "golden") + shelf.available(size, "amber"));
    SoundBook.check();
  }

  @Test
  void orders_picked_and_cancelled_at_once_leave_every_jar_where_it_belongs() throws Exception {
    String size = GiftShelf.newSize("8", "floz");
    String lot = shelf.lot(size, "dark", 2L * ORDERS, "2024-06-20");
    String box = GiftShelf.box("Pick race " + size, "22.00", size + " dark 2");
    List<Integer> answers =
        atOnce(
            order -> {
              int worst = Owner.posts(order + "/reserve", "{}").extract().statusCode();
              String one = order + "/recipients/1/";
              worst = Math.max(worst, Owner.posts(one + "pick", "{}").extract().statusCode());
              return order.hashCode() % 2 == 0
                  ? Math.max(worst, Owner.posts(one + "cancel", "{}").extract().statusCode())
                  : worst;
            },
            box);
    assertTrue(answers.stream().allMatch(status -> status == 200), answers.toString());
    long picked =
        shelf.number(
            "SELECT count(*) FROM gift_lines l JOIN gift_boxes b ON b.id = l.box"
                + " WHERE b.name = 'Pick race "
                + size
                + "' AND l.state = 'picked'");
    assertEquals(2 * picked, shelf.standing("gift-shelf", lot));
    assertEquals(2 * (ORDERS - picked), shelf.standing("cool-room", lot));
    assertEquals(2 * picked, shelf.reserved(size, "dark"));
    SoundBook.check();
  }

  private interface Doing {
    int with(String order);
  }

  private static List<Integer> atOnce(Doing doing, String box) throws Exception {
    List<String> orders = new ArrayList<>();
    for (int i = 0; i < ORDERS; i++) {
      orders.add("/api/gift-orders/" + GiftShelf.order(GiftShelf.without(1, box, "collect")));
    }
    ExecutorService threads = Executors.newFixedThreadPool(12);
    try {
      List<Callable<Integer>> racing =
          orders.stream().map(order -> (Callable<Integer>) () -> doing.with(order)).toList();
      List<Integer> answers = new ArrayList<>();
      for (Future<Integer> answer : threads.invokeAll(racing)) {
        answers.add(answer.get());
      }
      return answers;
    } finally {
      threads.shutdownNow();
    }
  }
}
