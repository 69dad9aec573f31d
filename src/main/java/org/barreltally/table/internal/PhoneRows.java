package org.barreltally.table.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.table.Pairing;
import org.barreltally.table.Phone;

/** The rows of phones and of the codes that pair them. */
@ApplicationScoped
public class PhoneRows {

  /** A code that was shown. */
  public record Opened(String name, UUID madeBy) {}

  /** A phone's token, and whose it is. */
  public record Known(UUID token, UUID holder) {}

  private final EntityManager entities;

  PhoneRows(EntityManager entities) {
    this.entities = entities;
  }

  public void open(byte[] hash, Pairing pairing, UUID by, Instant at) {
    entities
        .createNativeQuery(
            "INSERT INTO phone_pairings (code_hash, name, made_by, made_at, expires_at)"
                + " VALUES (:hash, :name, :by, :at, :until)")
        .setParameter("hash", hash)
        .setParameter("name", pairing.name())
        .setParameter("by", by)
        .setParameter("at", at)
        .setParameter("until", pairing.expiresAt())
        .executeUpdate();
  }

  /** Uses a code up, once; empty if it cannot be used. */
  public Optional<Opened> use(byte[] hash, Instant now) {
    int used =
        entities
            .createNativeQuery(
                "UPDATE phone_pairings SET used_at = :now"
                    + " WHERE code_hash = :hash AND used_at IS NULL AND expires_at > :now")
            .setParameter("now", now)
            .setParameter("hash", hash)
            .executeUpdate();
    return used == 0 ? Optional.empty() : Optional.of(opened(hash));
  }

  private Opened opened(byte[] hash) {
    Tuple row =
        (Tuple)
            entities
                .createNativeQuery(
                    "SELECT name, made_by FROM phone_pairings WHERE code_hash = :hash", Tuple.class)
                .setParameter("hash", hash)
                .getSingleResult();
    return new Opened(row.get("name", String.class), row.get("made_by", UUID.class));
  }

  public void add(UUID id, Opened opened, UUID token, Instant at) {
    entities
        .createNativeQuery(
            "INSERT INTO phones (id, name, token, paired_at, paired_by)"
                + " VALUES (:id, :name, :token, :at, :by)")
        .setParameter("id", id)
        .setParameter("name", opened.name())
        .setParameter("token", token)
        .setParameter("at", at)
        .setParameter("by", opened.madeBy())
        .executeUpdate();
  }

  public Optional<Known> find(UUID id) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT token, t.user_id FROM phones p JOIN access_tokens t ON t.id = p.token"
                    + " WHERE p.id = :id",
                Tuple.class)
            .setParameter("id", id)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(row -> new Known(row.get("token", UUID.class), row.get("user_id", UUID.class)))
        .findFirst();
  }

  /** Marks a phone as cut off; says whether it was not so before. */
  public boolean cutOff(UUID id, Instant at) {
    return entities
            .createNativeQuery(
                "UPDATE phones SET cut_off_at = :at WHERE id = :id AND cut_off_at IS NULL")
            .setParameter("at", at)
            .setParameter("id", id)
            .executeUpdate()
        == 1;
  }

  public List<Phone> all() {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT p.id, p.name, p.paired_at, coalesce(p.cut_off_at, t.revoked_at) AS cut_off_at,"
                    + " t.used_on FROM phones p JOIN access_tokens t ON t.id = p.token"
                    + " ORDER BY p.paired_at DESC, p.id",
                Tuple.class)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Phone(
                    row.get("id", UUID.class),
                    row.get("name", String.class),
                    row.get("paired_at", Instant.class),
                    row.get("cut_off_at", Instant.class),
                    day(row.get("used_on"))))
        .toList();
  }

  private static LocalDate day(Object value) {
    return value instanceof java.sql.Date date ? date.toLocalDate() : (LocalDate) value;
  }
}
