package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.barreltally.ledger.Days;

/**
 * The lots whose page anybody may open who scans a jar. None is until the owner says so, lot by
 * lot; a lot that is held shows nothing until it is released.
 */
@ApplicationScoped
public class PublicLots {

  private final EntityManager entities;
  private final AwardsOfLots awards;
  private final Family family;
  private final Lots lots;
  private final Days days;
  private final BushesOfSeason bushes;

  PublicLots(
      EntityManager entities,
      AwardsOfLots awards,
      Family family,
      Lots lots,
      Days days,
      BushesOfSeason bushes) {
    this.entities = entities;
    this.awards = awards;
    this.family = family;
    this.lots = lots;
    this.days = days;
    this.bushes = bushes;
  }

  /** What the lot tells, if its page may be seen. */
  @Transactional
  public Optional<ShownLot> seen(String code) {
    return all().contains(code)
        ? lots.find(code).filter(lot -> !lot.held()).map(lot -> shown(lot, boiled(code)))
        : Optional.empty();
  }

  private ShownLot shown(Lot lot, List<LocalDate> boiled) {
    LocalDate last = boiled.isEmpty() ? lot.madeOn() : boiled.get(boiled.size() - 1);
    List<String> from =
        lot.seasons().stream()
            .flatMap(season -> bushes.gathered(season, last).stream())
            .distinct()
            .toList();
    return new ShownLot(lot, boiled, from, awards.of(lot.code()));
  }

  private List<LocalDate> boiled(String code) {
    return family.above(code).stream()
        .map(Parent::parent)
        .distinct()
        .flatMap(parent -> lots.find(parent).stream())
        .filter(parent -> parent.kind() == Lot.Kind.BULK)
        .map(Lot::madeOn)
        .distinct()
        .sorted()
        .toList();
  }

  /** The codes of lots whose page is public. */
  @Transactional
  public Set<String> all() {
    List<?> rows = entities.createNativeQuery("SELECT lot FROM public_lots").getResultList();
    Set<String> codes = new TreeSet<>();
    rows.forEach(row -> codes.add((String) row));
    return codes;
  }

  /**
   * Makes the page of a lot public; one that is stays so.
   *
   * @throws UnknownLot if there is no such lot
   * @throws NotInJars if it is syrup in bulk
   */
  @Transactional
  public void show(String code) {
    if (lots.at(code).kind() != Lot.Kind.PACKED) {
      throw new NotInJars(code);
    }
    entities
        .createNativeQuery(
            "INSERT INTO public_lots (lot, since) VALUES (:lot, :since) ON CONFLICT DO NOTHING")
        .setParameter("lot", code)
        .setParameter("since", days.now())
        .executeUpdate();
  }

  /**
   * Takes the page of a lot away again; one that is not public stays so.
   *
   * @throws UnknownLot if there is no such lot
   */
  @Transactional
  public void hide(String code) {
    entities
        .createNativeQuery("DELETE FROM public_lots WHERE lot = :lot")
        .setParameter("lot", lots.at(code).code())
        .executeUpdate();
  }
}
