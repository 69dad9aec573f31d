package org.barreltally.people;

import com.github.benmanes.caffeine.cache.Ticker;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.barreltally.books.Books;
import org.barreltally.books.OfEachBook;
import org.barreltally.people.internal.Attempts;
import org.barreltally.people.internal.Guessing;
import org.barreltally.people.internal.NetworkAddress;
import org.barreltally.people.internal.RecentPasswords;
import org.barreltally.people.internal.Sessions;
import org.barreltally.people.internal.SlowHashing;
import org.barreltally.people.internal.TakenCodes;
import org.barreltally.people.internal.Users;
import org.barreltally.refusal.InvalidField;

/**
 * Judges and changes passwords. Judging is slow on purpose (a few tenths of a second), so a right
 * one is remembered for a few minutes; wrong ones are counted, and an unknown user costs the same
 * time as a wrong password.
 */
@ApplicationScoped
public class Passwords {

  /** The shortest password a person may choose, in characters. */
  public static final int LENGTH_MIN = 12;

  /** The longest password that is looked at, in characters. */
  public static final int LENGTH_MAX = 200;

  /** Attempts for one user name within {@link #ATTEMPTS_WINDOW}. */
  public static final int ATTEMPTS_MAX = 10;

  /** What a user name looks like; anything else is nobody's. */
  private static final Pattern NAME_FORM = Pattern.compile("[a-z0-9][a-z0-9._-]{0,39}");

  /** Wrong ones from one household's network within {@link #ATTEMPTS_WINDOW}, whatever the name. */
  public static final int FAILURES_MAX = 200;

  static final Duration ATTEMPTS_WINDOW = Duration.ofMinutes(5);

  private final Users users;
  private final SlowHashing hashing;
  private final Sessions sessions;
  private final RecentPasswords recent;
  private final TakenCodes codes;
  private final EntranceLog log;
  private final OfEachBook<Attempts> attempts;

  /** By network, whichever book is knocked at. */
  private final Attempts failures;

  @Inject
  Passwords(
      Users users,
      SlowHashing hashing,
      Sessions sessions,
      RecentPasswords recent,
      TakenCodes codes,
      EntranceLog log,
      Books books) {
    this(users, hashing, sessions, recent, codes, log, books, FAILURES_MAX);
  }

  Passwords(
      Users users,
      SlowHashing hashing,
      Sessions sessions,
      RecentPasswords recent,
      TakenCodes codes,
      EntranceLog log,
      Books books,
      int failuresMax) {
    this.users = users;
    this.hashing = hashing;
    this.sessions = sessions;
    this.recent = recent;
    this.codes = codes;
    this.log = log;
    this.attempts =
        books.keeping(() -> new Attempts(ATTEMPTS_MAX, ATTEMPTS_WINDOW, Ticker.systemTicker()));
    this.failures = new Attempts(failuresMax, ATTEMPTS_WINDOW, Ticker.systemTicker());
  }

  /** Who this name and password were right for a moment ago; costs microseconds. */
  public Optional<Person> recall(String name, String password) {
    return recent.recall(normal(name), password).map(Users.Known::person);
  }

  /**
   * Who this name and password belong to, empty if they do not fit or a code is asked for beside
   * them. What does not fit is logged.
   *
   * @param address of the network it came from; null if that is not known
   * @throws TooManyAttempts if too many wrong ones were tried for this name or from this network
   */
  public Optional<Person> judge(String name, String password, String address) {
    return judge(name, password, null, address).map(Users.Known::person);
  }

  /**
   * As {@link #judge(String, String, String)}, with the code that may be asked for. Nobody who is
   * asked for one is remembered.
   */
  Optional<Users.Known> judge(String name, String password, String code, String address) {
    String user = normal(name);
    if (user.length() > LENGTH_MAX || password.length() > LENGTH_MAX) {
      return Optional.empty();
    }
    if (code != null && known(user).filter(Users.Known::asksForCode).isPresent()) {
      return judgeSlowly(user, password, code, address);
    }
    return recent.recall(user, password, () -> judgeSlowly(user, password, null, address));
  }

  /**
   * Replaces the password of {@code person}. Their sessions end and the old password is forgotten
   * at once by this process, by other copies within minutes. Tokens stay: they are revoked apart.
   *
   * @throws WrongPassword if {@code current} is not the present one
   * @throws InvalidField if {@code next} is too short, too long or easy to guess
   */
  public void change(String name, String current, String next) {
    if (next == null || next.length() < LENGTH_MIN || next.length() > LENGTH_MAX) {
      throw new InvalidField(
          "next", "Choose a password of " + LENGTH_MIN + " to " + LENGTH_MAX + " characters.");
    }
    if (Guessing.isEasy(next, List.of(name, "barreltally"))) {
      throw new InvalidField(
          "next",
          "That is among the first that somebody would guess. Choose another, such as four words"
              + " that have nothing to do with each other.");
    }
    Users.Known known = present(name, current);
    if (!users.replaceHash(known.person().id(), known.passwordHash(), hash(next))) {
      throw new WrongPassword();
    }
    recent.forget(known.person().id());
    sessions.endAllOf(known.person().id());
    log.keep(EntranceEvent.OWN_PASSWORD, known.person().id(), null);
  }

  /**
   * Whose present password this is; wrong ones are counted like those at sign-in.
   *
   * @throws WrongPassword if it is not the present one
   */
  Users.Known present(String name, String current) {
    Users.Known known = counted(name, current);
    attempts.here().clear(name);
    return known;
  }

  /**
   * As {@link #present}, together with a code; wrong ones are counted like those at sign-in.
   *
   * @throws WrongCode if the code is not one of theirs
   */
  Users.Known presentWithCode(String name, String current, String code) {
    Users.Known known = counted(name, current);
    if (known.asksForCode() && !codes.take(known.person().id(), code)) {
      throw new WrongCode();
    }
    attempts.here().clear(name);
    return known;
  }

  private Users.Known counted(String name, String current) {
    if (current == null || current.length() > LENGTH_MAX) {
      throw new WrongPassword();
    }
    countAttempt(name, null);
    Users.Known known = users.named(name).orElseThrow(WrongPassword::new);
    if (!hashing.fits(current, Optional.of(known.passwordHash()))) {
      throw new WrongPassword();
    }
    return known;
  }

  /** The stored form of a new password. */
  String hash(String password) {
    return hashing.hash(password);
  }

  private Optional<Users.Known> judgeSlowly(
      String name, String password, String code, String address) {
    String household = NetworkAddress.household(address);
    failures.require(household);
    countAttempt(name, address);
    Optional<Users.Known> known = known(name);
    if (!hashing.fits(password, known.map(Users.Known::passwordHash)) || !fits(known.get(), code)) {
      UUID about = known.map(k -> k.person().id()).orElse(null);
      log.keep(EntranceEvent.DID_NOT_FIT, about, address);
      if (failures.countFailed(household)) {
        log.keep(EntranceEvent.TOO_MANY, null, address);
      }
      return Optional.empty();
    }
    attempts.here().clear(name);
    return known.map(person -> renewed(person, password));
  }

  private boolean fits(Users.Known known, String code) {
    return !known.asksForCode() || codes.take(known.person().id(), code);
  }

  private Users.Known renewed(Users.Known known, String password) {
    String stored = known.passwordHash();
    if (!hashing.isOutdated(stored)) {
      return known;
    }
    String renewed = hash(password);
    return users.replaceHash(known.person().id(), stored, renewed)
        ? new Users.Known(known.person(), renewed, known.asksForCode())
        : known;
  }

  private Optional<Users.Known> known(String name) {
    return NAME_FORM.matcher(name).matches() ? users.named(name) : Optional.empty();
  }

  /** Counts an attempt for a name; the first that is refused unjudged is logged, no other. */
  private void countAttempt(String name, String address) {
    try {
      attempts.here().count(name);
    } catch (TooManyAttempts tooMany) {
      if (tooMany.isFirst()) {
        log.keep(
            EntranceEvent.TOO_MANY, known(name).map(k -> k.person().id()).orElse(null), address);
      }
      throw tooMany;
    }
  }

  private static String normal(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
