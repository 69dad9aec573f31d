package org.barreltally.shows.plan;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.barreltally.measure.ColorClass;
import org.barreltally.shows.Show;

/**
 * Past takings by the ledger: what was packed out to each closed show, less what came home, broke,
 * was sampled or went to another table. By difference, so that it is right by item however the
 * sales were written down.
 */
@ApplicationScoped
public class Takings {

  /** The newest so many shows are heard. */
  private static final int MOST_SHOWS = 1_000;

  private static final String SQL =
      """
      WITH past AS (
        SELECT id, code, name, town, starts, ends,
          CAST(booking ->> 'visitorsExpected' AS integer) AS visitors
        FROM shows WHERE state IN ('closed', 'settled') AND id <> :show AND starts < :before
        ORDER BY starts DESC, id LIMIT :most
      ), told AS (
        SELECT p.id AS show, o.movement FROM past p JOIN show_pack_outs o ON o.show = p.id
        UNION SELECT p.id, t.movement FROM past p JOIN show_transfers t ON t.from_show = p.id
        UNION SELECT p.id, t.movement FROM past p JOIN show_transfers t ON t.to_show = p.id
        UNION SELECT p.id, b.movement FROM past p JOIN show_backs b ON b.show = p.id
        UNION SELECT p.id, m.id FROM movements m JOIN entries e ON e.movement = m.id
          JOIN past p ON p.code = e.place WHERE m.kind = 'write-off'
      ), sums AS (
        SELECT t.show, i.container, i.grade,
          sum(e.amount) FILTER (WHERE e.place = p.code AND m.kind IN ('pack-out', 'table-transfer'))
            AS taken,
          sum(e.amount) FILTER (WHERE e.place = p.code) AS sold,
          sum(e.amount) FILTER (WHERE h.kind = 'home' AND m.kind = 'back') AS home
        FROM told t JOIN past p ON p.id = t.show JOIN movements m ON m.id = t.movement
          JOIN entries e ON e.movement = m.id JOIN places h ON h.code = e.place
          JOIN items i ON i.id = e.item
        WHERE NOT EXISTS (SELECT 1 FROM movements r WHERE r.reverses = m.id)
        GROUP BY t.show, i.container, i.grade
      )
      SELECT p.name, p.town, p.starts, p.ends, p.visitors, s.container, s.grade,
        CAST(s.taken AS bigint), CAST(s.sold AS bigint), CAST(coalesce(s.home, 0) AS bigint)
      FROM sums s JOIN past p ON p.id = s.show
      WHERE s.taken > 0 AND s.grade IS NOT NULL
      ORDER BY p.starts, p.id, s.container, s.grade
      """;

  private final EntityManager entities;

  Takings(EntityManager entities) {
    this.entities = entities;
  }

  /** The takings at shows that began before a show and were counted home, the oldest first. */
  @Transactional
  public List<PastTaking> before(Show show) {
    List<?> rows =
        entities
            .createNativeQuery(SQL)
            .setParameter("show", show.id())
            .setParameter("before", show.starts())
            .setParameter("most", MOST_SHOWS)
            .getResultList();
    return rows.stream().map(row -> taking((Object[]) row)).toList();
  }

  private static PastTaking taking(Object[] c) {
    LocalDate starts = day(c[2]);
    long sold = Math.max(0, (long) c[8]);
    return new PastTaking(
        ShowName.of((String) c[0], (String) c[1]),
        starts,
        new JarKind((String) c[5], ColorClass.of((String) c[6])),
        (long) c[7],
        sold,
        (long) c[9] == 0 && sold > 0,
        1 + (int) ChronoUnit.DAYS.between(starts, day(c[3])),
        (Integer) c[4]);
  }

  private static LocalDate day(Object column) {
    return column instanceof LocalDate day ? day : ((java.sql.Date) column).toLocalDate();
  }
}
