package org.barreltally.sales;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Balances;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.pricing.BasketLine;
import org.barreltally.sales.internal.SaidText;
import org.barreltally.sales.internal.SaleBook;
import org.barreltally.sales.internal.SaleRow;
import org.barreltally.settings.FarmSettings;

/** Prices sales whose jars are known, moves them, and keeps both. */
@ApplicationScoped
public class SaleEntry {

  private final FarmSettings settings;
  private final Balances balances;
  private final Ledger ledger;
  private final Prices prices;
  private final SaleBook book;
  private final Days days;

  SaleEntry(
      FarmSettings settings,
      Balances balances,
      Ledger ledger,
      Prices prices,
      SaleBook book,
      Days days) {
    this.settings = settings;
    this.balances = balances;
    this.ledger = ledger;
    this.prices = prices;
    this.book = book;
    this.days = days;
  }

  /**
   * A sale whose jars are known.
   *
   * @param at when it happened by the book
   * @param jars the item of each line
   * @param buyer null if none was named
   */
  record Draft(SaidSale said, Instant at, List<Item> jars, List<Note> notes, UUID buyer) {}

  /**
   * Checks the form of a sale of its own.
   *
   * @throws org.barreltally.refusal.InvalidField naming every field that needs mending
   */
  public void check(SaidSale said) {
    SaleRules.check(said, "", currency());
  }

  /**
   * Enters one sale.
   *
   * @param buyer null if none was named
   */
  public void enter(Stall stall, SaidSale said, List<Item> jars, List<Note> notes, UUID buyer) {
    book.claim(List.of(said.id()));
    enter(stall, List.of(new Draft(said, said.at(), jars, notes, buyer)));
  }

  /** Enters sales whose ids were claimed, all in few round trips. */
  void enter(Stall stall, List<Draft> drafts) {
    String currency = currency();
    Prices.Day pricing = prices.at(stall, currency);
    Instant now = days.now();
    List<Sale> priced = drafts.stream().map(d -> priced(stall, d, pricing, now, currency)).toList();
    balances.beforeNaming(drafts.stream().flatMap(draft -> draft.jars().stream()).toList());
    ledger.post(
        drafts.stream().map(draft -> movement(stall.place(), draft)).toList(),
        (movements, write) -> {
          List<SaleRow> rows = new ArrayList<>();
          for (int n = 0; n < drafts.size(); n++) {
            Draft draft = drafts.get(n);
            rows.add(
                new SaleRow(
                    priced.get(n).movedBy(movements.get(n)),
                    currency,
                    said(stall, draft.said(), draft.buyer())));
          }
          book.keep(rows, write);
        });
  }

  private Sale priced(Stall stall, Draft draft, Prices.Day pricing, Instant now, String currency) {
    SaidSale said = draft.said();
    List<BasketLine> basket = new ArrayList<>();
    for (int n = 0; n < draft.jars().size(); n++) {
      SaidSale.Line line = said.lines().get(n);
      basket.add(
          new BasketLine(
              line.container(), JarsNamed.grade(draft.jars().get(n)), line.count(), line.price()));
    }
    Price price = pricing.of(said, basket, days.dateOf(draft.at()));
    Settled money = Settled.of(price.total(), said.paid(), currency);
    List<Note> notes = new ArrayList<>(draft.notes());
    MoneyNotes.add(said, price, money, notes);
    if (said.reason() != null) {
      notes.add(new Note(0, "price-reason", "Priced by hand: " + said.reason()));
    }
    return new Sale(
        said.id(),
        stall.place(),
        stall.channel(),
        said.at(),
        draft.at(),
        now,
        price.list(),
        lines(draft, price),
        price.total(),
        price.saved(),
        price.tax(),
        said.paid(),
        money.change(),
        null,
        draft.buyer(),
        false,
        notes);
  }

  private static List<Sale.Line> lines(Draft draft, Price price) {
    List<Sale.Line> lines = new ArrayList<>();
    for (int n = 0; n < draft.jars().size(); n++) {
      SaidSale.Line line = draft.said().lines().get(n);
      Item item = draft.jars().get(n);
      lines.add(
          new Sale.Line(
              line.container(),
              item.lot(),
              line.lot(),
              JarsNamed.grade(item),
              line.count(),
              price.each().get(n),
              line.price() != null,
              price.amounts().get(n),
              item.id()));
    }
    return lines;
  }

  private static Movement movement(String place, Draft draft) {
    Movement.Builder sale =
        Movement.of(MovementKind.SALE, draft.at()).because(draft.said().reason());
    for (int n = 0; n < draft.jars().size(); n++) {
      long count = draft.said().lines().get(n).count();
      sale.move(place, PlaceCode.CUSTOMER, draft.jars().get(n).id(), count);
    }
    return sale.build();
  }

  static String said(Stall stall, SaidSale sale, UUID buyer) {
    return SaidText.of(sale, stall.place(), stall.channel().code(), buyer);
  }

  String currency() {
    return settings.now().said().currency();
  }
}
