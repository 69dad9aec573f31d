package org.barreltally.shows;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.barreltally.shows.Due.What;

/** What is still due for one show, as its state has it. */
final class Agenda {

  private final Show show;
  private final LocalDate today;
  private final Function<Instant, LocalDate> calendar;
  private final List<Due> due = new ArrayList<>();

  private Agenda(Show show, LocalDate today, Function<Instant, LocalDate> calendar) {
    this.show = show;
    this.today = today;
    this.calendar = calendar;
  }

  /**
   * @param calendar the farm's day of an instant
   * @param feePaid whether the flat fee is paid in full
   * @param onTable jars the book has at its table
   * @param toDos what is not done yet
   */
  static List<Due> of(
      Show show,
      LocalDate today,
      Function<Instant, LocalDate> calendar,
      boolean feePaid,
      long onTable,
      List<ToDo> toDos) {
    Agenda agenda = new Agenda(show, today, calendar);
    switch (show.state()) {
      case APPLIED -> agenda.application();
      case ACCEPTED, PAID -> agenda.goingThere();
      case PACKED, RUNNING -> agenda.atTheTable();
      case CLOSED -> agenda.add(What.SETTLE, show.ends(), "Settle it with the organiser.");
      case CALLED_OFF -> agenda.home(onTable);
      default -> {}
    }
    if (!feePaid && show.state().binds()) {
      agenda.fee();
    }
    toDos.forEach(toDo -> agenda.add(What.TO_DO, calendar.apply(toDo.since()), toDo.reason()));
    return agenda.due;
  }

  private void application() {
    Booking.Deadlines by = show.booking().deadlines();
    if (show.booking().appliedOn() == null && by != null && by.apply() != null) {
      add(What.APPLY, by.apply().dayBy(calendar), "Send the application.");
    } else {
      add(What.ANSWER, show.starts(), "No answer to the application is noted yet.");
    }
  }

  private void fee() {
    Booking.Deadlines by = show.booking().deadlines();
    Booth booth = show.booking().booth();
    boolean costs = booth != null && booth.fee() != null && booth.fee().signum() > 0;
    if (costs && by != null && by.pay() != null) {
      add(What.PAY, by.pay().dayBy(calendar), "Pay what is left of the fee.");
    }
  }

  private void goingThere() {
    LocalDate first = first();
    add(What.PACK, first.minusDays(1), "Pack out, by lot, with kit, papers and change money.");
    if (show.booking().setUp() != null) {
      add(What.SET_UP, first, "Set up the table.");
    }
    add(What.RUN, show.starts(), "The show begins.");
  }

  private void atTheTable() {
    if (today.isBefore(show.starts())) {
      if (show.booking().setUp() != null) {
        add(What.SET_UP, first(), "Set up the table.");
      }
      add(What.RUN, show.starts(), "The show begins.");
    }
    add(What.COUNT_BACK, show.ends(), "Count the jars home by lot, and the drawer.");
  }

  private void home(long onTable) {
    if (onTable != 0) {
      add(
          What.COUNT_BACK,
          show.starts(),
          "It was called off with jars packed: count them home by lot.");
    }
  }

  private LocalDate first() {
    DayOrTime setUp = show.booking().setUp();
    return setUp == null ? show.starts() : setUp.dayBy(calendar);
  }

  private void add(What what, LocalDate on, String words) {
    long days = ChronoUnit.DAYS.between(today, on);
    due.add(new Due(on, days, days < 0, what, show.id(), show.name(), words));
  }
}
