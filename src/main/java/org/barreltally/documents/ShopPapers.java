package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.settings.FarmSettings;
import org.barreltally.shops.Accounts;
import org.barreltally.shops.Bringing;
import org.barreltally.shops.Shops;

/** What stands on the papers of shops on consignment. */
@ApplicationScoped
public class ShopPapers {

  private final Shops shops;
  private final Bringing bringing;
  private final Accounts accounts;
  private final LabelSheets sheets;
  private final FarmSettings settings;
  private final Days days;

  ShopPapers(
      Shops shops,
      Bringing bringing,
      Accounts accounts,
      LabelSheets sheets,
      FarmSettings settings,
      Days days) {
    this.shops = shops;
    this.bringing = bringing;
    this.accounts = accounts;
    this.sheets = sheets;
    this.settings = settings;
    this.days = days;
  }

  /**
   * The statement of a shop for a span of days, as {@link Accounts#statement} reckons it.
   *
   * @throws org.barreltally.shops.UnknownShop if there is none of that code
   */
  @Transactional
  public FormText statement(String shop, LocalDate from, LocalDate to) {
    Maker maker = Maker.at(days.now(), settings);
    return new ShopStatement(accounts.statement(shop, from, to), maker)
        .on(sheets.usualPaper(maker));
  }

  /**
   * The note that goes along with jars.
   *
   * @throws org.barreltally.shops.UnknownShop if there is no such shop
   * @throws org.barreltally.shops.UnknownDelivery if nothing of that id came to it
   */
  @Transactional
  public FormText note(String shop, UUID delivery) {
    Maker maker = Maker.at(days.now(), settings);
    return new ConsignmentNote(shops.at(shop), bringing.at(shop, delivery), maker)
        .on(sheets.usualPaper(maker));
  }
}
