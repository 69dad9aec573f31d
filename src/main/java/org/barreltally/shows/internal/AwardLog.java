package org.barreltally.shows.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.shows.Award;
import org.barreltally.shows.EnterAward;

/** Awards, only ever added; the newest of a show, class, lot and size holds. */
@ApplicationScoped
public class AwardLog {

  private static final String NEWEST =
      """
      SELECT * FROM (
        SELECT DISTINCT ON (a.show, a.class, a.lot, a.container)
          a.id, a.show, s.name, s.ends, a.class, a.lot, a.container, a.score, a.ribbon, a.recorded_at
        FROM show_awards a JOIN shows s ON s.id = a.show
        WHERE %s
        ORDER BY a.show, a.class, a.lot, a.container, a.id DESC) AS newest
      ORDER BY ends DESC, class, lot, container
      """;

  /** Jars of the size and grade must still stand at own places, of a lot that is not held. */
  private static final String ON_HAND =
      """
      a.lot IN (SELECT i.lot FROM items i JOIN balances b ON b.item = i.id
          JOIN places p ON p.code = b.standing_at
        WHERE i.container = :which AND i.grade = :grade AND NOT i.held
          AND p.kind IN ('home', 'out') AND b.amount > 0)
        AND (a.container IS NULL OR a.container = :which)
      """;

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  AwardLog(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  public UUID keep(UUID show, EnterAward said) {
    UUID id = ids.next();
    entities
        .createNativeQuery(
            "INSERT INTO show_awards"
                + " (id, show, class, lot, container, score, ribbon, recorded_at, recorded_by)"
                + " VALUES (:id, :show, :class, :lot, CAST(:container AS text),"
                + " CAST(:score AS numeric), CAST(:ribbon AS text), :at, :by)")
        .setParameter("id", id)
        .setParameter("show", show)
        .setParameter("class", said.judgedClass().strip())
        .setParameter("lot", said.lot())
        .setParameter("container", said.container())
        .setParameter("score", said.score())
        .setParameter("ribbon", said.ribbon() == null ? null : said.ribbon().strip())
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    return id;
  }

  public List<Award> ofShow(UUID show) {
    return read("a.show = :which", show);
  }

  public List<Award> ofLot(String lot) {
    return read("a.lot = :which", lot);
  }

  /** Of lots of which jars of a size and grade are on hand. */
  public List<Award> onHand(String container, String grade) {
    return read(asked(ON_HAND, container).setParameter("grade", grade));
  }

  private List<Award> read(String condition, Object which) {
    return read(asked(condition, which));
  }

  private Query asked(String condition, Object which) {
    return entities
        .createNativeQuery(NEWEST.formatted(condition), Tuple.class)
        .setParameter("which", which);
  }

  private static List<Award> read(Query query) {
    List<?> rows = query.getResultList();
    return rows.stream().map(row -> award((Tuple) row)).toList();
  }

  private static Award award(Tuple row) {
    BigDecimal score = row.get("score", BigDecimal.class);
    return new Award(
        row.get("id", UUID.class),
        row.get("show", UUID.class),
        row.get("name", String.class),
        row.get("ends", LocalDate.class),
        row.get("class", String.class),
        row.get("lot", String.class),
        row.get("container", String.class),
        score == null ? null : score.stripTrailingZeros(),
        row.get("ribbon", String.class),
        row.get("recorded_at", Instant.class));
  }
}
