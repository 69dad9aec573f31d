package org.barreltally.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.barreltally.people.internal.CodeRows;
import org.barreltally.people.internal.CrewRows;
import org.barreltally.people.internal.RecentPasswords;
import org.barreltally.people.internal.Secrets;
import org.barreltally.people.internal.Sessions;
import org.barreltally.people.internal.Users;
import org.barreltally.refusal.InvalidField;

/**
 * The people who sign in, and what the owner changes about them: they join with a password that is
 * shown once, change their role, get a new password when the old one is lost, leave and return.
 * Whoever loses a role, a password or their place is signed out everywhere at once.
 */
@ApplicationScoped
public class Crew {

  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9._-]{0,39}");
  private static final int DISPLAY_NAME_MAX = 80;

  private final CrewRows rows;
  private final Users users;
  private final Passwords passwords;
  private final Secrets secrets;
  private final Sessions sessions;
  private final RecentPasswords recent;
  private final AccessTokens tokens;
  private final CodeRows codes;
  private final CurrentUser current;
  private final Clock clock;

  @Inject
  Crew(
      CrewRows rows,
      Users users,
      Passwords passwords,
      Secrets secrets,
      Sessions sessions,
      RecentPasswords recent,
      AccessTokens tokens,
      CodeRows codes,
      CurrentUser current,
      Clock clock) {
    this.rows = rows;
    this.users = users;
    this.passwords = passwords;
    this.secrets = secrets;
    this.sessions = sessions;
    this.recent = recent;
    this.tokens = tokens;
    this.codes = codes;
    this.current = current;
    this.clock = clock;
  }

  /** Somebody with the password they were given, which is shown here and never again. */
  public record Given(Member member, String password) {}

  /** Everybody by name, those who left too. */
  public List<Member> list() {
    return rows.all();
  }

  /**
   * The person of this name.
   *
   * @throws UnknownMember if there is none
   */
  public Member named(String name) {
    return rows.all().stream()
        .filter(member -> member.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new UnknownMember(name));
  }

  /**
   * Gives somebody a way to sign in.
   *
   * @param name 1 to 40 lower-case letters, digits, points, hyphens
   * @param displayName 1 to 80 characters; null for the name
   * @throws NameTaken if somebody has the name, or had it
   */
  @Transactional
  public Given join(String name, String displayName, Role role) {
    if (name == null || !NAME.matcher(name).matches()) {
      throw new InvalidField(
          "name",
          "Give a name of 1 to 40 small letters, digits, points or hyphens, such as marla.");
    }
    String shown = displayName == null || displayName.isBlank() ? name : displayName.strip();
    if (shown.length() > DISPLAY_NAME_MAX) {
      throw new InvalidField("displayName", "Keep it within " + DISPLAY_NAME_MAX + " characters.");
    }
    Person person = new Person(UUID.randomUUID(), name, shown, given(role));
    String password = secrets.readablePassword();
    if (!users.add(person, passwords.hash(password), clock.instant())) {
      throw new NameTaken(name);
    }
    log(person.id(), "joined", role);
    return new Given(named(name), password);
  }

  /**
   * Gives somebody another role.
   *
   * @throws OwnerNeeded if nobody would be owner then
   */
  @Transactional
  public Member changeRole(String name, Role role) {
    Member member = locked(name);
    if (given(role) != Role.OWNER) {
      requireAnotherOwner(member, "role");
    }
    rows.role(member.id(), role);
    log(member.id(), "role", role);
    signOut(member.id());
    return named(name);
  }

  /** Gives somebody a new password, for instance because the old one is lost. */
  @Transactional
  public Given newPassword(String name) {
    Member member = locked(name);
    String password = secrets.readablePassword();
    rows.password(member.id(), passwords.hash(password));
    log(member.id(), "password", null);
    signOut(member.id());
    return new Given(member, password);
  }

  /** Asks somebody for codes no longer, for instance because their phone is lost. */
  @Transactional
  public Member stopCodes(String name) {
    Member member = locked(name);
    if (codes.remove(member.id())) {
      log(member.id(), "codes-off", null);
      signOut(member.id());
    }
    return named(name);
  }

  /**
   * Lets somebody sign in no longer; their tokens are revoked.
   *
   * @throws OwnerNeeded if nobody would be owner then
   */
  @Transactional
  public Member leave(String name) {
    Member member = locked(name);
    requireAnotherOwner(member, null);
    rows.left(member.id(), clock.instant());
    tokens.revokeAllOf(member.id());
    codes.remove(member.id());
    log(member.id(), "left", null);
    signOut(member.id());
    return named(name);
  }

  /**
   * Removes the names of somebody who left. What they did stays with their record, which is called
   * by a number from then on; their tokens have ended, and what those were called goes with them.
   *
   * @throws NotLeft if they still sign in
   */
  @Transactional
  public Member removeNames(String name) {
    Member member = locked(name);
    if (member.leftAt() == null) {
      throw new NotLeft(member.displayName());
    }
    String left = "left-" + member.id().toString().substring(0, 8);
    rows.names(member.id(), left, left);
    return named(left);
  }

  /** Lets somebody who left sign in again, with a new password. */
  @Transactional
  public Given comeBack(String name) {
    Member member = locked(name);
    String password = secrets.readablePassword();
    rows.left(member.id(), null);
    rows.password(member.id(), passwords.hash(password));
    log(member.id(), "returned", null);
    return new Given(named(name), password);
  }

  /** All changes about people wait for each other, so that there is always an owner. */
  private Member locked(String name) {
    rows.lock();
    return named(name);
  }

  private void requireAnotherOwner(Member member, String field) {
    boolean another =
        rows.all().stream()
            .anyMatch(
                other ->
                    other.role() == Role.OWNER
                        && other.leftAt() == null
                        && !other.id().equals(member.id()));
    if (member.role() == Role.OWNER && member.leftAt() == null && !another) {
      throw new OwnerNeeded(member.displayName(), field);
    }
  }

  private static Role given(Role role) {
    if (role == null) {
      throw new InvalidField("role", "Say the role: owner, canning, table, packing or bookkeeper.");
    }
    return role;
  }

  private void signOut(UUID id) {
    recent.forget(id);
    tokens.forget(id);
    sessions.endAllOf(id);
  }

  private void log(UUID about, String what, Role role) {
    rows.log(about, what, role, clock.instant(), current.id());
  }
}
