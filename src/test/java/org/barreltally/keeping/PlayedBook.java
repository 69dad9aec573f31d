package org.barreltally.keeping;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.barreltally.Owner;

/** A book with something in it, played over the interface. */
final class PlayedBook {

  /** What CSV, COPY and spreadsheets might stumble over. */
  private static final List<String> STRANGE =
      List.of(
          "comma, \"quote\" and 'apostrophe'",
          "line\r\nbreak\nand\rreturn\ttab",
          "\\.",
          "\\N",
          "=1+1",
          "",
          " ",
          "\\",
          "\"",
          "Ünïcödé 糖蜜 🍁 \u202Eright to left \u0001",
          "e\u0301 and é");

  private PlayedBook() {}

  /** Barrels, a canning run, supplies and a bulk sale. */
  static void play() {
    String one = Owner.newTag("KA");
    String two = Owner.newTag("KB");
    post("/api/barrels", Owner.barrel(one, 2024, "2024-03-14", 486.5, 42.0, 66.9, 62));
    post("/api/barrels", Owner.barrel(two, 2024, "2024-03-20", 268.0, 41.5, 67.4, 55));
    String supply = ("CAP-" + UUID.randomUUID()).substring(0, 14).toUpperCase(Locale.ROOT);
    post(
        "/api/supplies",
        "{'code': '%s', 'name': 'Caps', 'kind': 'cap', 'container': 'PT', 'perJar': 1}"
            .formatted(supply));
    post("/api/supplies/" + supply + "/receipts", "{'on': '2024-06-01', 'count': 500}");
    post(
        "/api/canning/runs",
        """
        {'on': '2024-06-20', 'draws': [{'barrel': '%s', 'all': true}],
         'fillTemperature': {'value': 185, 'unit': 'degF'},
         'fills': [{'container': 'PT', 'count': 300, 'broken': 2}],
         'transmittance': 60, 'taste': 'clean'}
        """
            .formatted(one));
    post(
        "/api/barrels/" + two + "/bulk-sale",
        """
        {'on': '2024-07-01', 'buyer': {'name': 'Quillfeather Syrup (invented) %1$s', 'details': 'Gate 3'},
         'ours': {'weight': {'value': 226.5, 'unit': 'lb'}, 'grade': 'amber'},
         'theirs': {'weight': {'value': 226.0, 'unit': 'lb'}, 'grade': 'amber'},
         'agreed': {'weight': {'value': 226.2, 'unit': 'lb'}, 'grade': 'amber'},
         'pricePerLb': {'amount': 2.10, 'currency': 'USD'}}
        """
            .formatted(two));
  }

  private static void post(String path, String json) {
    Owner.posts(path, json).statusCode(201);
  }

  /** Suppliers under names that a careless format would lose or change. */
  static void strangeNames(OwnedDatabase database) throws SQLException {
    try (Connection connection = database.owner().getConnection();
        PreparedStatement insert =
            connection.prepareStatement(
                "INSERT INTO suppliers VALUES (gen_random_uuid(), ?, ?)"
                    + " ON CONFLICT (name) DO NOTHING")) {
      for (String text : STRANGE) {
        insert.setString(1, text);
        insert.setString(2, text.isEmpty() ? null : text);
        insert.addBatch();
      }
      insert.executeBatch();
    }
  }
}
