package org.barreltally.table;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.people.AccessTokens;
import org.barreltally.people.TokenScope;
import org.barreltally.refusal.InvalidField;
import org.barreltally.table.internal.PhoneRows;

/**
 * The phones of show tables. Each gets a token of its own, good for table calls alone, in exchange
 * for a code that is shown once and works once; a lost phone is cut off by ending its token.
 */
@ApplicationScoped
public class Phones {

  /** How long a code may be used. */
  public static final int MINUTES_TO_PAIR = 15;

  private static final int NAME_MAX = 60;
  private static final int CODE_TYPED_MAX = 60;
  private static final int CODE_LETTERS = 20;

  /** Crockford's Base 32 in lower case: 5 bits a letter, none mistaken for another. */
  private static final String READABLE = "0123456789abcdefghjkmnpqrstvwxyz";

  /** What a phone gets once. */
  public record Paired(UUID id, String name, String token) {}

  private final AccessTokens tokens;
  private final PhoneRows rows;
  private final RecordedBy recordedBy;
  private final Days days;
  private final Ids ids;
  private final SecureRandom random = new SecureRandom();

  Phones(AccessTokens tokens, PhoneRows rows, RecordedBy recordedBy, Days days, Ids ids) {
    this.tokens = tokens;
    this.rows = rows;
    this.recordedBy = recordedBy;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Makes a code for one phone; the phone will act for whoever asks.
   *
   * @param name what the phone is called, 1 to 60 characters
   */
  @Transactional
  public Pairing open(String name) {
    if (name == null || name.isBlank() || name.strip().length() > NAME_MAX) {
      throw new InvalidField(
          "name", "Call the phone something of 1 to " + NAME_MAX + " characters.");
    }
    String code = code();
    Instant now = days.now();
    Pairing pairing =
        new Pairing(name.strip(), code, now.plus(Duration.ofMinutes(MINUTES_TO_PAIR)));
    rows.open(hash(code), pairing, recordedBy.user(), now);
    return pairing;
  }

  /**
   * Pairs the phone that shows a code.
   *
   * @param code hyphens, spaces and capitals do not matter
   * @throws PairingGone if it was used, is too old or never was
   */
  @Transactional
  public Paired pair(String code) {
    if (code == null || code.isBlank() || code.length() > CODE_TYPED_MAX) {
      throw new InvalidField(
          "code", "Give the code that stands under the picture on the owner's page.");
    }
    PhoneRows.Opened opened = rows.use(hash(code), days.now()).orElseThrow(PairingGone::new);
    AccessTokens.Issued issued =
        tokens.issue(opened.madeBy(), "Phone: " + opened.name(), null, TokenScope.TABLE);
    UUID id = ids.next();
    rows.add(id, opened, issued.token().id(), days.now());
    return new Paired(id, opened.name(), issued.secret());
  }

  /** All phones, the newest first. */
  @Transactional
  public List<Phone> list() {
    return rows.all();
  }

  /**
   * Ends a phone's token at once; what it has not sent stays on it. One that is cut off stays so.
   *
   * @throws UnknownPhone if there is none of that id
   */
  @Transactional
  public Phone cutOff(UUID id) {
    PhoneRows.Known known = rows.find(id).orElseThrow(() -> new UnknownPhone(id));
    if (rows.cutOff(id, days.now())) {
      tokens.revoke(known.holder(), known.token());
    }
    return rows.all().stream().filter(phone -> phone.id().equals(id)).findFirst().orElseThrow();
  }

  private String code() {
    StringBuilder text = new StringBuilder();
    for (int n = 0; n < CODE_LETTERS; n++) {
      text.append(n > 0 && n % 5 == 0 ? "-" : "");
      text.append(READABLE.charAt(random.nextInt(READABLE.length())));
    }
    return text.toString();
  }

  private static byte[] hash(String code) {
    String plain = code.toLowerCase(Locale.ROOT).replaceAll("[^0-9a-z]", "");
    try {
      return MessageDigest.getInstance("SHA-256").digest(plain.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
