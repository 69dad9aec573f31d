package org.barreltally.people;

import com.github.benmanes.caffeine.cache.Ticker;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import org.barreltally.books.Books;
import org.barreltally.books.OfEachBook;
import org.barreltally.people.internal.AfterTransaction;
import org.barreltally.people.internal.Remembered;
import org.barreltally.people.internal.Secrets;
import org.barreltally.people.internal.TokenRows;
import org.barreltally.refusal.InvalidField;

/**
 * Tokens that stand for a person on {@code /api}, so that scripts need no password. The secret is
 * shown once and kept as SHA-256. A revoked token stops at once in this process and within half a
 * minute in others.
 */
@ApplicationScoped
public class AccessTokens {

  /** Every token begins with this, so that it is recognised where it should not be. */
  public static final String PREFIX = "btl_";

  static final int PER_PERSON_MAX = 100;
  private static final int NAME_MAX = 80;
  private static final int SECRET_LENGTH_MAX = 100;

  /** A token just made, with the secret that is never shown again. */
  public record Issued(AccessToken token, String secret) {}

  private final TokenRows rows;
  private final Secrets secrets;
  private final EntranceLog log;
  private final Clock clock;
  private final AfterTransaction afterTransaction;
  private final OfEachBook<Remembered<TokenRows.Usable>> recent;

  @Inject
  AccessTokens(
      TokenRows rows,
      Secrets secrets,
      EntranceLog log,
      Clock clock,
      Books books,
      AfterTransaction afterTransaction) {
    this.recent =
        books.keeping(() -> new Remembered<>(Duration.ofSeconds(30), Ticker.systemTicker()));
    this.rows = rows;
    this.secrets = secrets;
    this.log = log;
    this.clock = clock;
    this.afterTransaction = afterTransaction;
  }

  /**
   * Makes a token for {@code user}.
   *
   * @param name what the person calls it, 1 to 80 characters
   * @param expiresOn last day of use, today or later; null if it does not expire
   */
  @Transactional
  public Issued issue(UUID user, String name, LocalDate expiresOn) {
    return issue(user, name, expiresOn, null);
  }

  /** As {@link #issue(UUID, String, LocalDate)}, good for {@code scope} alone. */
  @Transactional
  public Issued issue(UUID user, String name, LocalDate expiresOn, TokenScope scope) {
    if (name == null || name.isBlank() || name.strip().length() > NAME_MAX) {
      throw new InvalidField("name", "Give the token a name of 1 to " + NAME_MAX + " characters.");
    }
    if (expiresOn != null && expiresOn.isBefore(today())) {
      throw new InvalidField("expiresOn", "Give a last day of use that is today or later.");
    }
    if (rows.of(user).size() >= PER_PERSON_MAX) {
      throw new TooManyTokens(PER_PERSON_MAX);
    }
    AccessToken token =
        new AccessToken(UUID.randomUUID(), name.strip(), clock.instant(), expiresOn, null);
    String secret = secrets.secret(PREFIX);
    rows.add(token, user, Secrets.hash(secret), scope);
    log.keepTogether(EntranceEvent.TOKEN_MADE, user, token.id());
    return new Issued(token, secret);
  }

  /** The tokens of {@code user} that were not revoked, oldest first. */
  public List<AccessToken> of(UUID user) {
    return rows.of(user);
  }

  /**
   * Revokes a token.
   *
   * @throws UnknownToken if the user has no such token
   */
  @Transactional
  public void revoke(UUID user, UUID token) {
    if (!rows.revoke(token, user, clock.instant())) {
      throw new UnknownToken(token);
    }
    log.keepTogether(EntranceEvent.TOKEN_ENDED, user, token);
    forgetIf(usable -> usable.id().equals(token));
  }

  /** Revokes all tokens of somebody. */
  void revokeAllOf(UUID user) {
    rows.of(user).forEach(token -> log.keepTogether(EntranceEvent.TOKEN_ENDED, user, token.id()));
    rows.revokeAllOf(user, clock.instant());
    forget(user);
  }

  /** Looks somebody's tokens up anew from now on, as their role or place changed. */
  void forget(UUID user) {
    forgetIf(usable -> usable.person().id().equals(user));
  }

  private void forgetIf(Predicate<TokenRows.Usable> rule) {
    Remembered<TokenRows.Usable> here = recent.here();
    afterTransaction.run(() -> here.forgetIf(rule));
  }

  /** Who this secret stood for a moment ago; costs microseconds. */
  public Optional<Person> recall(String secret) {
    return recent
        .here()
        .get(Secrets.hash(secret))
        .filter(this::inTime)
        .map(TokenRows.Usable::person);
  }

  /** Who this secret stands for, empty if it is unknown, revoked or expired. */
  public Optional<Person> holder(String secret) {
    if (!secret.startsWith(PREFIX) || secret.length() > SECRET_LENGTH_MAX) {
      return Optional.empty();
    }
    return recent
        .here()
        .get(Secrets.hash(secret), hash -> rows.use(hash, today()))
        .filter(this::inTime)
        .map(TokenRows.Usable::person);
  }

  private boolean inTime(TokenRows.Usable token) {
    return token.expiresOn() == null || !token.expiresOn().isBefore(today());
  }

  private LocalDate today() {
    return LocalDate.now(clock);
  }
}
