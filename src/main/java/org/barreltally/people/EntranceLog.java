package org.barreltally.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.people.internal.EntranceRows;

/**
 * Keeps who signed in, who tried and could not, who signed out, and who made or ended a way in. It
 * stands: nothing in it is changed or removed. It knows people by their record, so a name that is
 * removed is removed here too; of a name that nobody has nothing is kept.
 */
@ApplicationScoped
public class EntranceLog {

  /**
   * A line of the log.
   *
   * @param person the name they sign in with; null where the name was nobody's
   * @param by who did it, where it was somebody else
   * @param role the role that was given; null where none was
   * @param token what the token is called; null where it is about none
   * @param address of the network it came from; null for a change by somebody signed in
   */
  public record Entry(
      UUID id,
      Instant at,
      EntranceEvent what,
      String person,
      String by,
      Role role,
      String token,
      String address) {}

  /** The place in the log after which to go on. */
  public record Place(Instant at, UUID id) {}

  private final EntranceRows rows;
  private final Clock clock;

  @Inject
  EntranceLog(EntranceRows rows, Clock clock) {
    this.rows = rows;
    this.clock = clock;
  }

  /**
   * Keeps an event even if what is under way fails: an attempt that was refused is one.
   *
   * @param about null where the name is nobody's
   * @param address may be null
   */
  @Transactional(Transactional.TxType.REQUIRES_NEW)
  public void keep(EntranceEvent what, UUID about, String address) {
    rows.add(what, about, null, address, clock.instant());
  }

  /** Keeps what became of a token or of codes, together with it; {@code token} may be null. */
  void keepTogether(EntranceEvent what, UUID about, UUID token) {
    rows.add(what, about, token, null, clock.instant());
  }

  /**
   * The log, newest first.
   *
   * @param person the name somebody signs in with; null for everybody
   * @param what null for everything
   * @param after null to begin
   * @param limit at most so many
   */
  public List<Entry> newest(String person, EntranceEvent what, Place after, int limit) {
    return rows.newest(person, what, after, limit);
  }
}
