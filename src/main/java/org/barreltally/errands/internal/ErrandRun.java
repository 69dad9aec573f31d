package org.barreltally.errands.internal;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import java.time.Clock;
import java.util.UUID;
import java.util.function.Function;
import org.barreltally.errands.Outcome;
import org.barreltally.errands.Progress;
import org.barreltally.errands.Why;
import org.barreltally.people.CurrentUser;
import org.barreltally.people.Person;
import org.barreltally.refusal.Refusal;
import org.jboss.logging.Logger;

/** Does one errand as whoever asked for it, and writes down what came of it. */
@ApplicationScoped
public class ErrandRun {

  private static final Logger LOG = Logger.getLogger(ErrandRun.class);

  private final ErrandRows rows;
  private final CurrentUser user;
  private final Clock clock;

  ErrandRun(ErrandRows rows, CurrentUser user, Clock clock) {
    this.rows = rows;
    this.user = user;
    this.clock = clock;
  }

  /** Runs to the end; what the work refuses is its result. */
  @ActivateRequestContext
  public void run(UUID id, Person asker, Function<Progress, Outcome> work) {
    user.actAs(asker);
    Count count = new Count(id, rows, clock);
    count.write();
    try {
      Outcome outcome = work.apply(count);
      count.write();
      QuarkusTransaction.requiringNew().run(() -> rows.done(id, outcome, clock.instant()));
    } catch (Refusal refusal) {
      refused(id, Why.of(refusal));
    } catch (RuntimeException defect) {
      UUID incident = UUID.randomUUID();
      LOG.error("Incident " + incident, defect);
      refused(id, Why.defect(incident));
    }
  }

  private void refused(UUID id, Why why) {
    QuarkusTransaction.requiringNew().run(() -> rows.refused(id, why, clock.instant()));
  }
}
