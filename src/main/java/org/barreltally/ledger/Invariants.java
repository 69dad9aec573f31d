package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import org.hibernate.Session;

/**
 * What must always hold in the book, each as a named question in {@code db/invariants} whose answer
 * must be empty. The tests ask the same questions as the owner does.
 */
@ApplicationScoped
public class Invariants {

  /** At most so many violations of one invariant are listed. */
  public static final int VIOLATIONS_LISTED = 100;

  /** The names, each a file {@code db/invariants/<name>.sql}. */
  public static final List<String> NAMES =
      List.of(
          "entries-sum-to-zero",
          "movements-are-whole",
          "balances-are-their-entries",
          "balances-know-their-size",
          "histories-are-unbroken",
          "nothing-below-zero",
          "availability-is-the-shelf",
          "reserved-is-its-steps",
          "conversions-keep-mass",
          "reversals-mirror",
          "shares-are-whole",
          "supplies-are-their-rows",
          "gift-promises-are-reserved",
          "gift-jars-are-moved",
          "recalled-lots-are-held",
          "closed-years-stand",
          "log-entries-are-whole");

  /** An invariant and the rows that break it; none when it holds. */
  public record Finding(String name, List<Map<String, Object>> violations) {}

  private final EntityManager entities;

  public Invariants(EntityManager entities) {
    this.entities = entities;
  }

  @Transactional
  public List<Finding> check() {
    return entities.unwrap(Session.class).doReturningWork(InvariantQuestions::ask);
  }
}
