package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.sql.PreparedStatement;
import java.util.List;
import java.util.Map;
import org.hibernate.Session;

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
    entities.flush();
    double all = grams.values().stream().mapToLong(Long::longValue).sum();
    entities
        .unwrap(Session.class)
        .doWork(
            connection -> {
              try (PreparedStatement insert =
                  connection.prepareStatement(
                      "INSERT INTO lot_parents (child, parent, grams, share) VALUES (?, ?, ?, ?)")) {
                for (Map.Entry<String, Long> part : grams.entrySet()) {
                  insert.setString(1, child);
                  insert.setString(2, part.getKey());
                  insert.setLong(3, part.getValue());
                  // only unwashed vessels and nothing else: each is as likely
                  insert.setDouble(4, all > 0 ? part.getValue() / all : 1.0 / grams.size());
                  insert.addBatch();
                }
                insert.executeBatch();
              }
            });
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
