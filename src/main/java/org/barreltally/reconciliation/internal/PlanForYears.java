package org.barreltally.reconciliation.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.function.Supplier;

/**
 * Has PostgreSQL plan the questions of a transaction for the very years asked. A plan for any years
 * expects few movements, and reads the entries of a whole book one by one.
 */
@ApplicationScoped
public class PlanForYears {

  private static final String ASK =
      "SELECT set_config('plan_cache_mode', 'force_custom_plan', true)";
  private static final String NESTED = "SELECT set_config('enable_nestloop', :how, true)";

  private final EntityManager entities;

  PlanForYears(EntityManager entities) {
    this.entities = entities;
  }

  /** Until the transaction ends. */
  public void begin() {
    entities.createNativeQuery(ASK).getSingleResult();
  }

  /**
   * Has what a question gathers on its way joined by hash: PostgreSQL knows no numbers of it,
   * expects a few rows, and compares each of thousands with each other.
   */
  public <T> T byHash(Supplier<T> question) {
    nested("off");
    T answer = question.get();
    nested("on");
    return answer;
  }

  private void nested(String how) {
    entities.createNativeQuery(NESTED).setParameter("how", how).getSingleResult();
  }
}
