package org.barreltally.sales.away;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.ledger.Balances;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.Places;
import org.barreltally.lots.Lots;
import org.barreltally.pricing.PriceLists;
import org.barreltally.refusal.InvalidField;
import org.barreltally.sales.Channel;
import org.barreltally.sales.Note;
import org.barreltally.sales.SaidSale;
import org.barreltally.sales.Sale;
import org.barreltally.sales.SaleEntry;
import org.barreltally.sales.Sales;
import org.barreltally.sales.Stall;
import org.barreltally.sales.internal.AwayBook;
import org.barreltally.stock.FreeJars;

/**
 * Sells at the farm gate, by post and wholesale, from a room at home, where nothing goes below
 * zero.
 */
@ApplicationScoped
public class AwaySelling {

  private final Places places;
  private final PriceLists lists;
  private final LotChoice choice;
  private final Lots lots;
  private final Balances balances;
  private final FreeJars free;
  private final SaleEntry entry;
  private final AwayBook book;
  private final Sales sales;
  private final Days days;
  private final Ids ids;

  AwaySelling(
      Places places,
      PriceLists lists,
      LotChoice choice,
      Lots lots,
      Balances balances,
      FreeJars free,
      SaleEntry entry,
      AwayBook book,
      Sales sales,
      Days days,
      Ids ids) {
    this.places = places;
    this.lists = lists;
    this.choice = choice;
    this.lots = lots;
    this.balances = balances;
    this.free = free;
    this.entry = entry;
    this.book = book;
    this.sales = sales;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Sells, and gives the paper its number.
   *
   * @throws InvalidField naming every field that needs mending
   * @throws org.barreltally.ledger.NotThatMuchThere if a lot has fewer
   * @throws NotThatManyThere if all lots together have fewer
   * @throws org.barreltally.stock.PromisedElsewhere if too few are free of promises to others
   * @throws org.barreltally.lots.LotHeld if a lot that was named is held
   */
  @Transactional
  public SoldAway sell(SellAway said) {
    Channel channel = AwayRules.check(said);
    Instant at = said.at() == null ? days.now() : days.happened(said.at(), "at");
    String place = room(said.place());
    if (said.priceList() != null) {
      lists.named(said.priceList(), "priceList");
    }
    SaidSale sale = new SaidSale(ids.next(), at, said.lines(), said.deal(), said.paid());
    entry.check(sale);
    List<Note> notes = new ArrayList<>();
    List<LotChoice.Taken> taken = choice.of(place, said.lines(), notes);
    requireFree(place, taken);
    SaidSale parted =
        new SaidSale(
            sale.id(),
            at,
            taken.stream().map(LotChoice.Taken::line).toList(),
            said.deal(),
            said.paid());
    UUID buyer = said.buyer() == null ? null : book.add(said.buyer());
    entry.enter(
        new Stall(place, channel, said.priceList(), said.taxPlace()),
        parted,
        taken.stream().map(LotChoice.Taken::item).toList(),
        notes,
        buyer);
    PaperNumber number = book.number(sale.id(), days.today());
    return new SoldAway(sales.at(sale.id()), number, said.buyer());
  }

  /** Locks the jars for this transaction; refuses what is not there or promised to others. */
  private void requireFree(String place, List<LotChoice.Taken> taken) {
    Map<Item, Long> pieces = new LinkedHashMap<>();
    taken.forEach(jars -> pieces.merge(jars.item(), (long) jars.line().count(), Long::sum));
    lots.locked(pieces.keySet().stream().map(Item::lot).distinct().toList());
    balances.require(place, pieces);
    free.require(pieces, (container, grade) -> 0);
  }

  private String room(String code) {
    Place place = places.atHand(code == null ? PlaceCode.COOL_ROOM : code, "place");
    if (place.kind() != Place.Kind.HOME) {
      throw new InvalidField(
          "place", "Name a room at home; sales at a table are told to its show.");
    }
    return place.code();
  }

  /**
   * A sale with its paper and buyer.
   *
   * @throws org.barreltally.sales.UnknownSale if there is none of that id
   * @throws NoPaper if it was made at a table
   */
  @Transactional
  public SoldAway at(UUID id) {
    Sale sale = sales.at(id);
    return new SoldAway(
        sale,
        book.number(id).orElseThrow(() -> new NoPaper(id)),
        book.buyer(sale.buyer()).orElse(null));
  }

  /** Removes the name and address of a sale's buyer. */
  @Transactional
  public void forgetBuyer(UUID id) {
    Sale sale = sales.at(id);
    if (sale.buyer() != null) {
      book.forget(sale.buyer());
    }
  }
}
