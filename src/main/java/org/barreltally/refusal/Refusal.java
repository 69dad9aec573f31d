package org.barreltally.refusal;

import java.util.ArrayList;
import java.util.List;

/**
 * A rule said no. Expected, shown to the person in plain words, and nothing of the request was
 * stored. One subclass per rule, named as the rule, carrying the values it judged; defects are
 * other exceptions and fail loudly.
 *
 * <p>The code is the rule's stable name in kebab-case. The detail says what was found and how to
 * mend it. Fields are named by their path in the request, for example {@code draws[0].weight}.
 */
public abstract class Refusal extends RuntimeException {

  /** What kind of no it is; the web layer turns it into a status. */
  public enum Kind {
    /** The request cannot be read or a field is missing, malformed or out of its range. */
    INVALID,
    /** The request is well formed but a rule of the trade or the record says no to its values. */
    RULE,
    /** The request would be right at another time: it clashes with what stands in the book. */
    CONFLICT,
    /** What the address names does not exist. */
    NOT_FOUND,
    /** The record changed since it was read. */
    STALE,
    /** The person may not do this. */
    FORBIDDEN
  }

  /** A field of the request, by its path, and what to do about it. */
  public record FieldError(String field, String message) {}

  private static final int MOST_SHOWN = 40;

  private final Kind kind;
  private final String code;
  private final String title;
  private final transient List<FieldError> errors = new ArrayList<>();

  protected Refusal(Kind kind, String code, String title, String detail) {
    super(detail, null, false, false);
    this.kind = kind;
    this.code = code;
    this.title = title;
  }

  /** A refusal that names the field at fault; the field's message is the detail. */
  protected Refusal(Kind kind, String code, String title, String detail, String field) {
    this(kind, code, title, detail);
    if (field != null) {
      errors.add(new FieldError(field, detail));
    }
  }

  protected Refusal(Kind kind, String code, String title, String detail, List<FieldError> errors) {
    this(kind, code, title, detail);
    this.errors.addAll(errors);
  }

  public Kind kind() {
    return kind;
  }

  public String code() {
    return code;
  }

  public String title() {
    return title;
  }

  public String detail() {
    return getMessage();
  }

  public List<FieldError> errors() {
    return List.copyOf(errors);
  }

  /** What was sent, short enough to be repeated in a sentence. */
  protected static String shown(String sent) {
    return sent.length() <= MOST_SHOWN ? sent : sent.substring(0, MOST_SHOWN) + "…";
  }

  /**
   * Says where in the request the refused part stands: every field name is put under {@code path}.
   * Called by whoever knows the surrounding structure, for example {@code under("draws[0]")}.
   */
  public Refusal under(String path) {
    errors.replaceAll(
        e -> new FieldError(e.field().isEmpty() ? path : path + "." + e.field(), e.message()));
    return this;
  }
}
