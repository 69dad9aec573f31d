package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.PlaceCode;

/** Where the syrup and jars of lots stand or went. */
@ApplicationScoped
public class Whereabouts {

  /** Jars of a lot at a place of the book, or gone to one of its outside accounts. */
  public record Jars(String lot, String place, String placeKind, String container, long pieces) {

    /** Jars come from here: packed, or there when the book began. */
    boolean isSource() {
      return "conversion".equals(placeKind) || PlaceCode.OPENING.equals(place);
    }

    /** What counts found missing (above zero) or over (below zero). */
    public boolean isUnexplained() {
      return PlaceCode.UNEXPLAINED.equals(place);
    }

    /** Whether jars of the lot are there by the book. */
    public boolean isStanding() {
      return pieces > 0 && !isSource() && !isUnexplained();
    }
  }

  /** Syrup of a lot in bulk at a place of the book, or gone to an outside account, in grams. */
  public record Bulk(String lot, String place, String placeKind, long grams) {}

  private static final String STANDING =
      """
      SELECT i.lot, b.place, p.kind, i.container, b.amount
      FROM items i JOIN balances b ON b.item = i.id JOIN places p ON p.code = b.place
      WHERE i.lot = ANY (?::text[]) AND b.amount <> 0
      ORDER BY i.lot, b.place, i.container
      """;

  /**
   * What is known of some lots.
   *
   * @param jars by lot, place and container; where they came from stands below zero
   * @param bulk by lot and place; where it came from stands below zero
   */
  record Found(List<Jars> jars, List<Bulk> bulk) {}

  /** Where the lots stand or went; the lists fill when {@code ask} is sent. */
  Found ask(Collection<String> lots, Bundle ask) {
    Found found = new Found(new ArrayList<>(), new ArrayList<>());
    ask.ask(STANDING, row -> add(row, found), Column.of("text", lots));
    return found;
  }

  private static void add(ResultSet row, Found found) throws SQLException {
    String lot = row.getString(1);
    String place = row.getString(2);
    String kind = row.getString(3);
    String container = row.getString(4);
    long amount = row.getLong(5);
    if (container == null) {
      found.bulk().add(new Bulk(lot, place, kind, amount));
    } else {
      found.jars().add(new Jars(lot, place, kind, container, amount));
    }
  }
}
