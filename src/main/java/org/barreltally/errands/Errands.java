package org.barreltally.errands;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Status;
import jakarta.transaction.Synchronization;
import jakarta.transaction.TransactionSynchronizationRegistry;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.errands.internal.ErrandRows;
import org.barreltally.errands.internal.ErrandWorker;
import org.barreltally.people.CurrentUser;
import org.barreltally.people.Person;
import org.barreltally.people.Role;

/** Takes errands, and tells whoever asked how far they are. */
@ApplicationScoped
public class Errands {

  /** How long results are kept. */
  public static final Duration KEPT = Duration.ofDays(2);

  private final List<ErrandKind<?>> kinds;
  private final ErrandRows rows;
  private final ErrandWorker worker;
  private final CurrentUser user;
  private final Clock clock;
  private final TransactionSynchronizationRegistry transaction;

  Errands(
      @All List<ErrandKind<?>> kinds,
      ErrandRows rows,
      ErrandWorker worker,
      CurrentUser user,
      Clock clock,
      TransactionSynchronizationRegistry transaction) {
    this.kinds = kinds;
    this.rows = rows;
    this.worker = worker;
    this.user = user;
    this.clock = clock;
    this.transaction = transaction;
  }

  /**
   * The kind of that name.
   *
   * @throws UnknownErrand if there is none
   * @throws NotYourErrand if it is not for the role of whoever asks
   */
  public ErrandKind<?> kind(String code) {
    ErrandKind<?> kind =
        kinds.stream()
            .filter(each -> each.code().equals(code))
            .findFirst()
            .orElseThrow(UnknownErrand::new);
    if (!kind.roles().isEmpty() && !kind.roles().contains(user.role())) {
      throw new NotYourErrand(code);
    }
    return kind;
  }

  /**
   * Takes an errand; it is begun once the transaction at hand has come to a good end.
   *
   * @throws TooManyErrands if too many are waiting already
   */
  @Transactional
  public <T> Errand ask(ErrandKind<T> kind, T asked) {
    if (worker.waiting() >= ErrandWorker.MOST_WAITING) {
      throw new TooManyErrands(worker.waiting());
    }
    UUID id = UUID.randomUUID();
    rows.add(id, kind.code(), user.id(), clock.instant());
    Person asker = new Person(user.id(), user.name(), user.displayName(), Role.of(user.role()));
    transaction.registerInterposedSynchronization(
        new Synchronization() {
          @Override
          public void beforeCompletion() {}

          @Override
          public void afterCompletion(int status) {
            if (status == Status.STATUS_COMMITTED) {
              worker.take(id, asker, progress -> kind.run(asked, progress));
            }
          }
        });
    return at(id);
  }

  /**
   * How far an errand is.
   *
   * @throws UnknownErrand if there is none that whoever asks may see
   */
  @Transactional
  public Errand at(UUID id) {
    return rows.find(id, clock.instant()).filter(this::mayRead).orElseThrow(UnknownErrand::new);
  }

  /**
   * The paper that came of an errand.
   *
   * @throws UnknownErrand if there is none
   */
  @Transactional
  public Outcome paper(UUID id) {
    at(id);
    return Optional.ofNullable(rows.paper(id)).orElseThrow(UnknownErrand::new);
  }

  /** What whoever asks has asked for, and for the owner what everybody has; the newest first. */
  @Transactional
  public List<Errand> list(UUID before, int limit) {
    boolean all = user.role().equals(Role.OWNER.code());
    return rows.list(all ? null : user.id(), before, limit, clock.instant());
  }

  private boolean mayRead(Errand errand) {
    return errand.askedBy().equals(user.id()) || user.role().equals(Role.OWNER.code());
  }
}
