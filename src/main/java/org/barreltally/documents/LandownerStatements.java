package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.settings.FarmSettings;
import org.barreltally.shares.Statements;

/** What stands on the statements of landowners. */
@ApplicationScoped
public class LandownerStatements {

  private final Statements statements;
  private final LabelSheets sheets;
  private final FarmSettings settings;
  private final Days days;

  LandownerStatements(Statements statements, LabelSheets sheets, FarmSettings settings, Days days) {
    this.statements = statements;
    this.sheets = sheets;
    this.settings = settings;
    this.days = days;
  }

  /**
   * The statement of a lease as it stands today.
   *
   * @param season of the same trees; null for the lease's own
   * @throws org.barreltally.sugarbush.UnknownLease if there is no such lease
   */
  @Transactional
  public FormText of(UUID lease, Integer season) {
    Maker maker = Maker.at(days.now(), settings);
    return new LandownerStatement(statements.of(lease, season), maker).on(sheets.usualPaper(maker));
  }
}
