package org.barreltally.shows;

import java.util.List;
import org.barreltally.refusal.Refusal;

/** A helper, vehicle or table kit is at another show on one of the days, set-up counted. */
public final class ShowClash extends Refusal {

  /** What is at the other show: the field that names it, and its name. */
  public record Bound(String field, String what, String name, Show at) {
    /** Names both, for people. */
    public String sentence() {
      return "%s %s is at %s (%s).".formatted(what, name, at.words(), at.code());
    }
  }

  private final transient List<Bound> bound;

  public ShowClash(List<Bound> bound) {
    super(
        Kind.CONFLICT,
        "show-clash",
        "Two shows at once",
        bound.get(0).sentence()
            + (bound.size() > 1 ? " In all %d clashes.".formatted(bound.size()) : "")
            + " Choose another, or send allowOverlap true if it can be in both places.",
        bound.stream().map(b -> new FieldError(b.field(), b.sentence())).toList());
    this.bound = List.copyOf(bound);
  }

  public List<Bound> bound() {
    return bound;
  }
}
