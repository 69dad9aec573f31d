package org.barreltally.shows;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.shows.Fairs.back;
import static org.barreltally.shows.Fairs.booked;
import static org.barreltally.shows.Fairs.line;
import static org.barreltally.shows.Fairs.newName;
import static org.barreltally.shows.Fairs.newSize;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/**
 * A weekend of two shows and one called off, told from its beginning to its end and worked out by
 * hand.
 */
@QuarkusTest
class WeekendTest {

  @Inject ShelfFixture shelf;

  private String pint;
  private String half;

  @Test
  void a_weekend_of_two_shows_and_one_called_off() {
    // Pints at $15, two for $28; half-pints at $9. Two lots of pints, one of half-pints.
    pint = newSize();
    half = newSize();
    String one = shelf.lotWith(60, pint);
    String two = shelf.lotWith(20, pint);
    String small = shelf.lotWith(50, half);
    String list = prices();

    // Fair: $120 and 5 % of takings, $40 deposit; travel $30, helper $80, open 8 hours.
    String fair =
        show(
            "Fernby Fair",
            list,
            "'fee': {'amount': 120, 'currency': 'USD'}, 'percentOfSales': 5",
            ", 'hoursOpen': 8, 'travelCost': {'amount': 30, 'currency': 'USD'}, 'helperPay': {'amount': 80, 'currency': 'USD'}");
    String market = show("Alder Market", list, "'fee': {'amount': 25, 'currency': 'USD'}", "");
    String green = show("Green Day", list, "'fee': {'amount': 60, 'currency': 'USD'}", "");
    posts("/api/shows/" + fair + "/payments", "{'amount': {'amount': 40, 'currency': 'USD'}}")
        .statusCode(201);
    posts("/api/shows/" + green + "/payments", "{'amount': {'amount': 60, 'currency': 'USD'}}")
        .statusCode(201);

    // Out: to the fair 24 of lot one, 12 of lot two, 30 half-pints, $100 float; to the market 10 of
    // lot one, $50 float; to the green 6 of lot one.
    out(fair, line(pint, one, 24) + "," + line(pint, two, 12) + "," + line(half, small, 30), 100);
    out(market, line(pint, one, 10), 50);
    out(green, line(pint, one, 6), 0);

    // The green is under water: called off, its 6 jars come home, the $60 stay a cost.
    posts("/api/shows/" + green + "/call-off", "{'reason': 'Field under water'}")
        .statusCode(200)
        .body("kept.amount", equalTo(60.0f))
        .body("onTable", equalTo(6));
    back(green, line(pint, one, 6)).statusCode(201);
    posts("/api/shows/" + green + "/settlement", "{}")
        .statusCode(200)
        .body("state", equalTo("called-off"))
        .body("sold.count", contains(0))
        .body("soldByLot", empty())
        .body("takings.amount", equalTo(0.0f))
        .body("fee.amount", equalTo(60.0f))
        .body("feeDue.amount", equalTo(0.0f))
        .body("profit.amount", equalTo(-60.0f));

    // In the car park the market gets 4 pints from the fair; nobody looks at their lots.
    posts(
            "/api/shows/" + fair + "/transfers",
            "{'to': '%s', 'lines': [{'container': '%s', 'count': 4}]}".formatted(market, pint))
        .statusCode(201)
        .body("lines[0].lot", nullValue());

    // The fair sells, without lots: 5 times the deal of 2 pints for $28, cash, exactly = $140;
    // 3 pints singly by card = $45; 8 half-pints, $72, for $80 in cash, $8 change; 1 half-pint on
    // promise, $9. Pints 13, half-pints 9; takings 140 + 45 + 72 + 9 = 266.
    for (int n = 0; n < 5; n++) {
      sell(fair, pint, 2, "'deal': true, 'paid': {'cash': " + usd(28) + "}");
    }
    sell(fair, pint, 3, "'paid': {'card': " + usd(45) + "}");
    sell(fair, half, 8, "'paid': {'cash': " + usd(80) + "}");
    sell(fair, half, 1, "'paid': {'owing': " + usd(9) + "}");
    // The market sells 9 pints at $15 in cash: 135.
    sell(market, pint, 9, "'paid': {'cash': " + usd(135) + "}");

    // Fair home: lot one 14, lot two 5; half-pints 20 and 1 broken. Drawer $300.
    // Pints gone: 36 - 19 = 17, less 4 to the market = 13 sold: as recorded.
    // Half-pints: 30 - 20 - 1 = 9 sold: as recorded.
    // Lots: the fair is short of 10 of one and 7 of two, of which 4 went over: between 0 and 4 of
    // them were of two. One: 10 - (0..4) = 6 to 10; two: 7 - (0..4) = 3 to 7.
    // Cash due 100 + 140 + 80 - 8 = 312; $300 is $12 short = 6 times the $2 that the deal takes
    // off.
    posts(
            "/api/shows/" + fair + "/back",
            "{'lines': [%s, %s, {'container': '%s', 'lot': '%s', 'count': 20, 'broken': 1}], 'drawer': {'denominations': [{'value': 20, 'count': 15}], 'total': 300}}"
                .formatted(line(pint, one, 14), line(pint, two, 5), half, small))
        .statusCode(201);
    // Fee 120 + 5 % of 266 = 133.30, of which 40 are paid: 93.30 due. Profit before syrup:
    // 266 - 133.30 - 30 - 80 = 22.70. Per hour: 22 jars in 8 hours = 2.75.
    posts("/api/shows/" + fair + "/settlement", "{}")
        .statusCode(200)
        .body("state", equalTo("settled"))
        .body("sold.find { it.container == '" + pint + "' }.count", equalTo(13))
        .body("sold.find { it.container == '" + half + "' }.count", equalTo(9))
        .body("soldByLot.find { it.lot == '" + one + "' }.least", equalTo(6))
        .body("soldByLot.find { it.lot == '" + one + "' }.most", equalTo(10))
        .body("soldByLot.find { it.lot == '" + two + "' }.least", equalTo(3))
        .body("soldByLot.find { it.lot == '" + two + "' }.most", equalTo(7))
        .body("soldByLot.find { it.lot == '" + small + "' }.least", equalTo(9))
        .body("soldByLot.find { it.lot == '" + small + "' }.most", equalTo(9))
        .body("takings.amount", equalTo(266.0f))
        .body("cashDue.amount", equalTo(312.0f))
        .body("cashOverShort.amount", equalTo(-12.0f))
        .body("hints", hasItem("equals 6 × the 2.00 USD that the deal 2 × " + pint + " takes off"))
        .body("fee.amount", equalTo(133.3f))
        .body("feeDue.amount", equalTo(93.3f))
        .body("profit.amount", equalTo(22.7f))
        .body("unitsPerHour", equalTo(2.75f))
        .body("waitsFor", contains(market))
        .body("toLookAt", empty())
        .body("movement", nullValue());

    // Market home: 3 of lot one and 2 of lot two, which only the fair had: at least 2 of the 4 were
    // of two. Pints gone there: 10 + 4 - 5 = 9: as recorded.
    // So of the 4, two to four were of two. Fair: one 10 - (0..2) = 8 to 10, two 7 - (2..4) = 3 to
    // 5.
    // Market: one 10 - 3 + (0..2) = 7 to 9, two (2..4) - 2 = 0 to 2.
    posts(
            "/api/shows/" + market + "/back",
            "{'lines': [%s, %s], 'drawer': {'total': 185}}"
                .formatted(line(pint, one, 3), line(pint, two, 2)))
        .statusCode(201);
    reads("/api/shows/" + fair + "/settlement")
        .body("soldByLot.find { it.lot == '" + one + "' }.least", equalTo(8))
        .body("soldByLot.find { it.lot == '" + one + "' }.most", equalTo(10))
        .body("soldByLot.find { it.lot == '" + two + "' }.least", equalTo(3))
        .body("soldByLot.find { it.lot == '" + two + "' }.most", equalTo(5))
        .body("waitsFor", empty());
    posts("/api/shows/" + market + "/settlement", "{}")
        .statusCode(200)
        .body("soldByLot", hasSize(2))
        .body("soldByLot.find { it.lot == '" + one + "' }.least", equalTo(7))
        .body("soldByLot.find { it.lot == '" + one + "' }.most", equalTo(9))
        .body("soldByLot.find { it.lot == '" + two + "' }.least", equalTo(0))
        .body("soldByLot.find { it.lot == '" + two + "' }.most", equalTo(2))
        .body("cashDue.amount", equalTo(185.0f))
        .body("cashOverShort.amount", equalTo(0.0f))
        .body("hints", empty())
        .body("profit.amount", equalTo(110.0f));

    // Now the lots are exact where it counts: of one 24 + 10 - 14 - 3 = 17 are with buyers, of two
    // 12 - 5 - 2 = 5, and nothing is open at either table.
    assertEquals(17, shelf.standing("customer", one, pint));
    assertEquals(5, shelf.standing("customer", two, pint));
    for (String show : java.util.List.of(fair, market)) {
      reads("/api/stock?place=" + Fairs.place(show)).body("items", empty());
    }
    // Settled again, nothing more is posted.
    posts("/api/shows/" + fair + "/settlement", "{}").statusCode(200).body("movement", nullValue());
    assertEquals(17, shelf.standing("customer", one, pint));
    shelf.assertBookIsWhole();
  }

  private void out(String show, String lines, int cashFloat) {
    posts(
            "/api/shows/" + show + "/pack-out",
            "{'lines': [%s], 'float': %s}".formatted(lines, usd(cashFloat)))
        .statusCode(201);
  }

  private void sell(String show, String size, int count, String rest) {
    posts(
            "/api/shows/" + show + "/sales",
            "{'id': '%s', 'at': '2026-10-03T14:00:00Z', 'lines': [{'container': '%s', 'count': %d}], %s}"
                .formatted(UUID.randomUUID(), size, count, rest))
        .statusCode(201)
        .body("notes", empty());
  }

  private static String usd(int dollars) {
    return "{'amount': %d, 'currency': 'USD'}".formatted(dollars);
  }

  private static String show(String name, String list, String booth, String rest) {
    return booked(
        newName(name),
        "2026-10-03",
        "2026-10-04",
        ", 'state': 'accepted', 'priceList': '%s', 'booth': {%s}%s".formatted(list, booth, rest));
  }

  private String prices() {
    return posts(
            "/api/price-lists",
            "{'name': '%s', 'audience': 'show', 'validFrom': '2026-01-01', 'lines': [{'container': '%s', 'price': %s}, {'container': '%s', 'price': %s}], 'deals': [{'container': '%s', 'count': 2, 'price': %s}]}"
                .formatted(newName("Weekend"), pint, usd(15), half, usd(9), pint, usd(28)))
        .statusCode(201)
        .extract()
        .path("id");
  }
}
