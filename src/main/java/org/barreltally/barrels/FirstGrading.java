package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import org.barreltally.lots.Grading;
import org.barreltally.lots.Holds;
import org.barreltally.measure.Taste;

/** Grades a new lot in a barrel, or holds it until colour and taste are known. */
@ApplicationScoped
class FirstGrading {

  private final Grading grading;
  private final Holds holds;

  FirstGrading(Grading grading, Holds holds) {
    this.grading = grading;
    this.holds = holds;
  }

  /** Refuses a transmittance that no meter shows, also while the taste is not known yet. */
  void check(Double transmittance) {
    if (transmittance != null) {
      grading.gradeOf(transmittance, Taste.CLEAN);
    }
  }

  void grade(String lot, LocalDate on, Double transmittance, Taste taste) {
    if (transmittance != null && taste != null) {
      grading.grade(lot, on, transmittance, taste, null);
      return;
    }
    check(transmittance);
    holds.hold(lot, "Not graded yet: measure the light transmittance and taste it.");
  }
}
