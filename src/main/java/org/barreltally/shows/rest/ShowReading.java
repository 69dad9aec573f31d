package org.barreltally.shows.rest;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import org.barreltally.shows.Awards;
import org.barreltally.shows.Drawers;
import org.barreltally.shows.Payments;
import org.barreltally.shows.Promises;
import org.barreltally.shows.Show;
import org.barreltally.shows.ShowRecords;
import org.barreltally.shows.Shows;
import org.barreltally.shows.TableBook;

/** Gathers all that is known of a show. */
@ApplicationScoped
class ShowReading {

  private final Shows shows;
  private final ShowRecords records;
  private final Payments payments;
  private final Promises promises;
  private final TableBook tables;
  private final Drawers drawers;
  private final Awards awards;

  ShowReading(
      Shows shows,
      ShowRecords records,
      Payments payments,
      Promises promises,
      TableBook tables,
      Drawers drawers,
      Awards awards) {
    this.shows = shows;
    this.records = records;
    this.payments = payments;
    this.promises = promises;
    this.tables = tables;
    this.drawers = drawers;
    this.awards = awards;
  }

  @Transactional
  ShowDetails of(UUID id) {
    Show show = shows.at(id);
    return new ShowDetails(
        ShowView.of(show),
        show.state().next(),
        records.steps(id),
        payments.paid(id),
        payments.of(id),
        records.cashFloat(id).orElse(null),
        promises.of(id),
        tables.of(show),
        drawers.newest(id),
        records.toLookAt(show),
        records.toDos(id),
        awards.ofShow(id));
  }
}
