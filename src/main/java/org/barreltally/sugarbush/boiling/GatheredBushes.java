package org.barreltally.sugarbush.boiling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;

/** Which bushes gave sap. Tanks mix what they gave, so no boil is of one of them alone. */
@ApplicationScoped
public class GatheredBushes {

  private static final String QUERY =
      """
      SELECT DISTINCT e.bush FROM sugarhouse_entries e
      WHERE e.season = :season AND e.on_day <= :until AND e.bush IS NOT NULL
        AND NOT EXISTS (SELECT 1 FROM sugarhouse_reversals r WHERE r.entry IN (e.id, e.boil))
      ORDER BY e.bush
      """;

  private final EntityManager entities;

  GatheredBushes(EntityManager entities) {
    this.entities = entities;
  }

  /** The bushes that the log names of a season up to a day; what was taken back does not count. */
  @Transactional
  public List<String> by(int season, LocalDate until) {
    List<?> names =
        entities
            .createNativeQuery(QUERY)
            .setParameter("season", season)
            .setParameter("until", until)
            .getResultList();
    return names.stream().map(String.class::cast).toList();
  }
}
