package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.internal.ItemRows;

/** The items of the book. */
@ApplicationScoped
public class Items {

  private final EntityManager entities;
  private final Ids ids;

  public Items(EntityManager entities, Ids ids) {
    this.entities = entities;
    this.ids = ids;
  }

  /** Enters items; their lots must be known. Several at once cost one round trip. */
  public void add(List<Item> items) {
    Bundle write = Bundle.byKeys();
    ItemRows.add(items, write);
    write.send(entities);
  }

  /**
   * The item that stands for jars whose lot nobody wrote down, made if it is new. It stands below
   * zero at a table that sold such jars, until counts say which lots they were of.
   *
   * @param grade null if that is not known either; then the jars belong to no pool
   */
  public Item withoutLot(String container, String grade) {
    entities.flush();
    Optional<Item> known = findWithoutLot(container, grade);
    if (known.isPresent()) {
      return known.get();
    }
    entities
        .createNativeQuery(
            "INSERT INTO items (id, container, grade) VALUES (:id, :container, CAST(:grade AS text))"
                + " ON CONFLICT DO NOTHING")
        .setParameter("id", ids.next())
        .setParameter("container", container)
        .setParameter("grade", grade)
        .executeUpdate();
    return findWithoutLot(container, grade).orElseThrow();
  }

  private Optional<Item> findWithoutLot(String container, String grade) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT id, lot, container, grams_each, grade, held FROM items WHERE lot IS NULL"
                    + " AND container = :container"
                    + " AND grade IS NOT DISTINCT FROM CAST(:grade AS text)")
            .setParameter("container", container)
            .setParameter("grade", grade)
            .getResultList();
    return rows.stream().map(Items::read).findFirst();
  }

  /** The item that is the bulk syrup of a lot. */
  public Optional<Item> syrupOf(String lot) {
    return of(lot).stream().filter(Item::isSyrup).findFirst();
  }

  /** The item that is the jars of a lot in one container. */
  public Optional<Item> jarsOf(String lot, String container) {
    return of(lot).stream().filter(item -> container.equals(item.container())).findFirst();
  }

  /** Every item of a lot, its bulk syrup first. */
  public List<Item> of(String lot) {
    return of(List.of(lot));
  }

  /** Every item of some lots, by lot, bulk syrup first. */
  public List<Item> of(Collection<String> lots) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT id, lot, container, grams_each, grade, held FROM items"
                    + " WHERE lot IN (:lots) ORDER BY lot, container NULLS FIRST")
            .setParameter("lots", lots)
            .getResultList();
    return rows.stream().map(Items::read).toList();
  }

  private static Item read(Object row) {
    Object[] c = (Object[]) row;
    return new Item(
        (UUID) c[0],
        (String) c[1],
        (String) c[2],
        (BigDecimal) c[3],
        (String) c[4],
        (Boolean) c[5]);
  }
}
