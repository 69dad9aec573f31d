package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.barreltally.barrels.internal.BarrelQuery;
import org.barreltally.barrels.internal.FillingRow;
import org.barreltally.barrels.internal.VesselRow;
import org.barreltally.refusal.InvalidField;

/** The vessels themselves: tags, what they are made of, whether they are washed. */
@ApplicationScoped
class Vessels {

  private static final Pattern TAG = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,15}");

  private final EntityManager entities;
  private final BarrelQuery query;

  Vessels(EntityManager entities, BarrelQuery query) {
    this.entities = entities;
    this.query = query;
  }

  /**
   * The vessel of that tag, made known if it is new, kept from others until the transaction ends.
   *
   * @throws BarrelNotEmpty if there is syrup in it
   */
  VesselRow emptied(String tag, boolean heel, Material material, String field) {
    VesselRow vessel = known(tag, heel, material, field);
    contents(tag)
        .filter(barrel -> barrel.state() != BarrelState.DRAINED)
        .ifPresent(
            barrel -> {
              throw new BarrelNotEmpty(tag, barrel.lot().code(), field);
            });
    return vessel;
  }

  /** The vessel of that tag, made known if it is new, whatever is in it. */
  VesselRow known(String tag, boolean heel, Material material, String field) {
    if (tag == null || !TAG.matcher(tag).matches()) {
      throw new InvalidField(
          field,
          "Give the tag: letters, digits, dot, dash or underscore, at most 16, for example B-01.");
    }
    entities
        .createNativeQuery(
            "INSERT INTO vessels (tag, kind, material) VALUES (:tag, :kind, :material)"
                + " ON CONFLICT (tag) DO NOTHING")
        .setParameter("tag", tag)
        .setParameter("kind", heel ? "heel" : "barrel")
        .setParameter("material", material.code())
        .executeUpdate();
    VesselRow vessel = locked(tag).orElseThrow();
    if (vessel.isHeel() != heel) {
      throw new InvalidField(
          field,
          vessel.isHeel()
              ? tag + " is a vessel that keeps heels. Give the barrel another tag."
              : tag + " is a barrel. Keep the heel in a vessel with a tag of its own.");
    }
    return vessel;
  }

  Optional<VesselRow> locked(String tag) {
    return Optional.ofNullable(entities.find(VesselRow.class, tag, LockModeType.PESSIMISTIC_WRITE));
  }

  /**
   * What is or was last in the vessel, kept from being drawn by another until the transaction ends.
   */
  Optional<Barrel> contents(String tag) {
    return query.lock(List.of(tag)).stream().findFirst();
  }

  /**
   * The vessel an address names, with syrup in it, kept from others until the transaction ends.
   *
   * @param on the day on which something was done with it
   * @throws UnknownVessel if it was never filled
   * @throws Drained if nothing is left in it
   * @throws InvalidField naming {@code on} if it was filled later than that
   */
  Barrel filled(String tag, LocalDate on) {
    Barrel barrel = contents(tag).orElseThrow(() -> new UnknownVessel(tag));
    if (barrel.state() == BarrelState.DRAINED) {
      throw new Drained(tag, null);
    }
    if (on.isBefore(barrel.filledOn())) {
      throw new InvalidField(
          "on",
          "%s was filled on %s, after %s. Check the day.".formatted(tag, barrel.filledOn(), on));
    }
    return barrel;
  }

  /** What a vessel takes to the brim, millilitres; null where nobody said. */
  BigDecimal capacityML(String tag) {
    return entities.find(VesselRow.class, tag).capacityML();
  }

  /** Puts a new filling, described already, into the vessel. */
  void put(VesselRow vessel, FillingRow filling) {
    entities.persist(filling);
    vessel.fill(filling.id());
  }
}
