package org.barreltally.errands.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.errands.Errand;
import org.barreltally.errands.Errands;
import org.barreltally.errands.Outcome;
import org.barreltally.errands.Why;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Errands in the database, where every copy of the program finds them. */
@ApplicationScoped
public class ErrandRows {

  /** Whoever does an errand says so more often than this, or is gone. */
  static final Duration SILENCE = Duration.ofMinutes(1);

  private static final String SELECT =
      """
      SELECT id, kind, asked_by, asked_at,
        CASE WHEN ended_at IS NULL AND seen_at < cast(:silent AS timestamptz) THEN 'broken-off' ELSE state END AS state,
        steps_done, steps, ended_at, file_name, leads_to, problem
      FROM errands WHERE asked_at > cast(:oldest AS timestamptz)
      """;

  private static final ObjectMapper JSON = new ObjectMapper();

  private final EntityManager entities;
  private final boolean standby;

  /**
   * @param standby whether the database is one, which has no rows of unlogged tables
   */
  ErrandRows(
      EntityManager entities,
      @ConfigProperty(name = "barreltally.reading-copy", defaultValue = "false") boolean standby) {
    this.entities = entities;
    this.standby = standby;
  }

  public void add(UUID id, String kind, UUID by, Instant at) {
    entities
        .createNativeQuery(
            "INSERT INTO errands (id, kind, asked_by, asked_at, state, seen_at)"
                + " VALUES (:id, :kind, :by, :at, 'waiting', :at)")
        .setParameter("id", id)
        .setParameter("kind", kind)
        .setParameter("by", by)
        .setParameter("at", utc(at))
        .executeUpdate();
  }

  public Optional<Errand> find(UUID id, Instant now) {
    return read(select(" AND id = :id", now).setParameter("id", id)).stream().findFirst();
  }

  /**
   * @param by null for those of everybody
   */
  public List<Errand> list(UUID by, UUID before, int limit, Instant now) {
    Query query =
        select(
            """
             AND (cast(:by AS uuid) IS NULL OR asked_by = :by)
             AND (cast(:before AS uuid) IS NULL OR (asked_at, id) < (SELECT b.asked_at, b.id FROM errands b WHERE b.id = :before))
            ORDER BY asked_at DESC, id DESC LIMIT :limit
            """,
            now);
    return read(
        query.setParameter("by", by).setParameter("before", before).setParameter("limit", limit));
  }

  private Query select(String where, Instant now) {
    return entities
        .createNativeQuery(SELECT + where, Tuple.class)
        .setParameter("silent", utc(now.minus(SILENCE)))
        .setParameter("oldest", utc(now.minus(Errands.KEPT)));
  }

  private List<Errand> read(Query query) {
    if (standby) {
      return List.of();
    }
    List<?> rows = query.getResultList();
    return rows.stream().map(Tuple.class::cast).map(ErrandRows::errand).toList();
  }

  private static Errand errand(Tuple row) {
    return new Errand(
        row.get("id", UUID.class),
        row.get("kind", String.class),
        row.get("asked_by", UUID.class),
        row.get("asked_at", Instant.class),
        Errand.State.of(row.get("state", String.class)),
        row.get("steps_done", Integer.class),
        row.get("steps", Integer.class),
        row.get("ended_at", Instant.class),
        row.get("file_name", String.class),
        row.get("leads_to", String.class),
        read(row.get("problem", String.class)));
  }

  /** Null if it has no paper. */
  public Outcome paper(UUID id) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT file_name, media_type, paper FROM errands WHERE id = :id AND paper IS NOT NULL",
                Tuple.class)
            .setParameter("id", id)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Outcome(
                    row.get("file_name", String.class),
                    row.get("media_type", String.class),
                    row.get("paper", byte[].class),
                    null))
        .findFirst()
        .orElse(null);
  }

  void progress(UUID id, int done, Integer steps, Instant now) {
    entities
        .createNativeQuery(
            "UPDATE errands SET state = 'at-work', steps_done = :done, steps = cast(:steps AS int),"
                + " seen_at = :now WHERE id = :id AND ended_at IS NULL")
        .setParameter("done", done)
        .setParameter("steps", steps)
        .setParameter("now", utc(now))
        .setParameter("id", id)
        .executeUpdate();
  }

  void alive(Collection<UUID> ids, Instant now) {
    entities
        .createNativeQuery(
            "UPDATE errands SET seen_at = :now WHERE id IN (:ids) AND ended_at IS NULL")
        .setParameter("now", utc(now))
        .setParameter("ids", ids)
        .executeUpdate();
  }

  void done(UUID id, Outcome outcome, Instant now) {
    entities
        .createNativeQuery(
            "UPDATE errands SET state = 'done', steps_done = coalesce(steps, steps_done), ended_at = :now,"
                + " seen_at = :now, file_name = :name, media_type = :type, paper = :paper,"
                + " leads_to = :leads WHERE id = :id")
        .setParameter("now", utc(now))
        .setParameter("name", outcome.fileName())
        .setParameter("type", outcome.mediaType())
        .setParameter("paper", outcome.paper())
        .setParameter("leads", outcome.leadsTo())
        .setParameter("id", id)
        .executeUpdate();
  }

  void refused(UUID id, Why problem, Instant now) {
    entities
        .createNativeQuery(
            "UPDATE errands SET state = 'refused', ended_at = :now, seen_at = :now, problem = :problem"
                + " WHERE id = :id")
        .setParameter("now", utc(now))
        .setParameter("problem", written(problem))
        .setParameter("id", id)
        .executeUpdate();
  }

  /** Forgets what is older than it is kept. */
  void forget(Instant now) {
    entities
        .createNativeQuery("DELETE FROM errands WHERE asked_at <= :oldest")
        .setParameter("oldest", utc(now.minus(Errands.KEPT)))
        .executeUpdate();
  }

  private static String written(Why why) {
    try {
      return JSON.writeValueAsString(why);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Why read(String json) {
    try {
      return json == null ? null : JSON.readValue(json, Why.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static OffsetDateTime utc(Instant instant) {
    return instant.atOffset(ZoneOffset.UTC);
  }
}
