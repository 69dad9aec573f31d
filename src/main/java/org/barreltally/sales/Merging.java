package org.barreltally.sales;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.InTheFuture;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.refusal.InvalidField;
import org.barreltally.sales.internal.SaleBook;

/**
 * Merges sales that devices at a table tell, one or many, in any order, again and again, from
 * several devices at once. Each id counts once. What happened is never refused: what is odd about a
 * sale is noted beside it.
 */
@ApplicationScoped
public class Merging {

  /** How far ahead a device's clock may be before its word is not taken. */
  public static final Duration CLOCK_AHEAD_MAX = Duration.ofHours(12);

  private final Containers containers;
  private final Items items;
  private final SaleEntry entry;
  private final SaleBook book;
  private final Sales sales;
  private final Days days;

  Merging(
      Containers containers, Items items, SaleEntry entry, SaleBook book, Sales sales, Days days) {
    this.containers = containers;
    this.items = items;
    this.entry = entry;
    this.book = book;
    this.sales = sales;
    this.days = days;
  }

  /**
   * Merges sales in one transaction.
   *
   * @param one whether a single sale was told, not a list; says how fields are named
   * @return what became of each, in the order they were told
   * @throws InvalidField naming fields that are missing, malformed or out of range; nothing is kept
   * @throws InTheFuture if a clock is further ahead than {@link #CLOCK_AHEAD_MAX}
   * @throws org.barreltally.containers.UnknownContainer if a size is not known
   */
  @Transactional
  public List<Merged> merge(Stall stall, List<SaidSale> told, boolean one) {
    String currency = entry.currency();
    if (told == null || told.isEmpty() || told.size() > SaidSale.SALES_MAX) {
      throw new InvalidField("", "Send 1 to " + SaidSale.SALES_MAX + " sales at once.");
    }
    for (int n = 0; n < told.size(); n++) {
      SaleRules.check(told.get(n), path(n, one), currency);
      happened(told.get(n).at(), path(n, one));
    }
    Set<UUID> claimed = book.claim(told.stream().map(SaidSale::id).toList());
    Map<UUID, SaidSale> fresh = new LinkedHashMap<>();
    told.stream()
        .filter(sale -> claimed.contains(sale.id()))
        .forEach(sale -> fresh.putIfAbsent(sale.id(), sale));
    keep(stall, List.copyOf(fresh.values()), told, one);
    return results(stall, told, fresh);
  }

  private void keep(Stall stall, List<SaidSale> fresh, List<SaidSale> told, boolean one) {
    if (fresh.isEmpty()) {
      return;
    }
    List<String> lots = JarsNamed.lotsOf(fresh);
    JarsNamed jars =
        new JarsNamed(
            containers,
            items,
            lots.isEmpty() ? List.of() : items.of(lots),
            book.known(lots),
            book.came(stall.place()));
    Instant now = days.now();
    List<SaleEntry.Draft> drafts = new ArrayList<>();
    for (SaidSale sale : fresh) {
      drafts.add(draft(sale, path(told.indexOf(sale), one), jars, now));
    }
    entry.enter(stall, drafts);
  }

  private static SaleEntry.Draft draft(SaidSale said, String path, JarsNamed named, Instant now) {
    List<Note> notes = new ArrayList<>();
    List<Item> jars = new ArrayList<>();
    for (int n = 0; n < said.lines().size(); n++) {
      jars.add(named.item(said.lines().get(n), path + "lines[" + n + "]", n + 1, notes));
    }
    Instant at = said.at().truncatedTo(ChronoUnit.MICROS);
    if (at.isAfter(now)) {
      notes.add(
          new Note(
              0,
              "clock-ahead",
              "The device's clock said %s when it was %s; booked at that time. Set its clock."
                  .formatted(at, now)));
      at = now;
    }
    return new SaleEntry.Draft(said, at, jars, notes, null);
  }

  private List<Merged> results(Stall stall, List<SaidSale> told, Map<UUID, SaidSale> fresh) {
    List<UUID> all = told.stream().map(SaidSale::id).distinct().toList();
    Map<UUID, String> said = book.said(all);
    List<Merged.Result> results = new ArrayList<>();
    for (SaidSale sale : told) {
      String words = SaleEntry.said(stall, sale, null);
      if (fresh.get(sale.id()) == sale) {
        results.add(Merged.Result.KEPT);
      } else if (words.equals(said.get(sale.id()))) {
        results.add(Merged.Result.REPEATED);
      } else {
        book.conflict(sale.id(), stall.place(), words);
        results.add(Merged.Result.CONFLICT);
      }
    }
    Map<UUID, Sale> kept = new HashMap<>();
    sales.all(all).forEach(sale -> kept.put(sale.id(), sale));
    List<Merged> merged = new ArrayList<>();
    for (int n = 0; n < told.size(); n++) {
      merged.add(new Merged(results.get(n), kept.get(told.get(n).id())));
    }
    return merged;
  }

  private void happened(Instant at, String path) {
    Instant now = days.now();
    if (at.isAfter(now.plus(CLOCK_AHEAD_MAX))) {
      throw new InTheFuture(path + "at", at, now);
    }
    days.happened(at.isAfter(now) ? now : at, path + "at");
  }

  private static String path(int n, boolean one) {
    return one ? "" : "[" + n + "].";
  }
}
