package org.barreltally.sugarbush.boiling;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import org.barreltally.ledger.Days;
import org.barreltally.refusal.InvalidField;

/** Days, seasons and texts of the log. */
@ApplicationScoped
class LogRules {

  private static final int NOTE_MAX = 1000;
  private static final int REASON_MAX = 500;
  private static final int NAME_MAX = 40;

  private final Days days;

  LogRules(Days days) {
    this.days = days;
  }

  /** The day, if it has come. */
  LocalDate day(LocalDate said) {
    return days.happened(said, "on");
  }

  /** An instant, if it is past. */
  Instant at(Instant said, String field) {
    return days.happened(said, field);
  }

  LocalDate dateOf(Instant instant) {
    return days.dateOf(instant);
  }

  /** The season of a day: its year, or the next one where trees are tapped in autumn. */
  static int season(LocalDate on, Integer said) {
    if (said == null) {
      return on.getYear();
    }
    if (said != on.getYear() && said != on.getYear() + 1) {
      throw new InvalidField(
          "season",
          "Sap of %s is of the season %d, or of %d where trees are tapped in autumn."
              .formatted(on, on.getYear(), on.getYear() + 1));
    }
    return said;
  }

  /** A tank's or barrel's name; null only where it may be left out. */
  static String name(String said, String field, String mend) {
    if (said == null || said.isBlank() || said.strip().length() > NAME_MAX) {
      throw new InvalidField(field, mend);
    }
    return said.strip();
  }

  /** A text that may be left out. */
  static void text(String said, String field) {
    if (said != null && (said.isBlank() || said.length() > NOTE_MAX)) {
      throw new InvalidField(field, "Write 1 to 1,000 characters, or leave it out.");
    }
  }

  static String reason(String said) {
    if (said == null || said.isBlank() || said.length() > REASON_MAX) {
      throw new InvalidField("reason", "Say why, in 1 to 500 characters.");
    }
    return said.strip();
  }
}
