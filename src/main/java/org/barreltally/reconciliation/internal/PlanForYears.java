package org.barreltally.reconciliation.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;

/**
 * Has PostgreSQL plan the questions of a transaction for the very years asked. A plan for any years
 * expects few movements, and reads the entries of a whole book one by one.
 */
@ApplicationScoped
public class PlanForYears {

  private static final String ASK =
      "SELECT set_config('plan_cache_mode', 'force_custom_plan', true)";

  private final EntityManager entities;

  PlanForYears(EntityManager entities) {
    this.entities = entities;
  }

  /** Until the transaction ends. */
  public void begin() {
    entities.createNativeQuery(ASK).getSingleResult();
  }
}
