package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.shows.internal.ShowJson;
import org.barreltally.shows.internal.ShowRow;
import org.barreltally.shows.internal.ShowRows;

/** The shows of the book, to be read. */
@ApplicationScoped
public class Shows {

  private final ShowRows rows;
  private final ShowJson json;

  Shows(ShowRows rows, ShowJson json) {
    this.rows = rows;
    this.json = json;
  }

  @Transactional
  public Optional<Show> find(UUID id) {
    return rows.findByIdOptional(id).map(this::asShow);
  }

  /**
   * The show an address names.
   *
   * @throws UnknownShow as not found
   */
  @Transactional
  public Show at(UUID id) {
    return find(id).orElseThrow(() -> new UnknownShow(id));
  }

  /**
   * The show a field names.
   *
   * @throws UnknownShow naming the field
   */
  @Transactional
  public Show named(UUID id, String field) {
    return find(id).orElseThrow(() -> new UnknownShow(id, field));
  }

  /** The row, kept from being changed by others until the transaction ends. */
  ShowRow locked(UUID id) {
    ShowRow row = rows.findById(id, LockModeType.PESSIMISTIC_WRITE);
    if (row == null) {
      throw new UnknownShow(id);
    }
    return row;
  }

  Show asShow(ShowRow row) {
    return new Show(
        row.id(),
        row.code(),
        row.state(),
        json.read(row.booking(), Booking.class),
        row.boundFrom(),
        row.boundTo(),
        row.version(),
        row.sequence(),
        row.changedAt());
  }
}
