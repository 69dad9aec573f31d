package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Pools;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.lots.internal.HoldRow;
import org.barreltally.lots.internal.LotRow;
import org.barreltally.lots.internal.LotRows;
import org.barreltally.refusal.InvalidField;

/**
 * Holds lots and releases them. A held lot is not drawn, promised, printed or sent; what is already
 * out shows in its trace.
 */
@ApplicationScoped
public class Holds {

  private final LotRows rows;
  private final EntityManager entities;
  private final Pools pools;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;
  private final Instance<ReleaseRule> rules;

  public Holds(
      LotRows rows,
      EntityManager entities,
      Pools pools,
      Days days,
      Ids ids,
      RecordedBy recordedBy,
      Instance<ReleaseRule> rules) {
    this.rows = rows;
    this.entities = entities;
    this.pools = pools;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
    this.rules = rules;
  }

  /** Holds a lot; holding a held lot again records the further reason. */
  @Transactional
  public Lot hold(String code, String reason) {
    return step(locked(code), code, true, reason);
  }

  /**
   * Holds several lots at once, for one reason.
   *
   * @param codes at least one, each of a lot that is known
   */
  @Transactional
  public void holdAll(Collection<String> codes, String reason) {
    List<LotRow> locked =
        rows.find("code in ?1 order by code", codes)
            .withLock(LockModeType.PESSIMISTIC_WRITE)
            .list();
    locked.forEach(row -> note(row, row.asLot().code(), true, reason));
    pools.hold(codes, true);
  }

  /**
   * Releases a held lot.
   *
   * @throws NotHeld if it is not held
   * @throws NotGraded if its colour was never measured or nobody tasted it
   */
  @Transactional
  public Lot release(String code, String reason) {
    LotRow row = locked(code);
    Lot lot = row.asLot();
    if (!lot.held()) {
      throw new NotHeld(code);
    }
    if (lot.grade() == null) {
      throw new NotGraded(code);
    }
    rules.forEach(rule -> rule.releasing(code));
    return step(row, code, false, reason);
  }

  private Lot step(LotRow row, String code, boolean held, String reason) {
    note(row, code, held, reason);
    pools.hold(code, held);
    return row.asLot();
  }

  private void note(LotRow row, String code, boolean held, String reason) {
    if (reason == null || reason.isBlank()) {
      throw new InvalidField("reason", "Say why the lot is " + (held ? "held." : "released."));
    }
    row.held(held);
    entities.persist(new HoldRow(ids.next(), code, held, reason, days.now(), recordedBy.user()));
  }

  private LotRow locked(String code) {
    LotRow row = rows.findById(code, LockModeType.PESSIMISTIC_WRITE);
    if (row == null) {
      throw new UnknownLot(code);
    }
    return row;
  }
}
