package org.barreltally.pricing;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.pricing.internal.AddedLists;
import org.barreltally.pricing.internal.PriceListRows;
import org.hibernate.exception.ConstraintViolationException;

/** The price lists. They are only ever added; a list may be replaced or withdrawn. */
@ApplicationScoped
public class PriceLists {

  private final PriceListRows rows;
  private final AddedLists added;
  private final PriceListRules rules;
  private final Days days;
  private final Ids ids;

  PriceLists(PriceListRows rows, AddedLists added, PriceListRules rules, Days days, Ids ids) {
    this.rows = rows;
    this.added = added;
    this.rules = rules;
    this.days = days;
    this.ids = ids;
  }

  /**
   * The list an address names.
   *
   * @throws UnknownPriceList as not found
   */
  @Transactional
  public PriceList at(UUID id) {
    return rows.find(id).orElseThrow(() -> new UnknownPriceList(id));
  }

  /**
   * The list a field names.
   *
   * @throws UnknownPriceList naming the field
   */
  @Transactional
  public PriceList named(UUID id, String field) {
    return rows.find(id).orElseThrow(() -> new UnknownPriceList(id, field));
  }

  /** What became of a list. */
  @Transactional
  public Standing standing(UUID id) {
    return rows.standing(id);
  }

  /**
   * The list that holds for an audience on a day: of several the one valid from the latest day,
   * then the one entered last.
   */
  @Transactional
  public Optional<PriceList> current(Audience audience, LocalDate on) {
    return rows.current(audience, on);
  }

  /**
   * The version of a list that holds on a day: the newest whose first day has come, unless its last
   * day is past or it was withdrawn.
   *
   * @throws UnknownPriceList as not found
   */
  @Transactional
  public Optional<PriceList> holding(UUID id, LocalDate on) {
    return rows.holding(at(id).family(), on);
  }

  /** Lists in the order they were entered, after an id (or null), at most so many. */
  @Transactional
  public List<PriceListSummary> list(Audience audience, UUID after, int limit) {
    return rows.list(audience, after, limit);
  }

  /**
   * Enters a list, or a new version of one.
   *
   * @param read the states of the replaced list that the writer has read; null for any
   * @throws org.barreltally.refusal.InvalidField naming every field that needs mending, and the
   *     refusals of {@link PriceListRules}
   * @throws AlreadyReplaced if the list has a newer version
   * @throws PriceListChanged if it changed since it was read
   */
  @Transactional
  public PriceList enter(EnterPriceList said, Set<String> read) {
    rules.check(said);
    PriceList replaced =
        said.replaces() == null
            ? null
            : rules.replaceable(said, named(said.replaces(), "replaces"));
    if (replaced != null) {
      requireUnchanged(replaced, read);
    }
    PriceList entered = PriceListRules.entered(ids.next(), said, replaced, days.now());
    try {
      added.add(entered);
    } catch (ConstraintViolationException meanwhile) {
      throw new AlreadyReplaced(replaced, null);
    }
    return entered;
  }

  /**
   * Withdraws a list from today on: it is no longer the one that holds, on later days an earlier
   * version or another list is.
   *
   * @param read the states that the writer has read; null for any
   * @throws UnknownPriceList as not found
   * @throws AlreadyWithdrawn if it was withdrawn before
   * @throws PriceListChanged if it changed since it was read
   */
  @Transactional
  public PriceList withdraw(UUID id, String reason, Set<String> read) {
    PriceList list = at(id);
    PriceListRules.checkReason(reason);
    requireUnchanged(list, read);
    Standing standing = rows.standing(id);
    if (standing.withdrawn() != null
        || !added.withdraw(id, new Standing.Withdrawn(days.today(), reason.strip()))) {
      throw new AlreadyWithdrawn(list);
    }
    return list;
  }

  private void requireUnchanged(PriceList list, Set<String> read) {
    if (read != null && !read.contains(rows.standing(list.id()).state())) {
      throw new PriceListChanged(list);
    }
  }
}
