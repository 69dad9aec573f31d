package org.barreltally.sugarbush.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.util.List;
import org.barreltally.sugarbush.Bush;

/** Bushes of a season with their taps, as they are known now or were at a time. */
@ApplicationScoped
public class BushRows {

  /** Later than anything that was said. */
  private static final Instant ALL = Instant.parse("9999-01-01T00:00:00Z");

  private static final String OWN =
      """
      SELECT b.name, (SELECT t.taps FROM own_bush_taps t
          WHERE t.bush = b.id AND t.season = :season AND t.recorded_at <= :asof
          ORDER BY t.from_day DESC, t.id DESC LIMIT 1) AS taps, NULL AS agreed
      FROM own_bushes b WHERE b.recorded_at <= :asof ORDER BY lower(b.name)
      """;

  private static final String LEASED =
      """
      SELECT l.bush AS name, (SELECT t.taps FROM lease_taps t
          WHERE t.lease = l.id AND t.kind = 'set' AND t.recorded_at <= :asof
          ORDER BY t.from_day DESC, t.id DESC LIMIT 1) AS taps,
        (SELECT t.taps FROM lease_taps t
          WHERE t.lease = l.id AND t.kind = 'agreed' AND t.recorded_at <= :asof
          ORDER BY t.from_day DESC, t.id DESC LIMIT 1) AS agreed
      FROM leases l WHERE l.season = :season AND l.recorded_at <= :asof ORDER BY l.id DESC
      """;

  private final EntityManager entities;

  BushRows(EntityManager entities) {
    this.entities = entities;
  }

  /**
   * All of one's own, each with the newest count of a season.
   *
   * @param asOf what was said by then counts; null for all
   */
  public List<Bush> own(int season, Instant asOf) {
    return rows(OWN, season, asOf).stream()
        .map(row -> new Bush(name(row), true, false, taps(row, "taps"), false))
        .toList();
  }

  /**
   * One for each lease of a season, with the taps set, or those agreed where none were counted.
   *
   * @param asOf what was said by then counts; null for all
   */
  public List<Bush> leased(int season, Instant asOf) {
    return rows(LEASED, season, asOf).stream().map(BushRows::leased).toList();
  }

  private static Bush leased(Tuple row) {
    Integer set = taps(row, "taps");
    Integer agreed = taps(row, "agreed");
    boolean onlyAgreed = set == null && agreed != null;
    return new Bush(name(row), false, true, set == null ? agreed : set, onlyAgreed);
  }

  private List<Tuple> rows(String sql, int season, Instant asOf) {
    List<?> rows =
        entities
            .createNativeQuery(sql, Tuple.class)
            .setParameter("season", season)
            .setParameter("asof", asOf == null ? ALL : asOf)
            .getResultList();
    return rows.stream().map(Tuple.class::cast).toList();
  }

  private static String name(Tuple row) {
    return row.get("name", String.class);
  }

  private static Integer taps(Tuple row, String column) {
    return row.get(column, Integer.class);
  }
}
