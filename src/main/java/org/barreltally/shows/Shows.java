package org.barreltally.shows;

import io.quarkus.panache.common.Parameters;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

  /** The show whose table is a place of the ledger. */
  @Transactional
  public Optional<Show> atPlace(String code) {
    return rows.find("code", code).firstResultOptional().map(this::asShow);
  }

  /**
   * Which shows to list; a null lets all through.
   *
   * @param year in which it starts
   */
  public record Filter(Integer year, ShowState state) {}

  /** Where a list goes on: after a show, by its first day and id. */
  public record Key(LocalDate starts, UUID id) {

    /** Reads what {@link #text} wrote. */
    public static Key of(String text) {
      String[] parts = text.split(" ");
      return new Key(LocalDate.parse(parts[0]), UUID.fromString(parts[1]));
    }

    public String text() {
      return starts + " " + id;
    }
  }

  /** Shows by their first day, after a key (or null), at most so many. */
  @Transactional
  public List<Show> list(Filter filter, Key after, int limit) {
    StringBuilder condition = new StringBuilder("1 = 1");
    Parameters parameters = new Parameters();
    if (filter.year() != null) {
      condition.append(" and starts between :first and :last");
      parameters.and("first", LocalDate.of(filter.year(), 1, 1));
      parameters.and("last", LocalDate.of(filter.year(), 12, 31));
    }
    if (filter.state() != null) {
      condition.append(" and state = :state");
      parameters.and("state", filter.state().code());
    }
    if (after != null) {
      condition.append(" and (starts > :starts or starts = :starts and id > :id)");
      parameters.and("starts", after.starts()).and("id", after.id());
    }
    return rows.find(condition + " order by starts, id", parameters).page(0, limit).stream()
        .map(this::asShow)
        .toList();
  }

  /** Shows whose last day is not before a day, by their first day, at most so many. */
  @Transactional
  public List<Show> endingFrom(LocalDate day, int limit) {
    return rows.find("ends >= ?1 order by starts, id", day).page(0, limit).stream()
        .map(this::asShow)
        .toList();
  }

  /** Shows that bind helper, vehicle and kit at some moment of a span. */
  List<Show> boundBetween(Instant from, Instant to) {
    return rows
        .find(
            "boundFrom < ?1 and boundTo > ?2 and state not in ('declined', 'called-off')"
                + " order by starts, id",
            to,
            from)
        .stream()
        .map(this::asShow)
        .toList();
  }

  /**
   * The row, kept from being changed by others until the transaction ends.
   *
   * @param versions as the writer read it; null when the writer does not mind
   * @throws UnknownShow if there is none of that id
   * @throws ShowChangedSince if it is at none of the versions
   */
  ShowRow locked(UUID id, Set<String> versions) {
    ShowRow row = rows.findById(id, LockModeType.PESSIMISTIC_WRITE);
    if (row == null) {
      throw new UnknownShow(id);
    }
    if (versions != null && !versions.contains(String.valueOf(row.version()))) {
      throw new ShowChangedSince(asShow(row));
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
