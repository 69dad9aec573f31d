package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;

/** Which lots came from which. Every link counts, even a pint left in a vessel. */
@ApplicationScoped
public class Family {

  private static final String UP =
      """
      WITH RECURSIVE line (lot) AS (
        SELECT ?::text
        UNION SELECT p.parent FROM lot_parents p JOIN line ON p.child = line.lot)
      SELECT p.child, p.parent, p.grams, p.share FROM lot_parents p JOIN line ON p.child = line.lot
      """;

  private static final String DOWN =
      """
      WITH RECURSIVE line (lot) AS (
        SELECT ?::text
        UNION SELECT p.child FROM lot_parents p JOIN line ON p.parent = line.lot)
      SELECT p.child, p.parent, p.grams, p.share FROM lot_parents p JOIN line ON p.parent = line.lot
      """;

  private static final String JOIN =
      """
      INSERT INTO lot_parents (child, parent, grams, share)
        SELECT ?::text, p.* FROM unnest(?::text[], ?::bigint[], ?::float8[]) AS p
      """;

  private final EntityManager entities;

  public Family(EntityManager entities) {
    this.entities = entities;
  }

  /**
   * Records what a new lot was made of.
   *
   * @param grams by parent; zero where only an unwashed vessel links the two
   */
  @Transactional
  public void join(String child, Map<String, Long> grams) {
    Bundle write = Bundle.byKeys();
    join(child, grams, write);
    write.send(entities);
  }

  /** As {@link #join(String, Map)}, together with other things; the lot must be known by then. */
  void join(String child, Map<String, Long> grams, Bundle write) {
    double all = grams.values().stream().mapToLong(Long::longValue).sum();
    write.add(
        JOIN,
        child,
        Column.of("text", grams.keySet()),
        Column.of("bigint", grams.values()),
        // only unwashed vessels and nothing else: each is as likely
        Column.of("float8", grams.values(), part -> all > 0 ? part / all : 1.0 / grams.size()));
  }

  /** Every link above a lot, up to the first barrels. */
  @Transactional
  public List<Parent> above(String lot) {
    return asked(ask -> above(lot, ask));
  }

  /** Every link below a lot, down to the last jars. */
  @Transactional
  public List<Parent> below(String lot) {
    return asked(ask -> below(lot, ask));
  }

  /** As {@link #above(String)}; the list fills when {@code ask} is sent. */
  List<Parent> above(String lot, Bundle ask) {
    return links(UP, lot, ask);
  }

  /** As {@link #below(String)}; the list fills when {@code ask} is sent. */
  List<Parent> below(String lot, Bundle ask) {
    return links(DOWN, lot, ask);
  }

  private List<Parent> asked(Function<Bundle, List<Parent>> question) {
    Bundle ask = new Bundle();
    List<Parent> links = question.apply(ask);
    ask.send(entities);
    return links;
  }

  private static List<Parent> links(String sql, String lot, Bundle ask) {
    List<Parent> links = new ArrayList<>();
    ask.ask(
        sql,
        row ->
            links.add(
                new Parent(row.getString(1), row.getString(2), row.getLong(3), row.getDouble(4))),
        lot);
    return links;
  }
}
