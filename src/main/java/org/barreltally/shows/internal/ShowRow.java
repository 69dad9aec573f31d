package org.barreltally.shows.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.shows.Booking;
import org.barreltally.shows.ShowState;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;

/** A show in the database. Whoever changes it has locked the row. */
@Entity
@Table(name = "shows")
public class ShowRow {
  @Id private UUID id;

  @Column(updatable = false)
  private String code;

  private String state;
  private String name;
  private String town;
  private LocalDate starts;
  private LocalDate ends;

  @Column(name = "bound_from")
  private Instant boundFrom;

  @Column(name = "bound_to")
  private Instant boundTo;

  @JdbcTypeCode(SqlTypes.JSON)
  private String booking;

  private int version;
  private int sequence;

  @Column(name = "booked_at", updatable = false)
  private Instant bookedAt;

  @Column(name = "booked_by", updatable = false)
  private UUID bookedBy;

  @Column(name = "changed_at")
  private Instant changedAt;

  protected ShowRow() {}

  public ShowRow(UUID id, String code, ShowState state, Instant bookedAt, UUID bookedBy) {
    this.id = id;
    this.code = code;
    this.state = state.code();
    this.bookedAt = bookedAt;
    this.bookedBy = bookedBy;
  }

  /** Takes what is booked; {@code json} is the same booking as it is stored. */
  public void book(Booking said, String json, Instant from, Instant to) {
    name = said.name();
    town = said.town();
    starts = said.starts();
    ends = said.ends();
    booking = json;
    boundFrom = from;
    boundTo = to;
  }

  /**
   * Notes that the record changed.
   *
   * @param calendar whether something that stands in the calendar changed
   */
  public void touched(Instant now, boolean calendar) {
    version++;
    sequence += calendar ? 1 : 0;
    changedAt = now;
  }

  public void become(ShowState next) {
    state = next.code();
  }

  public UUID id() {
    return id;
  }

  public String code() {
    return code;
  }

  public ShowState state() {
    return ShowState.of(state);
  }

  public String booking() {
    return booking;
  }

  public Instant boundFrom() {
    return boundFrom;
  }

  public Instant boundTo() {
    return boundTo;
  }

  public int version() {
    return version;
  }

  public int sequence() {
    return sequence;
  }

  public Instant changedAt() {
    return changedAt;
  }
}
