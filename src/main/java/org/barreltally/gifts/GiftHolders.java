package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;

/** Who holds jars of a lot from gift orders: the question a recall begins with. */
@ApplicationScoped
public class GiftHolders {

  /**
   * Jars of the lot in a recipient's boxes.
   *
   * @param name of the recipient; null once it was removed
   * @param buyer who ordered; null once it was removed
   * @param at where the jars are
   */
  public record Holder(
      UUID order, int n, String name, String buyer, String container, long count, Stage at) {}

  private final EntityManager entities;

  GiftHolders(EntityManager entities) {
    this.entities = entities;
  }

  /** By order and number; those whose jars came home are not in it. */
  @Transactional
  public List<Holder> of(String lot) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT j.order_id, j.n, a.name, b.name AS buyer, i.container, j.stage,"
                    + " CAST(sum(j.pieces) AS bigint) AS pieces FROM gift_jars j"
                    + " JOIN items i ON i.id = j.item JOIN gift_orders o ON o.id = j.order_id"
                    + " JOIN gift_buyers b ON b.id = o.buyer"
                    + " JOIN gift_addresses a ON a.order_id = j.order_id AND a.n = j.n"
                    + " WHERE i.lot = :lot"
                    + " GROUP BY j.order_id, j.n, a.name, b.name, i.container, j.stage"
                    + " HAVING sum(j.pieces) > 0 ORDER BY j.order_id, j.n, i.container, j.stage",
                Tuple.class)
            .setParameter("lot", lot)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Holder(
                    row.get("order_id", UUID.class),
                    row.get("n", Integer.class),
                    row.get("name", String.class),
                    row.get("buyer", String.class),
                    row.get("container", String.class),
                    row.get("pieces", Long.class),
                    Stage.of(row.get("stage", String.class))))
        .toList();
  }
}
