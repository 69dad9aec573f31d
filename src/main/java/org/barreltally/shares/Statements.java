package org.barreltally.shares;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.shares.internal.ShareLog;
import org.barreltally.sugarbush.Lease;
import org.barreltally.sugarbush.Leases;

/** Reckons leases up, and closes them at the season's end. */
@ApplicationScoped
public class Statements {

  private final Leases leases;
  private final ShareLog log;
  private final Days days;

  Statements(Leases leases, ShareLog log, Days days) {
    this.leases = leases;
    this.log = log;
    this.days = days;
  }

  /**
   * The statement of a lease.
   *
   * @param season of the same trees; null for the lease's own
   * @throws org.barreltally.sugarbush.UnknownLease if there is no such lease
   * @throws NoLeaseThatSeason if the trees are not leased for it
   */
  @Transactional
  public ShareStatement of(UUID id, Integer season) {
    Lease named = leases.at(id);
    Lease lease =
        season == null || season == named.season()
            ? named
            : leases
                .sameTrees(named, season)
                .orElseThrow(() -> new NoLeaseThatSeason(named, season));
    return share(lease).statement();
  }

  /**
   * The statements of leases, the newest season first, after a lease (or null), at most so many.
   */
  @Transactional
  public List<ShareStatement> list(Leases.Filter filter, UUID after, int limit) {
    return leases.list(filter, after, limit).stream()
        .map(lease -> share(lease).statement())
        .toList();
  }

  /**
   * Closes a lease: no more is handed over or counted for it, and what is left goes on to the next
   * lease of the same trees, now or when it is agreed.
   *
   * @param on null for today
   * @throws org.barreltally.sugarbush.LeaseClosed if it was closed already
   */
  @Transactional
  public ShareStatement close(UUID id, LocalDate on) {
    LocalDate day = on == null ? days.today() : days.happened(on, "on");
    Lease lease = leases.opened(id);
    Share share = share(lease);
    leases.close(lease, day, share.left(), share.creditML().orElse(null));
    return of(id, null);
  }

  private Share share(Lease lease) {
    return new Share(lease, leases.carriedInto(lease), log.of(lease.id()));
  }
}
