package org.barreltally.table;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.stock.ShelfFixture;

/** A show of today with prices, a deal and amber jars on its table, each test's own. */
record TestTable(String id, String name, String size, String lot, String list) {

  /** A size at $15, two for $28, so many packed out. */
  static TestTable open(ShelfFixture shelf, int jars) {
    String size = Owner.newSize(16);
    String lot = shelf.lotWith(jars + 50, size);
    String list =
        posts(
                "/api/price-lists",
                "{'name': 'Table prices %s', 'audience': 'show', 'validFrom': '2026-01-01', 'lines': [{'container': '%s', 'price': {'amount': 15, 'currency': 'USD'}}], 'deals': [{'container': '%s', 'count': 2, 'price': {'amount': 28, 'currency': 'USD'}}]}"
                    .formatted(UUID.randomUUID(), size, size))
            .statusCode(201)
            .extract()
            .path("id");
    String today = Owner.asks().get("/api/table/shows").path("now").toString().substring(0, 10);
    String name = "Fernby Fair " + UUID.randomUUID().toString().substring(0, 6);
    String id =
        posts(
                "/api/shows",
                "{'name': '%s', 'town': 'Fernby', 'starts': '%s', 'ends': '%s', 'state': 'accepted', 'priceList': '%s'}"
                    .formatted(name, today, today, list))
            .statusCode(201)
            .extract()
            .path("id");
    TestTable table = new TestTable(id, name, size, lot, list);
    table.packOut(lot, jars);
    return table;
  }

  void packOut(String lot, int jars) {
    posts(
            "/api/shows/" + id + "/pack-out",
            "{'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]}".formatted(size, lot, jars))
        .statusCode(201);
  }

  /** A code that pairs one phone. */
  static String code(String phone) {
    return posts("/api/phones", "{'name': '%s'}".formatted(phone))
        .statusCode(201)
        .extract()
        .path("code");
  }

  /** The sales in the book by their ids, each as often as it is listed. */
  Map<String, Map<String, Object>> sales() {
    Map<String, Map<String, Object>> found = new LinkedHashMap<>();
    String after = "";
    do {
      var page = reads("/api/shows/" + id + "/sales?limit=100" + after).extract().jsonPath();
      List<Map<String, Object>> items = page.getList("items");
      for (Map<String, Object> item : items) {
        if (found.put(item.get("id").toString(), item) != null) {
          throw new AssertionError("listed twice: " + item.get("id"));
        }
      }
      after = page.get("next") == null ? null : "&after=" + page.getString("next");
    } while (after != null);
    return found;
  }

  /** Pieces sold by all sales that stand. */
  long jarsSold() {
    return new ArrayList<>(sales().values())
        .stream()
            .filter(sale -> !Boolean.TRUE.equals(sale.get("undone")))
            .flatMap(sale -> ((List<?>) sale.get("lines")).stream())
            .mapToLong(line -> ((Number) ((Map<?, ?>) line).get("count")).longValue())
            .sum();
  }

  long onTable() {
    List<Integer> there = reads("/api/shows/" + id + "/table").extract().path("items.onTable");
    return there.stream().mapToLong(Integer::longValue).sum();
  }
}
