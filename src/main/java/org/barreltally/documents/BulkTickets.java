package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import org.barreltally.bulk.BulkSelling;
import org.barreltally.bulk.SoldBulk;
import org.barreltally.ledger.Days;
import org.barreltally.settings.FarmSettings;

/** What stands on the tickets of barrels sold whole. */
@ApplicationScoped
public class BulkTickets {

  private final BulkSelling selling;
  private final LabelSheets sheets;
  private final FarmSettings settings;
  private final Days days;

  BulkTickets(BulkSelling selling, LabelSheets sheets, FarmSettings settings, Days days) {
    this.selling = selling;
    this.sheets = sheets;
    this.settings = settings;
    this.days = days;
  }

  /**
   * The ticket of a sale, with the seller as it was set when the sale was recorded, on the paper of
   * the label sheet that was set then.
   *
   * @throws org.barreltally.bulk.UnknownBulkSale if there is none of that id
   */
  @Transactional
  public FormText of(UUID id) {
    SoldBulk sold = selling.at(id);
    Maker seller = Maker.at(sold.recordedAt(), settings);
    String sheet = seller.labelSheet() == null ? LabelSheet.USUAL : seller.labelSheet();
    Paper paper = sheets.named(sheet, "sheet").paper();
    return new BulkTicket(sold, seller, days.dateOf(sold.recordedAt())).on(paper);
  }
}
