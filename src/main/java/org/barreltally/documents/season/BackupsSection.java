package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.temporal.ChronoUnit;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;
import org.barreltally.keeping.Backups;
import org.barreltally.keeping.Kept;

/** The backups that lie in the folder when the book is drawn. */
@ApplicationScoped
class BackupsSection implements SeasonBookSection {

  private static final int MOST = 100;

  private final Backups backups;

  BackupsSection(Backups backups) {
    this.backups = backups;
  }

  @Override
  public int order() {
    return 1500;
  }

  @Override
  public String title() {
    return "Backups";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.note(
        "Unlike the rest of the book, this is as of the day it is drawn: old backups are removed"
            + " as new ones are made. Restore one on another machine now and then to see that it works.");
    out.table(
        Heading.of("Made at (UTC)", 0.26), Heading.of("File", 0.52), Heading.number("rows", 0.22));
    for (Kept kept : backups.list(null, MOST)) {
      out.row(
          kept.backup().madeAt().truncatedTo(ChronoUnit.SECONDS).toString(),
          kept.backup().name(),
          Long.toString(kept.backup().rows()));
    }
  }
}
