package org.barreltally.canning.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import org.barreltally.canning.PackSheet;
import org.barreltally.canning.RunsShrink;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;

/** Adds up what sheets say was lost, in the database: a season may hold thousands of them. */
@ApplicationScoped
public class ShrinkSums {

  /** Every sheet tells it in gallons at 68 °F. */
  private static final String CAUSE =
      "coalesce(sum(CAST(r.sheet #>> '{shrink,byCause,%1$s,value}' AS numeric)), 0) AS %1$s";

  private static final String SUMS =
      """
      SELECT count(*) AS runs, %s, %s, %s, %s
      FROM canning_runs r JOIN movements m ON m.id = r.movement
      WHERE %%s AND NOT EXISTS (SELECT 1 FROM movements x WHERE x.reverses = m.id)
      """
          .formatted(
              CAUSE.formatted("filter"),
              CAUSE.formatted("overfill"),
              CAUSE.formatted("broken"),
              CAUSE.formatted("unexplained"));

  private static final String OF_YEAR = SUMS.formatted("m.book_year = :which");
  private static final String OF_LOT = SUMS.formatted("r.lot = :which");

  private final EntityManager entities;

  ShrinkSums(EntityManager entities) {
    this.entities = entities;
  }

  /** Of the runs booked in a year. */
  public RunsShrink ofYear(int year) {
    return sums(OF_YEAR, year);
  }

  /** Of the run that made a lot; of no run if none did. */
  public RunsShrink ofLot(String lot) {
    return sums(OF_LOT, lot);
  }

  private RunsShrink sums(String sql, Object which) {
    Tuple sums =
        (Tuple)
            entities
                .createNativeQuery(sql, Tuple.class)
                .setParameter("which", which)
                .getSingleResult();
    return new RunsShrink(
        sums.get("runs", Number.class).intValue(),
        new PackSheet.Causes(
            gallons(sums, "filter"),
            gallons(sums, "overfill"),
            gallons(sums, "broken"),
            gallons(sums, "unexplained")));
  }

  private static Quantity gallons(Tuple sums, String cause) {
    return new Quantity(sums.get(cause, BigDecimal.class), Unit.GAL);
  }
}
