package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import org.barreltally.sales.away.AwaySelling;
import org.barreltally.sales.away.SoldAway;
import org.barreltally.settings.FarmSettings;

/** What stands on the invoices and receipts of sales away from shows. */
@ApplicationScoped
public class Invoices {

  private final AwaySelling selling;
  private final LabelSheets sheets;
  private final FarmSettings settings;

  Invoices(AwaySelling selling, LabelSheets sheets, FarmSettings settings) {
    this.selling = selling;
    this.sheets = sheets;
    this.settings = settings;
  }

  /**
   * The paper of a sale, with the seller as it was set when the sale was recorded.
   *
   * @throws org.barreltally.sales.UnknownSale if there is none of that id
   * @throws org.barreltally.sales.away.NoPaper if it was made at a table
   */
  @Transactional
  public FormText of(UUID id) {
    SoldAway sold = selling.at(id);
    Maker seller = Maker.at(sold.sale().recordedAt(), settings);
    String sheet = seller.labelSheet() == null ? LabelSheet.USUAL : seller.labelSheet();
    return new Invoice(sold, seller).on(sheets.named(sheet, "sheet").paper());
  }
}
