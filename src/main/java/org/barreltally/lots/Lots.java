package org.barreltally.lots;

import io.quarkus.panache.common.Parameters;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.barreltally.lots.internal.LotRow;
import org.barreltally.lots.internal.LotRows;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Uncertain;

/** The lots of the book: opened once, then graded, held and released, never changed. */
@ApplicationScoped
public class Lots {

  /** Which lots to list; a null lets all through. */
  public record Filter(Lot.Kind kind, ColorClass grade, Boolean held) {}

  private final LotRows rows;

  public Lots(LotRows rows) {
    this.rows = rows;
  }

  /** Opens a lot; it has no grade until one is measured. */
  @Transactional
  public Lot open(
      String code, Lot.Kind kind, LocalDate madeOn, List<Integer> seasons, Uncertain brix) {
    LotRow row = new LotRow(code, kind, madeOn, seasons, brix);
    rows.persist(row);
    return row.asLot();
  }

  public Optional<Lot> find(String code) {
    return rows.findByIdOptional(code).map(LotRow::asLot);
  }

  /**
   * The lot an address names.
   *
   * @throws UnknownLot as not found
   */
  public Lot at(String code) {
    return find(code).orElseThrow(() -> new UnknownLot(code));
  }

  /**
   * The lot a field names.
   *
   * @throws UnknownLot naming the field
   */
  public Lot named(String code, String field) {
    return find(code).orElseThrow(() -> new UnknownLot(code, field));
  }

  /**
   * The lot, kept from being graded, held or released by another until this transaction ends.
   *
   * @throws LotHeld if it is held
   */
  public Lot drawable(String code, String field) {
    Lot lot =
        rows.findByIdOptional(code, LockModeType.PESSIMISTIC_READ)
            .map(LotRow::asLot)
            .orElseThrow(() -> new UnknownLot(code, field));
    if (lot.held()) {
      throw new LotHeld(code, field);
    }
    return lot;
  }

  /**
   * The lots of some codes, kept from being graded, held or released by others until this
   * transaction ends. Locked by code, so that two callers never wait for each other in a ring.
   *
   * @return by code; a code that is no lot is not in it
   */
  public Map<String, Lot> locked(Collection<String> codes) {
    return rows
        .find("code in ?1 order by code", codes)
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .stream()
        .map(LotRow::asLot)
        .collect(Collectors.toMap(Lot::code, Function.identity()));
  }

  /** Lots by code, after a code (or null), at most so many. */
  @Transactional
  public List<Lot> list(Filter filter, String after, int limit) {
    StringBuilder condition = new StringBuilder("code > :after");
    Parameters parameters = Parameters.with("after", after == null ? "" : after);
    if (filter.kind() != null) {
      condition.append(" and kind = :kind");
      parameters.and("kind", filter.kind().code());
    }
    if (filter.grade() != null) {
      condition.append(" and grade = :grade");
      parameters.and("grade", filter.grade().code());
    }
    if (filter.held() != null) {
      condition.append(" and held = :held");
      parameters.and("held", filter.held());
    }
    return rows.find(condition + " order by code", parameters).page(0, limit).stream()
        .map(LotRow::asLot)
        .toList();
  }
}
