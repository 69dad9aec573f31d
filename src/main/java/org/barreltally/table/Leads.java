package org.barreltally.table;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;
import org.barreltally.shows.Shows;
import org.barreltally.table.internal.LeadRows;

/**
 * People at tables who would like gift boxes. Name and number are kept until the owner has dealt
 * with it, then removed; the bare id stays, so that a late repeat from a phone brings nothing back.
 */
@ApplicationScoped
public class Leads {

  private static final int TEXT_MAX = 80;
  private static final int WISH_MAX = 300;

  private final Shows shows;
  private final LeadRows rows;
  private final Days days;

  Leads(Shows shows, LeadRows rows, Days days) {
    this.shows = shows;
    this.rows = rows;
    this.days = days;
  }

  /**
   * Notes somebody, once however often it is told.
   *
   * @throws InvalidField naming every field that needs mending
   */
  @Transactional
  public UUID tell(UUID show, TellLead said) {
    List<FieldError> errors = new ArrayList<>();
    require(said.id() != null, "id", "Give the id that the device made, a UUID.", errors);
    require(said.at() != null, "at", "Give the time, for example 2026-10-03T14:05:00Z.", errors);
    require(fits(said.name(), TEXT_MAX), "name", "Give a name of 1 to 80 characters.", errors);
    require(
        fits(said.phone(), TEXT_MAX),
        "phone",
        "Say how to reach them in 1 to 80 characters.",
        errors);
    require(
        said.wish() == null || said.wish().length() <= WISH_MAX,
        "wish",
        "Keep it within 300 characters.",
        errors);
    if (!errors.isEmpty()) {
      throw new InvalidField(errors);
    }
    rows.add(shows.at(show).id(), said);
    return said.id();
  }

  /** Who waits, the longest first. */
  @Transactional
  public List<Lead> open() {
    return rows.open();
  }

  /**
   * Dealt with: name, number and wish are removed.
   *
   * @throws UnknownLead if there is none of that id
   */
  @Transactional
  public void done(UUID id) {
    if (!rows.done(id, days.now())) {
      throw new UnknownLead(id);
    }
  }

  private static boolean fits(String text, int most) {
    return text != null && !text.isBlank() && text.length() <= most;
  }

  private static void require(boolean met, String field, String mend, List<FieldError> errors) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
