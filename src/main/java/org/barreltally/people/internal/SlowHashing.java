package org.barreltally.people.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.barreltally.people.TooManyAttempts;

/**
 * Hashes passwords and tries them against stored hashes. Each takes a processor a few tenths of a
 * second on purpose; whoever finds all of them taken for long is told to come again.
 */
@ApplicationScoped
public class SlowHashing {

  /** Hashing uses one processor fully; more at once than there are would only starve the rest. */
  private static final int AT_ONCE = Runtime.getRuntime().availableProcessors();

  private static final Duration WAIT = Duration.ofSeconds(5);

  private final Secrets secrets;
  private final int iterations;
  private final PasswordHash nobody;
  private final Semaphore processors = new Semaphore(AT_ONCE, true);

  @Inject
  public SlowHashing(Secrets secrets) {
    this(secrets, PasswordHash.ITERATIONS);
  }

  SlowHashing(Secrets secrets, int iterations) {
    this.secrets = secrets;
    this.iterations = iterations;
    this.nobody = PasswordHash.ofNobody(secrets, iterations);
  }

  /**
   * The stored form of a new password.
   *
   * @throws TooManyAttempts if no processor came free in time
   */
  public String hash(String password) {
    return slowly(() -> PasswordHash.of(password, secrets.salt(), iterations).stored());
  }

  /**
   * Whether a password fits a stored hash. An empty one stands for a user who does not exist: it
   * costs the same time and fits nothing.
   *
   * @throws TooManyAttempts if no processor came free in time
   */
  public boolean fits(String password, Optional<String> stored) {
    PasswordHash hash = stored.map(PasswordHash::read).orElse(nobody);
    return slowly(() -> hash.matches(password)) && stored.isPresent();
  }

  /** Whether a stored hash was made with fewer iterations than new ones are. */
  public boolean isOutdated(String stored) {
    return PasswordHash.read(stored).isWeakerThan(iterations);
  }

  private <T> T slowly(Supplier<T> work) {
    boolean mayHash = false;
    try {
      mayHash = processors.tryAcquire(WAIT.toMillis(), TimeUnit.MILLISECONDS);
      if (!mayHash) {
        throw new TooManyAttempts(WAIT);
      }
      return work.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new TooManyAttempts(WAIT);
    } finally {
      if (mayHash) {
        processors.release();
      }
    }
  }
}
