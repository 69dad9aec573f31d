package org.barreltally.netcontents.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.netcontents.AllowedVariation;

/** The rows of {@code allowed_variations}, which are only ever added. */
@ApplicationScoped
public class VariationRows {

  private static final int ML_DECIMALS = 9;

  private final EntityManager entities;
  private final Json json;
  private final RecordedBy recordedBy;

  VariationRows(EntityManager entities, Json json, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.recordedBy = recordedBy;
  }

  public void add(AllowedVariation entered) {
    entities
        .createNativeQuery(
            "INSERT INTO allowed_variations"
                + " (id, container, over_ml, up_to_ml, said, recorded_at, recorded_by)"
                + " VALUES (:id, CAST(:container AS text), CAST(:over AS numeric), CAST(:upTo AS numeric),"
                + " CAST(:said AS jsonb), :at, :by)")
        .setParameter("id", entered.id())
        .setParameter("container", entered.container())
        .setParameter("over", mL(entered.over()))
        .setParameter("upTo", mL(entered.upTo()))
        .setParameter("said", json.write(entered))
        .setParameter("at", entered.enteredAt())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /** The newest for the container, else the newest for a range its contents lie in. */
  public Optional<AllowedVariation> holdingFor(String container, BigDecimal contentsML) {
    return read(
            entities
                .createNativeQuery(
                    "SELECT CAST(said AS text) FROM allowed_variations WHERE container = :container"
                        + " OR over_ml < :mL AND up_to_ml >= :mL"
                        + " ORDER BY container IS NULL, id DESC LIMIT 1")
                .setParameter("container", container)
                .setParameter("mL", contentsML.setScale(ML_DECIMALS, RoundingMode.HALF_UP))
                .getResultList())
        .stream()
        .findFirst();
  }

  public Optional<AllowedVariation> find(UUID id) {
    return read(
            entities
                .createNativeQuery(
                    "SELECT CAST(said AS text) FROM allowed_variations WHERE id = :id")
                .setParameter("id", id)
                .getResultList())
        .stream()
        .findFirst();
  }

  public List<AllowedVariation> list(UUID after, int limit) {
    return read(
        entities
            .createNativeQuery(
                "SELECT CAST(said AS text) FROM allowed_variations WHERE id > :after ORDER BY id")
            .setParameter("after", after == null ? new UUID(0, 0) : after)
            .setMaxResults(limit)
            .getResultList());
  }

  private static String mL(Quantity volume) {
    return volume == null
        ? null
        : volume.in(Unit.ML).setScale(ML_DECIMALS, RoundingMode.HALF_UP).toPlainString();
  }

  private List<AllowedVariation> read(List<?> said) {
    return said.stream().map(row -> json.read(row, AllowedVariation.class)).toList();
  }
}
