package org.barreltally.sugarbush;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.pricing.Money;
import org.barreltally.sugarbush.internal.CreditRows;
import org.barreltally.sugarbush.internal.LandownerRows;
import org.barreltally.sugarbush.internal.LeaseRows;

/** Leases of trees: agreed, counted, closed at the season's end. */
@ApplicationScoped
public class Leases {

  private final LeaseRows rows;
  private final CreditRows credits;
  private final LandownerRows landowners;
  private final LeaseRules rules;

  Leases(LeaseRows rows, CreditRows credits, LandownerRows landowners, LeaseRules rules) {
    this.rows = rows;
    this.credits = credits;
    this.landowners = landowners;
    this.rules = rules;
  }

  /** Which leases to list; a null lets all through. */
  public record Filter(Integer season, String landowner, Boolean open) {}

  /**
   * The lease of that id.
   *
   * @throws UnknownLease if there is none
   */
  @Transactional
  public Lease at(UUID id) {
    return rows.find(id).orElseThrow(() -> new UnknownLease(id.toString()));
  }

  /** The lease of the same trees for a season. */
  @Transactional
  public Optional<Lease> sameTrees(Lease lease, int season) {
    return rows.find(lease.landowner().id(), lease.bush(), season);
  }

  /** By season, the newest first, after a lease (or null), at most so many. */
  @Transactional
  public List<Lease> list(Filter filter, UUID after, int limit) {
    return rows.list(filter, after, limit);
  }

  /**
   * Agrees a lease. What was left of closed leases of the same trees goes on to it.
   *
   * @throws LeaseExists if these trees are leased for that season already
   * @throws org.barreltally.refusal.InvalidField naming what is missing or out of its range
   */
  @Transactional
  public Lease agree(AgreeLease said) {
    String name = LeaseRules.name(said.landowner(), "landowner", "the landowner's name");
    String bush = LeaseRules.name(said.bush(), "bush", "the name of the sugarbush");
    int season = LeaseRules.season(said.season());
    LeaseTerms terms = rules.terms(said.terms());
    List<TapCount> taps = rules.taps(said.taps(), terms.governs(), "taps");
    Landowner landowner = landowners.known(name);
    landowners.lock(landowner.id());
    rows.find(landowner.id(), bush, season)
        .ifPresent(
            lease -> {
              throw new LeaseExists(lease);
            });
    UUID id = rows.add(landowner.id(), bush, season);
    rows.agree(id, terms);
    taps.forEach(count -> rows.count(id, count));
    credits.carryInto(id, landowner.id(), bush, season);
    return at(id);
  }

  /**
   * Agrees other terms for a lease; they hold for its whole season.
   *
   * @throws LeaseClosed if it was closed
   */
  @Transactional
  public Lease agreeAnew(UUID id, LeaseTerms said) {
    Lease lease = opened(id);
    rows.agree(lease.id(), rules.terms(said));
    return at(id);
  }

  /**
   * Records a count of taps from a day on.
   *
   * @throws LeaseClosed if the lease was closed
   */
  @Transactional
  public Lease count(UUID id, TapCount said) {
    Lease lease = opened(id);
    rows.count(lease.id(), rules.tap(said, lease.terms().governs(), ""));
    return at(id);
  }

  /**
   * The lease, kept with all of its landowner from being closed or delivered on by others until the
   * transaction ends.
   *
   * @throws LeaseClosed if it was closed
   */
  @Transactional
  public Lease opened(UUID id) {
    landowners.lock(at(id).landowner().id());
    Lease lease = at(id);
    if (lease.closedOn() != null) {
      throw new LeaseClosed(lease);
    }
    return lease;
  }

  /**
   * Closes a lease with what is left of it, which goes on to the next open lease of the same trees,
   * now or when it is agreed.
   *
   * @param mL null where only money was reckoned
   */
  @Transactional
  public void close(Lease lease, LocalDate on, Money left, BigDecimal mL) {
    credits.close(lease.id(), on, left, mL);
    credits.nextOpen(lease).ifPresent(next -> credits.carry(lease.id(), next));
  }

  /** What went on to a lease from closed ones. */
  @Transactional
  public List<Credit> carriedInto(Lease lease) {
    return credits.carriedInto(lease.id());
  }

  /** Which lease what was left of a closed one went on to. */
  @Transactional
  public Optional<UUID> wentOnTo(Lease lease) {
    return credits.wentOnTo(lease.id());
  }
}
