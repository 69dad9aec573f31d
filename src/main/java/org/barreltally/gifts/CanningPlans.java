package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.gifts.internal.PlanRows;
import org.barreltally.ledger.Days;
import org.barreltally.measure.ColorClass;

/** What the owner means to can. It is shown beside what there is, and never promised from. */
@ApplicationScoped
public class CanningPlans {

  private static final long COUNT_MAX = 1_000_000;
  private static final LocalDate FAR = LocalDate.of(2999, 12, 31);

  private final PlanRows rows;
  private final Containers containers;
  private final Days days;

  CanningPlans(PlanRows rows, Containers containers, Days days) {
    this.rows = rows;
    this.containers = containers;
    this.days = days;
  }

  /**
   * @throws org.barreltally.refusal.InvalidField naming every field that needs mending
   */
  @Transactional
  public PlannedCanning plan(PlannedCanning said) {
    Faults faults = new Faults();
    faults.require(
        said.on() != null && !said.on().isBefore(days.today()) && !said.on().isAfter(FAR),
        "on",
        "Give the day of the canning, today or later.");
    faults.require(
        containers.find(said.container()).isPresent(),
        "container",
        "Give the code of a container, for example HP.");
    faults.require(
        said.grade() != null && said.grade() != ColorClass.PROCESSING,
        "grade",
        "Give golden, amber, dark or very-dark.");
    faults.require(
        said.count() != null && said.count() >= 1 && said.count() <= COUNT_MAX,
        "count",
        "Give a whole number of jars from 1 to 1000000.");
    faults.require(said.id() == null, "id", "Leave it out; the tool makes it.");
    faults.refuse();
    return rows.add(said);
  }

  /**
   * @throws UnknownPlan if there is none of that id
   */
  @Transactional
  public void withdraw(UUID id) {
    if (!rows.withdraw(id)) {
      throw new UnknownPlan(id);
    }
  }

  /** Plans from today on, by day. */
  @Transactional
  public List<PlannedCanning> toCome() {
    return rows.between(days.today(), FAR);
  }

  List<PlannedCanning> until(LocalDate day) {
    return rows.between(days.today(), day);
  }
}
