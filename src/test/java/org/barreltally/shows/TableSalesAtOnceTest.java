package org.barreltally.shows;

import static org.barreltally.shows.Fairs.line;
import static org.barreltally.shows.Fairs.newSize;
import static org.barreltally.shows.Fairs.packOut;
import static org.barreltally.shows.Fairs.place;
import static org.barreltally.shows.Stalls.cash;
import static org.barreltally.shows.Stalls.onTable;
import static org.barreltally.shows.Stalls.priced;
import static org.barreltally.shows.Stalls.sale;
import static org.barreltally.shows.Stalls.tell;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.barreltally.BookRows;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Sales of one table told in batches, over again and by many devices at once. */
@QuarkusTest
class TableSalesAtOnceTest {

  @Inject ShelfFixture shelf;
  @Inject BookRows rows;

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void a_batch_is_merged_whatever_its_order_and_twice_over_changes_nothing() {
    String size = newSize();
    String lot = shelf.lotWith(2000, size);
    String show = priced(size, "");
    packOut(show, line(size, lot, 2000)).statusCode(201);
    List<String> sales = new ArrayList<>();
    for (int n = 0; n < 500; n++) {
      sales.add(
          sale(UUID.randomUUID().toString(), size, n % 3 == 0 ? null : lot, 1 + n % 4, cash(60)));
    }
    long pieces = 125 * (1 + 2 + 3 + 4);
    tell(show, "[" + String.join(",", sales) + "]")
        .statusCode(201)
        .body("items", hasSize(500))
        .body("items.result", everyItem(equalTo("kept")));
    Collections.shuffle(sales, new Random(500));
    var before = rows.fingerprint();
    tell(show, "[" + String.join(",", sales) + "]")
        .statusCode(200)
        .body("items.result", everyItem(equalTo("repeated")));
    var after = rows.fingerprint();
    before.remove("requests"); // the second request is remembered as one
    after.remove("requests");
    assertEquals(before, after);
    assertEquals(2000 - pieces, onTable(rows, show, size));
  }

  @Test
  void twenty_devices_at_one_table_lose_no_sale_and_double_none() throws Exception {
    int devices = 20;
    int each = 15;
    String size = newSize();
    String lot = shelf.lotWith(1000, size);
    String show = priced(size, "");
    packOut(show, line(size, lot, 1000)).statusCode(201);
    // Every sale is told by its own device and by the next one too, which heard of it meanwhile.
    List<List<String>> told = new ArrayList<>();
    List<Integer> counts = new ArrayList<>();
    for (int d = 0; d < devices; d++) {
      told.add(new ArrayList<>());
    }
    for (int d = 0; d < devices; d++) {
      for (int n = 0; n < each; n++) {
        int count = 1 + (d + n) % 3;
        counts.add(count);
        String sale =
            sale(UUID.randomUUID().toString(), size, n % 2 == 0 ? lot : null, count, cash(45));
        told.get(d).add(sale);
        told.get((d + 1) % devices).add(sale);
      }
    }
    List<Callable<List<String>>> tellers = new ArrayList<>();
    for (int d = 0; d < devices; d++) {
      List<String> mine = new ArrayList<>(told.get(d));
      Collections.shuffle(mine, new Random(d));
      tellers.add(() -> tellAll(show, mine));
    }
    ExecutorService threads = Executors.newFixedThreadPool(devices);
    List<String> results = new ArrayList<>();
    for (Future<List<String>> teller : threads.invokeAll(tellers)) {
      results.addAll(teller.get());
    }
    threads.shutdown();

    int sales = devices * each;
    assertEquals(2 * sales, results.size());
    assertEquals(sales, results.stream().filter("kept"::equals).count());
    assertEquals(sales, results.stream().filter("repeated"::equals).count());
    long pieces = counts.stream().mapToInt(Integer::intValue).sum();
    assertEquals(1000 - pieces, onTable(rows, show, size));
    assertEquals(
        sales, rows.number("SELECT count(*) FROM sales WHERE place = '" + place(show) + "'"));
    assertEquals(
        pieces,
        rows.number(
            "SELECT sum(l.pieces) FROM sale_lines l JOIN sales s ON s.id = l.sale WHERE s.place = '"
                + place(show)
                + "'"));
  }

  /**
   * Who packs out locks the lot and then what stands; who sells must not wait the other way round.
   */
  @Test
  void a_lot_sells_at_the_table_while_more_of_it_is_packed_out() throws Exception {
    int each = 40;
    String size = newSize();
    String lot = shelf.lotWith(2000, size);
    String show = priced(size, "");
    packOut(show, line(size, lot, 1000)).statusCode(201);
    List<Callable<Integer>> hands = new ArrayList<>();
    for (int n = 0; n < 6 * each; n++) {
      hands.add(
          () ->
              tell(show, sale(UUID.randomUUID().toString(), size, lot, 1, cash(15)))
                  .extract()
                  .statusCode());
      hands.add(() -> packOut(show, line(size, lot, 1)).extract().statusCode());
    }
    ExecutorService threads = Executors.newFixedThreadPool(12);
    List<Integer> statuses = new ArrayList<>();
    for (Future<Integer> done : threads.invokeAll(hands)) {
      statuses.add(done.get());
    }
    threads.shutdown();
    assertEquals(
        2 * 6 * each, Collections.frequency(statuses, 201), "nobody is told to come again");
    assertEquals(1000, onTable(rows, show, size), "as many came as went");
    assertEquals(1000 - 6 * each, shelf.standing("cool-room", lot, size));
  }

  /** Tells sales partly one by one, partly in small batches; answers what became of each. */
  private static List<String> tellAll(String show, List<String> sales) {
    List<String> results = new ArrayList<>();
    for (int n = 0; n < sales.size(); ) {
      int many = n % 4 == 0 ? 1 : Math.min(5, sales.size() - n);
      if (many == 1) {
        results.add(tell(show, sales.get(n)).extract().path("result"));
      } else {
        List<String> some =
            tell(show, "[" + String.join(",", sales.subList(n, n + many)) + "]")
                .extract()
                .path("items.result");
        results.addAll(some);
      }
      n += many;
    }
    return results;
  }
}
