package org.barreltally.shows;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.shows.Fairs.accepted;
import static org.barreltally.shows.Fairs.back;
import static org.barreltally.shows.Fairs.line;
import static org.barreltally.shows.Fairs.newName;
import static org.barreltally.shows.Fairs.newSize;
import static org.barreltally.shows.Fairs.packOut;
import static org.barreltally.shows.Fairs.place;
import static org.barreltally.shows.Fairs.show;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Jars out to show tables, between them and home, by lot. */
@QuarkusTest
class OutAndBackTest {

  @Inject ShelfFixture shelf;

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void several_pack_outs_and_their_floats_add_up() {
    String size = newSize();
    String lot = shelf.lotWith(50, size);
    String show = accepted(newName("Apple Day"), "2026-09-12");
    posts(
            "/api/shows/" + show + "/pack-out",
            "{'lines': [%s], 'float': {'amount': 100, 'currency': 'USD'}}"
                .formatted(line(size, lot, 20)))
        .statusCode(201)
        .body("state", equalTo("packed"))
        .body("float.amount", equalTo(100.0f));
    posts(
            "/api/shows/" + show + "/pack-out",
            "{'lines': [%s, %s], 'float': {'amount': 50.50, 'currency': 'USD'}}"
                .formatted(line(size, lot, 5), line(size, lot, 5)))
        .statusCode(201)
        .body("lines", hasSize(1))
        .body("lines[0].count", equalTo(10))
        .body("float.amount", equalTo(150.5f));

    assertEquals(20, shelf.standing("cool-room", lot, size));
    assertEquals(30, shelf.standing(place(show), lot, size));
    show(show)
        .body("table[0].packedOut", equalTo(30))
        .body("table[0].onTable", equalTo(30))
        .body("floatPackedOut.amount", equalTo(150.5f))
        .body("steps.state", equalTo(java.util.List.of("accepted", "packed")));
    reads("/api/availability?container=" + size)
        .body("items[0].out", equalTo(30))
        .body("items[0].available", equalTo(20));
  }

  @Test
  void a_pack_out_taken_back_leaves_neither_jars_nor_float_behind() {
    String size = newSize();
    String lot = shelf.lotWith(10, size);
    String show = accepted(newName("Apple Day"), "2026-09-12");
    String movement =
        posts(
                "/api/shows/" + show + "/pack-out",
                "{'lines': [%s], 'float': {'amount': 80, 'currency': 'USD'}}"
                    .formatted(line(size, lot, 4)))
            .extract()
            .path("movement");
    posts("/api/movements/" + movement + "/reversal", "{'reason': 'Wrong trailer'}")
        .statusCode(201);
    show(show).body("table[0].packedOut", equalTo(0)).body("floatPackedOut", nullValue());
    assertEquals(10, shelf.standing("cool-room", lot, size));
  }

  @Test
  void counts_home_add_up_and_wet_labels_become_a_to_do() {
    String size = newSize();
    String lot = shelf.lotWith(40, size);
    String show = accepted(newName("Harvest Fair"), "2026-10-03");
    packOut(show, line(size, lot, 40)).statusCode(201);
    back(
            show,
            "{'container': '%s', 'lot': '%s', 'count': 9, 'broken': 2, 'sampled': 1, 'wetLabels': 3}"
                .formatted(size, lot))
        .statusCode(201)
        .body("state", equalTo("closed"))
        .body("toLookAt", empty())
        .body("toDos", hasSize(1))
        .body("toDos[0].kind", equalTo("wet-labels"))
        .body("toDos[0].count", equalTo(3));
    back(show, line(size, lot, 4)).statusCode(201).body("state", equalTo("closed"));

    assertEquals(13, shelf.standing("cool-room", lot, size));
    show(show)
        .body("table[0].back", equalTo(13))
        .body("table[0].broken", equalTo(2))
        .body("table[0].sampled", equalTo(1))
        .body("table[0].onTable", equalTo(24)) // 40 - 13 - 2 - 1: sold, and settled later
        .body("toDos", hasSize(1));
    String toDo = show(show).extract().path("toDos[0].id");
    posts("/api/shows/" + show + "/to-dos/" + toDo + "/done", "{}").statusCode(200);
    show(show).body("toDos", empty());
  }

  @Test
  void a_lot_never_packed_out_is_taken_as_a_fact_and_listed() {
    String size = newSize();
    String packed = shelf.lotWith(10, size);
    String strange = shelf.lotWith(10, size);
    String show = accepted(newName("Harvest Fair"), "2026-10-03");
    packOut(show, line(size, packed, 10)).statusCode(201);
    back(show, line(size, packed, 11) + "," + line(size, strange, 2))
        .statusCode(201)
        .body("toLookAt", hasSize(2))
        .body("toLookAt.find { it.lot == '" + strange + "' }.code", equalTo("never-packed-out"))
        .body("toLookAt.find { it.lot == '" + packed + "' }.code", equalTo("more-than-came"));
    assertEquals(12, shelf.standing("cool-room", strange, size));
    assertEquals(-2, shelf.standing(place(show), strange, size));
    packOut(show, line(size, strange, 2)).statusCode(409); // it is closed: told too late
  }

  @Test
  void a_drawer_that_does_not_add_up_is_kept_with_the_reason_and_touches_no_jar() {
    String size = newSize();
    String lot = shelf.lotWith(10, size);
    String show = accepted(newName("Harvest Fair"), "2026-10-03");
    packOut(show, line(size, lot, 10)).statusCode(201);
    posts(
            "/api/shows/" + show + "/back",
            """
            {'lines': [%s], 'drawer': {'denominations': [{'value': 20, 'count': 3},
             {'value': {'amount': 0.25, 'currency': 'USD'}, 'count': 2}], 'total': 72.50}}
            """
                .formatted(line(size, lot, 4)))
        .statusCode(201)
        .body("drawer.counted.amount", equalTo(60.5f)) // 3 × 20 + 2 × 0.25
        .body("drawer.finding", containsString("12.00 USD less"))
        .body("toLookAt.code", equalTo(java.util.List.of("drawer-does-not-add-up")));
    show(show).body("drawers[0].counted.amount", equalTo(60.5f));
    posts(
            "/api/shows/" + show + "/back",
            "{'drawer': {'denominations': [{'value': 20, 'count': 3}, {'value': 12.5, 'count': 1}], 'total': 72.50}}")
        .statusCode(201)
        .body("toLookAt", empty());
    show(show)
        .body("drawers", hasSize(1))
        .body("drawers[0].counted.amount", equalTo(72.5f))
        .body("table[0].onTable", equalTo(6));
  }

  @Test
  void what_is_reserved_for_the_show_is_used_up_first_and_others_promises_stay() {
    String size = newSize();
    String lot = shelf.lotWith(30, size);
    String mine = accepted(newName("Mine"), "2026-09-12");
    String other = accepted(newName("Other"), "2026-09-19");
    String reserve = "{'lines': [{'container': '%s', 'grade': 'amber', 'count': %d}]}";
    posts("/api/shows/" + mine + "/reservations", reserve.formatted(size, 12)).statusCode(201);
    posts("/api/shows/" + other + "/reservations", reserve.formatted(size, 10)).statusCode(201);
    posts("/api/shows/" + other + "/reservations", reserve.formatted(size, 9))
        .statusCode(409)
        .body("code", equalTo("short-of-stock"));

    packOut(mine, line(size, lot, 21)) // 12 of its own and 8 that nobody was promised
        .statusCode(409)
        .body("code", equalTo("short-of-stock"))
        .body("detail", containsString("21 wanted, 20 not promised to others"));
    packOut(mine, line(size, lot, 5)).statusCode(201);
    show(mine).body("reserved[0].open[0].count", equalTo(7));
    packOut(mine, line(size, lot, 15)).statusCode(201);
    show(mine).body("reserved", empty());
    reads("/api/availability?container=" + size)
        .body("items[0].reserved", equalTo(10))
        .body("items[0].available", equalTo(0));
    packOut(other, line(size, lot, 10)).statusCode(201);
    reads("/api/availability?container=" + size).body("items[0].reserved", equalTo(0));
  }

  @Test
  void jars_swapped_between_tables_show_at_both() {
    String size = newSize();
    String lot = shelf.lotWith(30, size);
    String north = accepted(newName("North"), "2026-10-10");
    String south = accepted(newName("South"), "2026-10-10");
    packOut(north, line(size, lot, 30)).statusCode(201);
    posts(
            "/api/shows/" + north + "/transfers",
            "{'to': '%s', 'lines': [%s]}".formatted(south, line(size, lot, 8)))
        .statusCode(201);
    posts(
            "/api/shows/" + north + "/transfers",
            "{'to': '%s', 'lines': [{'container': '%s', 'count': 2}]}".formatted(south, size))
        .statusCode(201)
        .body("lines[0].lot", equalTo(lot)); // the only lot on that table
    show(north).body("table[0].given", equalTo(10)).body("table[0].onTable", equalTo(20));
    show(south)
        .body("table[0].received", equalTo(10))
        .body("table[0].onTable", equalTo(10))
        .body("state", equalTo("packed"));
    back(south, line(size, lot, 10)).statusCode(201).body("toLookAt", empty());
  }

  @Test
  void jars_swapped_without_a_lot_from_a_table_of_two_lots_wait_for_the_counts() {
    String size = newSize();
    String one = shelf.lotWith(10, size);
    String two = shelf.lotWith(10, size);
    String north = accepted(newName("North"), "2026-10-11");
    String south = accepted(newName("South"), "2026-10-11");
    packOut(north, line(size, one, 10) + "," + line(size, two, 10)).statusCode(201);
    posts(
            "/api/shows/" + north + "/transfers",
            "{'to': '%s', 'lines': [{'container': '%s', 'count': 6}]}".formatted(south, size))
        .statusCode(201)
        .body("lines[0].lot", nullValue())
        .body("lines[0].grade", equalTo("amber"));
    show(south).body("table[0].lot", nullValue()).body("table[0].onTable", equalTo(6));
    show(north).body("table.onTable.sum()", is(14));
  }

  @Test
  void a_show_called_off_frees_what_was_promised_and_keeps_what_was_paid() {
    String size = newSize();
    shelf.lotWith(30, size);
    String show =
        Fairs.booked(
            newName("Rain Fair"),
            "2026-10-17",
            "2026-10-17",
            ", 'state': 'accepted', 'booth': {'fee': {'amount': 90, 'currency': 'USD'}}");
    posts(
            "/api/shows/" + show + "/reservations",
            "{'lines': [{'container': '%s', 'grade': 'amber', 'count': 20}]}".formatted(size))
        .statusCode(201);
    posts(
            "/api/shows/" + show + "/payments",
            "{'amount': {'amount': 90, 'currency': 'USD'}, 'on': '2026-08-01'}")
        .statusCode(201);
    show(show).body("state", equalTo("paid"));
    posts(
            "/api/shows/" + show + "/call-off",
            "{'reason': 'Field under water', 'refund': {'amount': 30, 'currency': 'USD'}}")
        .statusCode(200)
        .body("state", equalTo("called-off"))
        .body("freed[0].count", equalTo(20))
        .body("kept.amount", equalTo(60.0f))
        .body("onTable", equalTo(0))
        .body("toDos", empty());
    reads("/api/availability?container=" + size).body("items[0].available", equalTo(30));
    packOut(show, line(size, "P000000-1", 1)).statusCode(409).body("code", equalTo("show-state"));
  }

  @Test
  void jars_of_a_show_called_off_after_packing_come_home_by_count() {
    String size = newSize();
    String lot = shelf.lotWith(20, size);
    String show = accepted(newName("Rain Fair"), "2026-10-17");
    packOut(show, line(size, lot, 20)).statusCode(201);
    posts("/api/shows/" + show + "/call-off", "{'reason': 'Thunder'}")
        .statusCode(200)
        .body("onTable", equalTo(20))
        .body("toDos[0].kind", equalTo("check-labels"));
    back(show, line(size, lot, 20)).statusCode(201).body("state", equalTo("called-off"));
    assertEquals(20, shelf.standing("cool-room", lot, size));
    show(show).body("table[0].onTable", equalTo(0));
  }

  @Test
  void the_same_pack_out_told_twice_happens_once() {
    String size = newSize();
    String lot = shelf.lotWith(20, size);
    String show = accepted(newName("Harvest Fair"), "2026-10-03");
    UUID key = UUID.randomUUID();
    String said = "{'lines': [" + line(size, lot, 7) + "]}";
    String path = "/api/shows/" + show + "/pack-out";
    String first = posts(path, said, key).statusCode(201).extract().asString();
    assertEquals(first, posts(path, said, key).statusCode(201).extract().asString());
    assertEquals(7, shelf.standing(place(show), lot, size));
  }
}
