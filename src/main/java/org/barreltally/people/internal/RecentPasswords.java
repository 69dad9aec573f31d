package org.barreltally.people.internal;

import com.github.benmanes.caffeine.cache.Ticker;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.barreltally.books.Books;
import org.barreltally.books.OfEachBook;

/**
 * Names and passwords that proved right within the last minutes, kept only as HMAC-SHA-256 under a
 * random key that this process never shows, so that memory holds no password.
 */
@ApplicationScoped
public class RecentPasswords {

  private static final Duration TIME = Duration.ofMinutes(5);
  private static final String HMAC = "HmacSHA256";

  private final OfEachBook<Remembered<Users.Known>> remembered;
  private final SecretKeySpec key;
  private final AfterTransaction afterTransaction;

  @Inject
  RecentPasswords(Secrets secrets, Books books, AfterTransaction afterTransaction) {
    this.afterTransaction = afterTransaction;
    remembered = books.keeping(() -> new Remembered<>(TIME, Ticker.systemTicker()));
    key = new SecretKeySpec(secrets.bytes(32), HMAC);
  }

  public Optional<Users.Known> recall(String name, String password) {
    return remembered.here().get(keyed(name, password));
  }

  /** The person remembered, or else the one {@code judge} finds, who is then remembered. */
  public Optional<Users.Known> recall(
      String name, String password, Supplier<Optional<Users.Known>> judge) {
    return remembered.here().get(keyed(name, password), k -> judge.get());
  }

  /** Judges somebody anew from the end of the transaction at hand on. */
  public void forget(UUID id) {
    Remembered<Users.Known> here = remembered.here();
    afterTransaction.run(() -> here.forgetIf(known -> known.person().id().equals(id)));
  }

  private byte[] keyed(String name, String password) {
    try {
      Mac mac = Mac.getInstance(HMAC);
      mac.init(key);
      mac.update(name.getBytes(StandardCharsets.UTF_8));
      mac.update((byte) 0);
      return mac.doFinal(password.getBytes(StandardCharsets.UTF_8));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java has HMAC-SHA-256", e);
    }
  }
}
