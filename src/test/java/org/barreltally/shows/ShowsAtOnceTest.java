package org.barreltally.shows;

import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Several helpers at the same jars, shows and people at the same time. */
@QuarkusTest
class ShowsAtOnceTest {

  private static final int HELPERS = 12;

  @Inject ShelfFixture shelf;

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void the_last_jars_go_to_no_more_tables_than_they_fill() throws Exception {
    String size = Fairs.newSize();
    String lot = shelf.lotWith(50, size);
    List<String> shows = new ArrayList<>();
    for (int i = 0; i < HELPERS; i++) {
      shows.add(Fairs.accepted(Fairs.newName("Rush"), "2026-10-03"));
    }
    List<Response> answers =
        together(i -> Fairs.packOut(shows.get(i), Fairs.line(size, lot, 9)).extract().response());
    assertEquals(5, answers.stream().filter(a -> a.statusCode() == 201).count()); // 5 × 9 = 45
    assertEquals(HELPERS - 5, answers.stream().filter(a -> a.statusCode() == 409).count());
    assertEquals(5, shelf.standing("cool-room", lot, size));
    long out = shows.stream().mapToLong(s -> shelf.standing(Fairs.place(s), lot, size)).sum();
    assertEquals(45, out);
  }

  @Test
  void helpers_who_pack_for_one_show_lose_nothing_and_double_nothing() throws Exception {
    String size = Fairs.newSize();
    String one = shelf.lotWith(100, size);
    String two = shelf.lotWith(100, size);
    String show = Fairs.accepted(Fairs.newName("Rush"), "2026-10-03");
    posts(
            "/api/shows/" + show + "/reservations",
            "{'lines': [{'container': '%s', 'grade': 'amber', 'count': 30}]}".formatted(size))
        .statusCode(201);
    List<Response> answers =
        together(
            i -> {
              String first = Fairs.line(size, i % 2 == 0 ? one : two, 3);
              String second = Fairs.line(size, i % 2 == 0 ? two : one, 2);
              return Fairs.packOut(show, first + "," + second).extract().response();
            });
    assertEquals(HELPERS, answers.stream().filter(a -> a.statusCode() == 201).count());
    String place = Fairs.place(show);
    assertEquals(5 * HELPERS / 2, shelf.standing(place, one, size));
    assertEquals(5 * HELPERS / 2, shelf.standing(place, two, size));
    assertEquals(
        1 + HELPERS, Fairs.show(show).extract().<Integer>path("version") - 1); // and the promise
  }

  @Test
  void jars_swapped_both_ways_at_once_wait_for_each_other_and_not_in_a_ring() throws Exception {
    String size = Fairs.newSize();
    String lot = shelf.lotWith(80, size);
    String north = Fairs.accepted(Fairs.newName("North"), "2026-10-03");
    String south = Fairs.accepted(Fairs.newName("South"), "2026-10-03");
    Fairs.packOut(north, Fairs.line(size, lot, 40)).statusCode(201);
    Fairs.packOut(south, Fairs.line(size, lot, 40)).statusCode(201);
    List<Response> answers =
        together(
            i ->
                posts(
                        "/api/shows/" + (i % 2 == 0 ? north : south) + "/transfers",
                        "{'to': '%s', 'lines': [%s]}"
                            .formatted(i % 2 == 0 ? south : north, Fairs.line(size, lot, i + 1)))
                    .extract()
                    .response());
    assertEquals(HELPERS, answers.stream().filter(a -> a.statusCode() == 201).count());
    // north gives 1 + 3 + 5 + 7 + 9 + 11 = 36 and takes 2 + 4 + 6 + 8 + 10 + 12 = 42
    assertEquals(46, shelf.standing(Fairs.place(north), lot, size));
    assertEquals(34, shelf.standing(Fairs.place(south), lot, size));
  }

  @Test
  void a_helper_asked_for_by_many_at_once_goes_to_one_show() throws Exception {
    String helper = Fairs.newName("Marla");
    List<Response> answers =
        together(
            i ->
                Fairs.book(
                        Fairs.newName("Rush"),
                        "2028-05-06",
                        "2028-05-06",
                        ", 'helper': '" + helper + "'")
                    .extract()
                    .response());
    assertEquals(1, answers.stream().filter(a -> a.statusCode() == 201).count());
    assertEquals(HELPERS - 1, answers.stream().filter(a -> a.statusCode() == 409).count());
  }

  @Test
  void of_many_who_change_the_version_they_read_one_succeeds() throws Exception {
    String show = Fairs.accepted(Fairs.newName("Rush"), "2028-05-07");
    List<Response> answers =
        together(
            i -> Fairs.patch(show, "{'notes': 'Row " + i + "'}", "\"1\"").extract().response());
    assertEquals(1, answers.stream().filter(a -> a.statusCode() == 200).count());
    assertEquals(HELPERS - 1, answers.stream().filter(a -> a.statusCode() == 412).count());
  }

  private static List<Response> together(IntFunction<Response> each) throws Exception {
    ExecutorService helpers = Executors.newFixedThreadPool(HELPERS);
    try {
      List<Callable<Response>> all = new ArrayList<>();
      for (int i = 0; i < HELPERS; i++) {
        int n = i;
        all.add(() -> each.apply(n));
      }
      List<Response> answers = new ArrayList<>();
      for (Future<Response> answer : helpers.invokeAll(all)) {
        answers.add(answer.get());
      }
      return answers;
    } finally {
      helpers.shutdownNow();
    }
  }
}
