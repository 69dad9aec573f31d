package org.barreltally.shows;

import static org.barreltally.Owner.posts;

import io.restassured.response.ValidatableResponse;
import java.util.Locale;
import java.util.UUID;
import org.barreltally.Owner;

/** Shows and jar sizes, each test's own, so that no two tests meet in a pool or on a table. */
final class Fairs {

  private Fairs() {}

  /** Books a show with what else is said of it, beginning with a comma; answers its id. */
  static String booked(String name, String starts, String ends, String rest) {
    return book(name, starts, ends, rest).statusCode(201).extract().path("id");
  }

  static ValidatableResponse book(String name, String starts, String ends, String rest) {
    return posts(
        "/api/shows",
        "{'name': '%s', 'town': 'Fernby', 'starts': '%s', 'ends': '%s'%s}"
            .formatted(name, starts, ends, rest));
  }

  /** An accepted show of one day. */
  static String accepted(String name, String day) {
    return booked(name, day, day, ", 'state': 'accepted'");
  }

  /** A jar size no other test uses, so its pools are this test's alone. */
  static String newSize() {
    String code = "S" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
    posts(
            "/api/containers",
            "{'code': '%s', 'name': 'Tried jar', 'netContents': {'value': 16, 'unit': 'floz'}, 'material': 'glass', 'emptyWeight': {'value': 300, 'unit': 'g'}}"
                .formatted(code))
        .statusCode(201);
    return code;
  }

  static String line(String size, String lot, long count) {
    return "{'container': '%s', 'lot': '%s', 'count': %d}".formatted(size, lot, count);
  }

  static ValidatableResponse packOut(String show, String lines) {
    return posts("/api/shows/" + show + "/pack-out", "{'lines': [" + lines + "]}");
  }

  static ValidatableResponse back(String show, String lines) {
    return posts("/api/shows/" + show + "/back", "{'lines': [" + lines + "]}");
  }

  static ValidatableResponse show(String id) {
    return Owner.reads("/api/shows/" + id);
  }

  static String place(String id) {
    return show(id).extract().path("place");
  }

  static ValidatableResponse patch(String show, String json, String ifMatch) {
    var asks = Owner.asks().contentType("application/json").body(json.replace('\'', '"'));
    return (ifMatch == null ? asks : asks.header("If-Match", ifMatch))
        .patch("/api/shows/" + show)
        .then();
  }

  /** A name no other test uses. */
  static String newName(String words) {
    return words + " " + UUID.randomUUID().toString().substring(0, 6);
  }
}
