package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Set;
import org.barreltally.documents.Paper;
import org.barreltally.errands.ErrandKind;
import org.barreltally.errands.Outcome;
import org.barreltally.errands.Progress;
import org.barreltally.refusal.InvalidField;

/** Draws a season's book for somebody who does not wait for it. */
@ApplicationScoped
public class SeasonBookErrand implements ErrandKind<SeasonBookErrand.Asked> {

  /**
   * Which book.
   *
   * @param paper {@code letter, a4}; null for the maker's usual
   */
  public record Asked(Integer season, String paper) {}

  private final SeasonBooks books;

  SeasonBookErrand(SeasonBooks books) {
    this.books = books;
  }

  @Override
  public String code() {
    return "season-book";
  }

  @Override
  public Class<Asked> record() {
    return Asked.class;
  }

  @Override
  public Set<String> roles() {
    return Set.of("owner");
  }

  @Override
  public Outcome run(Asked asked, Progress progress) {
    if (asked.season() == null) {
      throw new InvalidField("season", "Say of which year, for example 2026.");
    }
    return Outcome.pdf(
        "season-book-" + asked.season() + ".pdf",
        books.of(asked.season(), paper(asked.paper()), progress));
  }

  private static Paper paper(String code) {
    for (Paper paper : Paper.values()) {
      if (paper.code().equals(code)) {
        return paper;
      }
    }
    if (code == null || code.isBlank()) {
      return null;
    }
    throw new InvalidField("paper", "Give letter or a4.");
  }
}
