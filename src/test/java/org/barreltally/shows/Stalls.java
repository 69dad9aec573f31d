package org.barreltally.shows;

import static org.barreltally.Owner.posts;
import static org.barreltally.shows.Fairs.newName;
import static org.barreltally.shows.Fairs.place;

import io.restassured.response.ValidatableResponse;
import org.barreltally.BookRows;

/** Sales as devices tell them, and shows with prices to tell them at. */
final class Stalls {

  private Stalls() {}

  /** An accepted show whose list has the size at $15, two for $28. */
  static String priced(String size, String rest) {
    String list =
        posts(
                "/api/price-lists",
                "{'name': '%s', 'audience': 'show', 'validFrom': '2026-01-01', 'lines': [{'container': '%s', 'price': {'amount': 15, 'currency': 'USD'}}], 'deals': [{'container': '%s', 'count': 2, 'price': {'amount': 28, 'currency': 'USD'}}]}"
                    .formatted(newName("Table prices"), size, size))
            .statusCode(201)
            .extract()
            .path("id");
    return Fairs.booked(
        newName("Plough Day"),
        "2026-09-12",
        "2026-09-12",
        ", 'state': 'accepted', 'priceList': '" + list + "'" + rest);
  }

  static ValidatableResponse tell(String show, String json) {
    return posts("/api/shows/" + show + "/sales", json);
  }

  static String cash(int dollars) {
    return "'paid': {'cash': {'amount': %d, 'currency': 'USD'}}".formatted(dollars);
  }

  static String sale(String id, String size, String lot, int count, String rest) {
    String lines =
        lot == null
            ? "[{'container': '%s', 'count': %d}]".formatted(size, count)
            : "[{'container': '%s', 'lot': '%s', 'count': %d}]".formatted(size, lot, count);
    return sale(id, lines, rest);
  }

  static String sale(String id, String lines, String rest) {
    return "{'id': '%s', 'at': '2026-09-12T14:00:00Z', 'lines': %s, %s}".formatted(id, lines, rest);
  }

  /** What the book has on the table of a show, of every lot and of none. */
  static long onTable(BookRows rows, String show, String size) {
    return rows.number(
        "SELECT sum(b.amount) FROM balances b JOIN items i ON i.id = b.item WHERE b.place = '"
            + place(show)
            + "' AND i.container = '"
            + size
            + "'");
  }
}
