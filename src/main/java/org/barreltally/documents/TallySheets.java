package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.settings.FarmSettings;
import org.barreltally.table.TableSheets;

/** What stands on the tally sheets of shows: the rows of the phone's screen, in its order. */
@ApplicationScoped
public class TallySheets {

  private final TableSheets tables;
  private final LabelSheets sheets;
  private final FarmSettings settings;
  private final Days days;

  TallySheets(TableSheets tables, LabelSheets sheets, FarmSettings settings, Days days) {
    this.tables = tables;
    this.sheets = sheets;
    this.settings = settings;
    this.days = days;
  }

  /**
   * The sheet of a show, as its table stands now.
   *
   * @throws org.barreltally.shows.UnknownShow if there is no such show
   */
  @Transactional
  public FormText of(UUID show) {
    Maker maker = Maker.at(days.now(), settings);
    return new TallySheet(tables.of(show), maker).on(sheets.usualPaper(maker));
  }
}
