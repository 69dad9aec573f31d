package org.barreltally.sales.away;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.lots.NamedHolders;

/**
 * Who bought jars of lots away from shows, by name. Where several lots stood in the room and nobody
 * wrote the lot down, the book took the oldest; it is not sure that those were the jars, so any lot
 * of that size and grade that stood there by then is possible.
 */
@ApplicationScoped
class NamedBuyers implements NamedHolders {

  private static final String CUSTOMER = "customer";

  private static final String STANDING =
      """
       s.channel <> 'table' AND b.name IS NOT NULL
        AND NOT EXISTS (SELECT 1 FROM movements r WHERE r.reverses = s.movement)
      """;

  /** Jars of a lot that left with a sale, less what came back of it. */
  private static final String OF_THE_LOT =
      """
      WITH sold AS (
        SELECT s.id, s.channel, b.name, b.address, b.contact, i.id AS item, i.lot, i.container,
          sum(l.pieces) AS pieces,
          bool_and(NOT EXISTS (SELECT 1 FROM sale_notes n
            WHERE n.sale = s.id AND n.line = l.line AND n.code = 'lot-chosen')) AS exact
        FROM items i JOIN sale_lines l ON l.item = i.id JOIN sales s ON s.id = l.sale
          JOIN sale_buyers b ON b.id = s.buyer
        WHERE i.lot = ANY (?::text[]) AND i.container IS NOT NULL AND
      """
          + STANDING
          + """
        GROUP BY s.id, s.channel, b.name, b.address, b.contact, i.id, i.lot, i.container),
      back AS (
        SELECT t.sale, r.item, sum(r.pieces) AS pieces
        FROM sold JOIN sale_returns t ON t.sale = sold.id
          JOIN sale_return_lines r ON r.return_id = t.id AND r.item = sold.item
        WHERE NOT EXISTS (SELECT 1 FROM movements m WHERE m.reverses = t.movement)
        GROUP BY t.sale, r.item)
      SELECT channel, name, array_to_string(address, chr(10)), contact, lot, container,
        sold.pieces - coalesce(back.pieces, 0), exact
      FROM sold LEFT JOIN back ON back.sale = sold.id AND back.item = sold.item
      ORDER BY name, lot, container
      """;

  /** Jars sold without lot, booked under another lot, that may be of these. */
  private static final String OF_ANOTHER =
      """
      SELECT s.channel, b.name, array_to_string(b.address, chr(10)), b.contact, mine.lot,
        mine.container, l.pieces
      FROM items mine JOIN lots o ON o.code = mine.lot
        JOIN items i ON i.container = mine.container AND i.grade = mine.grade
          AND i.lot <> ALL (?::text[])
        JOIN sale_lines l ON l.item = i.id JOIN sales s ON s.id = l.sale
        JOIN sale_notes n ON n.sale = s.id AND n.line = l.line AND n.code = 'lot-chosen'
        JOIN balances e ON e.place = s.place AND e.item = mine.id
        JOIN sale_buyers b ON b.id = s.buyer
      WHERE mine.lot = ANY (?::text[]) AND mine.container IS NOT NULL
        AND s.happened_at >= o.made_on - 1 AND
      """
          + STANDING
          + " ORDER BY b.name, mine.lot, mine.container";

  private final EntityManager entities;

  NamedBuyers(EntityManager entities) {
    this.entities = entities;
  }

  @Override
  @Transactional
  public List<Holding> of(Collection<String> lots) {
    List<Holding> holdings = new ArrayList<>();
    Column codes = Column.of("text", lots);
    new Bundle()
        .ask(OF_THE_LOT, row -> add(row, row.getBoolean(8), true, holdings), codes)
        .ask(OF_ANOTHER, row -> add(row, false, false, holdings), codes, codes)
        .send(entities);
    return holdings;
  }

  private static void add(ResultSet row, boolean exact, boolean booked, List<Holding> holdings)
      throws SQLException {
    long pieces = row.getLong(7);
    if (pieces > 0) {
      holdings.add(
          new Holding(
              row.getString(1),
              row.getString(2),
              Arrays.stream(row.getString(3).split("\n")).filter(l -> !l.isBlank()).toList(),
              row.getString(4),
              CUSTOMER,
              row.getString(5),
              row.getString(6),
              pieces,
              exact,
              booked));
    }
  }
}
