package org.barreltally.keeping;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A full book in the first tables that held a whole season, and the sums that must stay. */
public final class EarlyBook {

  /** The first version with barrels, canning and stock. */
  public static final String VERSION = "013";

  /** Sums over the ledger that every later version must tell alike, in SQL of every version. */
  private static final Map<String, String> SUMS =
      Map.of(
          "grams and pieces by place",
          "SELECT b.place || ' ' || coalesce(i.container, 'g') || ' ' || sum(b.amount) || ' of ' || count(*)"
              + " FROM balances b JOIN items i ON i.id = b.item GROUP BY b.place, i.container ORDER BY 1",
          "entries by kind and year",
          "SELECT m.book_year || ' ' || m.kind || ' ' || count(*) || ' ' || sum(abs(e.amount))"
              + " FROM movements m JOIN entries e ON e.movement = m.id GROUP BY m.book_year, m.kind ORDER BY 1",
          "lots by kind and grade",
          "SELECT kind || ' ' || grade || ' ' || held || ' ' || count(*) FROM lots GROUP BY kind, grade, held ORDER BY 1",
          "what can be promised",
          "SELECT container || ' ' || grade || ' ' || (on_hand - held - reserved - out)"
              + " FROM availability ORDER BY 1",
          "numbers given",
          "SELECT prefix || ' ' || last FROM lot_numbers ORDER BY 1",
          "order of every account",
          "SELECT sum(hashtextextended(concat_ws(' ', movement, line, place, item, amount, balance_after, seq), 0))::text FROM entries");

  private EarlyBook() {}

  /** The statements that fill tables of {@link #VERSION}. */
  public static String sql(int barrels) {
    try (InputStream text = EarlyBook.class.getResourceAsStream("/early/full-book-v013.sql")) {
      return new String(text.readAllBytes(), StandardCharsets.UTF_8)
          .replace(":barrels", Integer.toString(barrels));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The sums of a book, by what they sum. */
  static Map<String, List<String>> sums(OwnedDatabase book) throws SQLException {
    Map<String, List<String>> sums = new TreeMap<>();
    for (Map.Entry<String, String> each : SUMS.entrySet()) {
      sums.put(each.getKey(), EmptyDatabase.column(book, each.getValue()));
    }
    return sums;
  }
}
