package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Places;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.PriceLists;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;
import org.barreltally.shows.internal.ShowJson;
import org.barreltally.shows.internal.ShowLog;
import org.barreltally.shows.internal.ShowRow;
import org.barreltally.shows.internal.ShowRows;

/** Books shows and changes what is booked. */
@ApplicationScoped
public class Bookings {

  private final Shows shows;
  private final ShowRows rows;
  private final ShowJson json;
  private final ShowLog log;
  private final Clashes clashes;
  private final Payments payments;
  private final Places places;
  private final PriceLists priceLists;
  private final FarmSettings settings;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  Bookings(
      Shows shows,
      ShowRows rows,
      ShowJson json,
      ShowLog log,
      Clashes clashes,
      Payments payments,
      Places places,
      PriceLists priceLists,
      FarmSettings settings,
      Days days,
      Ids ids,
      RecordedBy recordedBy) {
    this.shows = shows;
    this.rows = rows;
    this.json = json;
    this.log = log;
    this.clashes = clashes;
    this.payments = payments;
    this.places = places;
    this.priceLists = priceLists;
    this.settings = settings;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /**
   * Books a show and opens its table as a place of the ledger.
   *
   * @param state applied, accepted, declined or paid; null for applied
   * @throws InvalidField naming every field that needs mending
   * @throws org.barreltally.pricing.UnknownPriceList if there is no such price list
   * @throws EndsBeforeStart if the days are in the wrong order
   * @throws ShowClash if helper, vehicle or kit is at another show, unless that is allowed
   */
  @Transactional
  public Show book(Booking said, ShowState state, boolean allowOverlap) {
    check(said);
    ShowState first = state == null ? ShowState.APPLIED : state;
    if (!first.isBookable()) {
      throw new InvalidField(
          "state",
          "A show is booked as applied, accepted, declined or paid; packing out and counting back bring it further.");
    }
    clashes.queue();
    String code = ShowCodes.code(said, taken -> places.find(taken).isPresent());
    places.openOut(code, said.name(), true);
    ShowRow row = new ShowRow(ids.next(), code, first, days.now(), recordedBy.user());
    take(row, said);
    row.touched(days.now(), false);
    Show show = shows.asShow(row);
    if (first.binds() && !allowOverlap) {
      clashes.refuse(show);
    }
    rows.persistAndFlush(row);
    log.step(show.id(), first, null);
    if (first == ShowState.PAID) {
      payments.settleFee(show);
    }
    return show;
  }

  /**
   * Changes what is booked.
   *
   * @param versions of the show as the writer read it; null when the writer does not mind
   * @throws ShowChangedSince if it changed since
   * @throws ShowClash if something is bound anew that is at another show, unless that is allowed
   */
  @Transactional
  public Show change(UUID id, Set<String> versions, Booking said, boolean allowOverlap) {
    check(said);
    clashes.queue();
    ShowRow row = shows.locked(id, versions);
    Show before = shows.asShow(row);
    if (before.booking().equals(said)) {
      return before;
    }
    take(row, said);
    row.touched(days.now(), true);
    Show after = shows.asShow(row);
    if (!allowOverlap && Clashes.bindsMore(before, after)) {
      clashes.refuse(after);
    }
    return after;
  }

  private void take(ShowRow row, Booking said) {
    Instant opening = days.beginning(said.starts());
    Instant from = said.setUp() == null ? opening : beginning(said.setUp());
    row.book(
        said,
        json.written(said),
        from.isBefore(opening) ? from : opening,
        days.beginning(said.ends().plusDays(1)));
  }

  private Instant beginning(DayOrTime when) {
    return when.at() != null ? when.at() : days.beginning(when.day());
  }

  private void check(Booking said) {
    BookingRules.check(said, settings.now().said().currency(), this::dayOf);
    if (said.priceList() != null) {
      priceLists.named(said.priceList(), "priceList");
    }
  }

  private LocalDate dayOf(Instant at) {
    return days.dateOf(at);
  }
}
