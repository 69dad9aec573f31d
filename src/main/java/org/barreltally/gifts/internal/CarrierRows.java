package org.barreltally.gifts.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.gifts.CarrierTable;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;

/** The carriers' tables in the database. */
@ApplicationScoped
public class CarrierRows {

  private final EntityManager entities;
  private final ObjectMapper json;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  CarrierRows(
      EntityManager entities, ObjectMapper json, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  public UUID add(CarrierTable said) {
    UUID id = ids.next();
    entities
        .createNativeQuery(
            "INSERT INTO carrier_tables (id, carrier, valid_from, said, recorded_at, recorded_by)"
                + " VALUES (:id, :carrier, :from, CAST(:said AS jsonb), :at, :by)")
        .setParameter("id", id)
        .setParameter("carrier", said.name().strip())
        .setParameter("from", said.validFrom())
        .setParameter("said", written(said))
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    return id;
  }

  /** The table of each carrier that holds on a day, by the carrier's name. */
  public List<CarrierTable> holding(LocalDate on) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT DISTINCT ON (lower(carrier)) CAST(said AS text) FROM carrier_tables"
                    + " WHERE valid_from <= :on"
                    + " ORDER BY lower(carrier), valid_from DESC, id DESC")
            .setParameter("on", on)
            .getResultList();
    return rows.stream().map(row -> read((String) row)).toList();
  }

  private CarrierTable read(String said) {
    try {
      return json.readValue(said, CarrierTable.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a carrier's table cannot be read", e);
    }
  }

  private String written(CarrierTable said) {
    try {
      return json.writeValueAsString(said);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a carrier's table cannot be written", e);
    }
  }
}
