package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.barreltally.closing.UnknownYear;
import org.barreltally.closing.Year;
import org.barreltally.closing.Years;
import org.barreltally.documents.LabelSheets;
import org.barreltally.documents.Maker;
import org.barreltally.documents.Paper;
import org.barreltally.documents.internal.BookCover;
import org.barreltally.documents.internal.BookPdf;
import org.barreltally.documents.internal.BookPdf.Chapter;
import org.barreltally.errands.Progress;
import org.barreltally.ledger.Days;
import org.barreltally.settings.FarmSettings;

/** Draws the book of a season. */
@ApplicationScoped
public class SeasonBooks {

  private static final String DECIDE =
      "This book helps your records. Your state agency, your inspector and your tax preparer decide"
          + " what they need and what it is worth. Buyers, recipients and landowners stand in it by"
          + " number; the papers that name them are drawn apart.";

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm zzz", Locale.ENGLISH);

  private final Instance<SeasonBookSection> sections;
  private final BookRows rows;
  private final Years years;
  private final FarmSettings settings;
  private final LabelSheets sheets;
  private final Days days;

  SeasonBooks(
      Instance<SeasonBookSection> sections,
      BookRows rows,
      Years years,
      FarmSettings settings,
      LabelSheets sheets,
      Days days) {
    this.sections = sections;
    this.rows = rows;
    this.years = years;
    this.settings = settings;
    this.sheets = sheets;
    this.days = days;
  }

  /**
   * The book of a year. That of a closed year tells what was known at its closing, whenever it is
   * drawn; that of an open year what is known now.
   *
   * @param paper null for the maker's usual paper
   * @throws UnknownYear if the book has nothing of it and it is not this year
   */
  @Transactional
  public byte[] of(int year, Paper paper) {
    return of(year, paper, Progress.UNWATCHED);
  }

  /** As {@link #of(int, Paper)}; {@code progress} is told of the chapters. */
  @Transactional
  public byte[] of(int year, Paper paper, Progress progress) {
    rows.oneView();
    BookYear book = at(year);
    Maker maker = Maker.at(book.asOf(), settings);
    List<Chapter> chapters =
        sections.stream()
            .sorted(Comparator.comparingInt(SeasonBookSection::order))
            .map(section -> chapter(section, book, progress))
            .toList();
    progress.of(chapters.size());
    return BookPdf.render(
        cover(book, maker), paper == null ? sheets.usualPaper(maker) : paper, chapters);
  }

  private static Chapter chapter(SeasonBookSection section, BookYear book, Progress progress) {
    return new Chapter(
        section.title(),
        out -> {
          section.write(book, out);
          progress.done(1);
        });
  }

  private BookYear at(int year) {
    Instant closed =
        years.list().stream()
            .filter(each -> each.year() == year)
            .findFirst()
            .or(
                () ->
                    year == days.today().getYear()
                        ? Optional.of(nothingYet(year))
                        : Optional.empty())
            .orElseThrow(() -> new UnknownYear(year))
            .closedAt();
    return new BookYear(
        year,
        closed,
        closed == null ? days.now() : closed,
        days.beginning(LocalDate.of(year, 1, 1)),
        days.beginning(LocalDate.of(year + 1, 1, 1)));
  }

  private static Year nothingYet(int year) {
    return new Year(year, "open", null, 0, 0);
  }

  private BookCover cover(BookYear book, Maker maker) {
    String state =
        book.closedAt() == null
            ? "not closed; as the book stood at " + at(book.asOf())
            : "closed on " + days.dateOf(book.closedAt());
    List<String> lines = new ArrayList<>(maker.address());
    lines.add("");
    lines.add("Drawn on " + at(days.now()));
    lines.add(
        book.closedAt() == null
            ? "The year is " + state + ". Its figures may still change."
            : "The year was "
                + state
                + ". The figures are those known then; what was told later stands in the book of a later year.");
    lines.add(
        "Kilograms are mass, of which a scale in air shows a little less; gallons are those of the US at 68 °F (20 °C). Figures are rounded one by one, so a sum may"
            + " differ in its last digit.");
    lines.add(
        "A character for which the type has no picture stands as its number, such as [U+4E2D].");
    return new BookCover(
        maker.name(),
        "Season " + book.year(),
        lines,
        DECIDE,
        "Season " + book.year() + ", " + state);
  }

  /** The farm's day and time of an instant, to the minute. */
  private String at(Instant instant) {
    return MINUTE.format(instant.atZone(settings.zoneAt(instant)));
  }
}
