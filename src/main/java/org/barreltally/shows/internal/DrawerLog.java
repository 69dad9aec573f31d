package org.barreltally.shows.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.Money;
import org.barreltally.shows.Drawer;
import org.barreltally.shows.DrawerCount;

/** Counts of cash drawers, only ever added. */
@ApplicationScoped
public class DrawerLog {

  private final EntityManager entities;
  private final ShowJson json;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  DrawerLog(EntityManager entities, ShowJson json, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  public DrawerCount keep(UUID show, String drawer, Drawer said, Money counted, String finding) {
    DrawerCount count = new DrawerCount(ids.next(), drawer, said, counted, finding, days.now());
    entities
        .createNativeQuery(
            "INSERT INTO show_drawers"
                + " (id, show, drawer, said, counted, currency, finding, recorded_at, recorded_by)"
                + " VALUES (:id, :show, :drawer, CAST(:said AS jsonb), :counted, :currency,"
                + " CAST(:finding AS text), :at, :by)")
        .setParameter("id", count.id())
        .setParameter("show", show)
        .setParameter("drawer", drawer)
        .setParameter("said", json.written(said))
        .setParameter("counted", counted.amount())
        .setParameter("currency", counted.currency())
        .setParameter("finding", finding)
        .setParameter("at", count.at())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    return count;
  }

  /** The counts for a show in the order they were recorded. */
  public List<DrawerCount> of(UUID show) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT id, drawer, CAST(said AS text) AS said, counted, currency, finding, recorded_at"
                    + " FROM show_drawers WHERE show = :show ORDER BY id",
                Tuple.class)
            .setParameter("show", show)
            .getResultList();
    return rows.stream().map(row -> count((Tuple) row)).toList();
  }

  private DrawerCount count(Tuple row) {
    return new DrawerCount(
        row.get("id", UUID.class),
        row.get("drawer", String.class),
        json.read(row.get("said", String.class), Drawer.class),
        Money.rounded(row.get("counted", BigDecimal.class), row.get("currency", String.class)),
        row.get("finding", String.class),
        row.get("recorded_at", Instant.class));
  }
}
