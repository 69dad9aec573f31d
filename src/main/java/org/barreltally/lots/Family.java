package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;

/** Which lots came from which. Every link counts, even a pint left in a vessel. */
@ApplicationScoped
public class Family {

  private static final String UP =
      """
      WITH RECURSIVE line (lot) AS (
        SELECT CAST(:lot AS text)
        UNION SELECT p.parent FROM lot_parents p JOIN line ON p.child = line.lot)
      SELECT p.child, p.parent, p.grams, p.share FROM lot_parents p JOIN line ON p.child = line.lot
      """;

  private static final String DOWN =
      """
      WITH RECURSIVE line (lot) AS (
        SELECT CAST(:lot AS text)
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
    Bundle write = new Bundle();
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
  public List<Parent> above(String lot) {
    return links(UP, lot);
  }

  /** Every link below a lot, down to the last jars. */
  public List<Parent> below(String lot) {
    return links(DOWN, lot);
  }

  private List<Parent> links(String sql, String lot) {
    List<?> rows = entities.createNativeQuery(sql).setParameter("lot", lot).getResultList();
    return rows.stream()
        .map(Object[].class::cast)
        .map(c -> new Parent((String) c[0], (String) c[1], (long) c[2], (double) c[3]))
        .toList();
  }
}
