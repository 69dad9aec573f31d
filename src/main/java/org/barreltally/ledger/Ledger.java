package org.barreltally.ledger;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.internal.ItemRows;
import org.barreltally.ledger.internal.Posting;
import org.barreltally.refusal.InvalidField;
import org.hibernate.exception.ConstraintViolationException;

/**
 * The one way in which stock changes. A movement is posted whole or not at all: its balances are
 * locked in sorted order, judged, and written with the entries in the caller's transaction.
 */
@ApplicationScoped
public class Ledger {

  /** The constraint that lets only one of two reversals at the same moment through. */
  private static final String REVERSED_ONCE = "movement_reversed_once";

  /** What is written beside movements, in the same round trip. */
  public interface Beside {
    /**
     * @param movements the ids that they will have in the book
     */
    void add(List<UUID> movements, Bundle write);
  }

  private static final Beside NOTHING = (movements, write) -> {};

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;
  private final List<AfterPosting> followers;

  public Ledger(
      EntityManager entities,
      Days days,
      Ids ids,
      RecordedBy recordedBy,
      @All List<AfterPosting> followers) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
    this.followers = followers;
  }

  /**
   * Posts a movement.
   *
   * @return the movement's id
   * @throws NotThatMuchThere if a place would hold less than nothing
   */
  @Transactional
  public UUID post(Movement movement) {
    return post(movement, null);
  }

  /**
   * Posts movements one after the other, all of them or none, at the cost of one.
   *
   * @return their ids, in the same order
   * @throws NotThatMuchThere if a place would hold less than nothing after one of them
   */
  @Transactional
  public List<UUID> post(List<Movement> movements) {
    return post(movements, NOTHING);
  }

  /**
   * As {@link #post(List)}, with rows beside the movements. What many writers want is locked after
   * them, so it is held for the shortest time.
   */
  @Transactional
  public List<UUID> post(List<Movement> movements, Beside beside) {
    List<Posting.Draft> drafts = movements.stream().map(m -> draft(m, null)).toList();
    if (!drafts.isEmpty()) {
      write(drafts, beside);
    }
    return ids(drafts);
  }

  private static List<UUID> ids(List<Posting.Draft> drafts) {
    return drafts.stream().map(Posting.Draft::id).toList();
  }

  /**
   * Begins a movement that is written together with other things, in the caller's transaction.
   *
   * @param made the ids of items that come to be with it
   * @param ask is given the locks; send it before the movement is written
   */
  public PendingMovement begin(Movement movement, Set<UUID> made, Bundle ask) {
    Posting.Draft draft = draft(movement, null);
    Posting posting = posting(List.of(draft), made);
    posting.lock(ask);
    return new PendingMovement(
        draft.id(),
        (items, write) -> {
          ItemRows.add(items, write);
          write(posting, items, List.of(draft), write);
        });
  }

  /**
   * Takes a movement back: every transfer goes the other way, dated when the original happened.
   *
   * @throws UnknownMovement if there is none of that id
   * @throws CannotBeTakenBack if it was taken back already, is a reversal itself, or poured two
   *     lots together
   * @throws NotThatMuchThere if what it brought has left since
   */
  @Transactional
  public UUID reverse(UUID id, String reason) {
    if (reason == null || reason.isBlank()) {
      throw new InvalidField("reason", "Say why the movement is taken back.");
    }
    List<?> headers =
        entities
            .createNativeQuery(
                "SELECT m.kind, m.happened_at, (SELECT r.id FROM movements r WHERE r.reverses = m.id)"
                    + " FROM movements m WHERE m.id = :id")
            .setParameter("id", id)
            .getResultList();
    if (headers.isEmpty()) {
      throw new UnknownMovement(id);
    }
    Object[] header = (Object[]) headers.get(0);
    if (header[2] != null) {
      throw new CannotBeTakenBack(id, "it was taken back already by movement " + header[2]);
    }
    if (MovementKind.of((String) header[0]) == MovementKind.REVERSAL) {
      throw new CannotBeTakenBack(id, "it is a reversal; enter what is right as a new movement");
    }
    if (MovementKind.of((String) header[0]) == MovementKind.TOP_UP) {
      throw new CannotBeTakenBack(
          id,
          "what was poured together cannot be parted; weigh the vessel again or write syrup off");
    }
    followers.forEach(follower -> follower.reversing(id));
    try {
      return post(
          new Movement(MovementKind.REVERSAL, (Instant) header[1], reason, opposite(id)), id);
    } catch (ConstraintViolationException clash) {
      if (REVERSED_ONCE.equals(clash.getConstraintName())) {
        throw new CannotBeTakenBack(id, "somebody else took it back at the same moment");
      }
      throw clash;
    }
  }

  private UUID post(Movement movement, UUID reverses) {
    Posting.Draft draft = draft(movement, reverses);
    write(List.of(draft), NOTHING);
    if (reverses != null) {
      followers.forEach(follower -> follower.reversed(reverses));
    }
    return draft.id();
  }

  private Posting.Draft draft(Movement movement, UUID reverses) {
    return new Posting.Draft(
        ids.next(), movement, reverses, days.dateOf(movement.happenedAt()).getYear());
  }

  private Posting posting(List<Posting.Draft> drafts, Set<UUID> made) {
    return new Posting(drafts, made, days.now(), recordedBy.user());
  }

  private void write(List<Posting.Draft> drafts, Beside beside) {
    Posting posting = posting(drafts, Set.of());
    Bundle ask = Bundle.byKeys();
    posting.lock(ask);
    ask.send(entities);
    Bundle write = Bundle.byKeys();
    write(posting, List.of(), drafts, write);
    beside.add(ids(drafts), write);
    write.send(entities);
  }

  private void write(
      Posting posting, Collection<Item> made, List<Posting.Draft> drafts, Bundle write) {
    posting.write(made, write);
    List<Movement> movements = drafts.stream().map(Posting.Draft::movement).toList();
    followers.forEach(follower -> follower.posted(movements, write));
  }

  /** The transfers that undo a movement: what each entry brought to a place leaves it again. */
  private List<Transfer> opposite(UUID id) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT place, item, amount FROM entries WHERE movement = :id ORDER BY item, line")
            .setParameter("id", id)
            .getResultList();
    List<Transfer> transfers = new ArrayList<>();
    List<Object[]> open = new ArrayList<>();
    for (Object row : rows) {
      Object[] entry = ((Object[]) row).clone();
      // Per item the entries sum to zero, so each amount is paired off against the open ones of the
      // other sign until nothing is left.
      for (Object[] other : open) {
        long left = (long) entry[2];
        long theirs = (long) other[2];
        if (other[1].equals(entry[1]) && left != 0 && Long.signum(left) == -Long.signum(theirs)) {
          long amount = Math.min(Math.abs(left), Math.abs(theirs));
          String brought = (String) (left > 0 ? entry[0] : other[0]);
          String gave = (String) (left > 0 ? other[0] : entry[0]);
          transfers.add(new Transfer(brought, gave, (UUID) entry[1], amount));
          entry[2] = left - Long.signum(left) * amount;
          other[2] = theirs - Long.signum(theirs) * amount;
        }
      }
      open.add(entry);
    }
    return transfers;
  }
}
