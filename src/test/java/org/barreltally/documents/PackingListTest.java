package org.barreltally.documents;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/** The packing list of a show, read from its pages by another library than drew them. */
@QuarkusTest
class PackingListTest {

  @Inject ShelfFixture shelf;

  @Test
  void it_names_every_lot_kit_paper_and_the_load() throws Exception {
    String pint = "PT";
    String lot = shelf.lotWith(20, pint);
    String show =
        booked("'kitItems': ['Canopy and weights', 'Cash box'], 'papers': ['Booth permit'],");
    String text = Page.text(pdf(show));
    assertTrue(text.contains("Canopy and weights") && text.contains("Booth permit"), text);
    assertFalse(text.contains("Lot " + lot), text);
    packOut(show, pint, lot, 20);
    text = Page.text(pdf(show));
    assertTrue(text.contains(lot) && text.contains("Pint jug (PT)"), text);
    assertTrue(text.contains("Change money") && text.contains("150.00 USD"), text);
    assertTrue(text.contains("Without the empty weight of PT"), text);
    // 20 jars of 628 g (the fixture's) are 12.56 kg, which weigh 12.55 kg in air: 27.7 lb
    assertTrue(text.contains("20 jars, about 28 lb (12.6 kg)"), text);
    assertTrue(text.contains("The vehicle should carry 20 lb (9.1 kg) at most"), text);
    assertTrue(text.contains("TOO MUCH"), text);
  }

  @Test
  void what_is_reserved_and_not_packed_has_its_lot_left_open() throws Exception {
    String lot = shelf.lotWith(6, "HGAL");
    String show = booked("");
    posts(
            "/api/shows/" + show + "/reservations",
            "{'lines': [{'container': 'HGAL', 'grade': 'amber', 'count': 6}]}")
        .statusCode(201);
    String text = Page.text(pdf(show));
    assertTrue(text.contains("Half-gallon jug (HGAL)"), text);
    assertFalse(text.contains(lot), text);
  }

  @Test
  void a_long_list_goes_over_several_pages_and_loses_no_lot() throws Exception {
    String show = booked("");
    List<String> lots = IntStream.range(0, 60).mapToObj(n -> shelf.lotWith(2, "QT")).toList();
    lots.forEach(lot -> packOut(show, "QT", lot, 1));
    byte[] pdf = pdf(show);
    assertTrue(Page.pages(pdf) > 1);
    String text = Page.text(pdf);
    lots.forEach(lot -> assertTrue(text.contains(lot), lot));
    assertTrue(text.contains("page 1 of " + Page.pages(pdf)), text);
    for (int page = 1; page <= Page.pages(pdf); page++) {
      double[] ink = Page.of(pdf, page).ink();
      assertTrue(ink[0] > 0.5 && ink[2] < 8.0 && ink[3] < 10.8, "inside the margins of a page");
    }
  }

  @Test
  void there_is_none_for_a_show_nobody_booked() {
    asks().get("/api/shows/" + UUID.randomUUID() + "/packing-list.pdf").then().statusCode(404);
  }

  private static String booked(String more) {
    return posts(
            "/api/shows",
            """
            {'name': 'Fernby Harvest Fair', 'town': 'Fernby', 'starts': '2026-10-03',
             'ends': '2026-10-04', 'state': 'accepted', 'tableKit': 'Kit %s', %s
             'vehicleLoad': {'value': 20, 'unit': 'lb'},
             'float': {'amount': 150, 'currency': 'USD'}}
            """
                .formatted(UUID.randomUUID().toString().substring(0, 6), more))
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static void packOut(String show, String size, String lot, int count) {
    posts(
            "/api/shows/" + show + "/pack-out",
            "{'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]}"
                .formatted(size, lot, count))
        .statusCode(201);
  }

  private static byte[] pdf(String show) {
    return asks()
        .get("/api/shows/" + show + "/packing-list.pdf")
        .then()
        .statusCode(200)
        .contentType("application/pdf")
        .extract()
        .asByteArray();
  }
}
