package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.barreltally.gifts.internal.CarrierRows;
import org.barreltally.ledger.Days;
import org.barreltally.refusal.InvalidField;

/**
 * The carriers with their zones and days, as dated tables: what held on a day can always be told.
 */
@ApplicationScoped
public class Carriers {

  private final CarrierRows rows;
  private final Days days;

  Carriers(CarrierRows rows, Days days) {
    this.rows = rows;
    this.days = days;
  }

  /**
   * Tells a carrier's zones and days from a day on.
   *
   * @throws InvalidField naming every field that needs mending
   */
  @Transactional
  public CarrierTable tell(CarrierTable said) {
    CarrierRules.check(said);
    CarrierTable dated =
        new CarrierTable(
            said.name().strip(),
            said.validFrom() == null ? days.today() : days.known(said.validFrom(), "validFrom"),
            said.weekdays(),
            said.closed(),
            said.zones());
    rows.add(dated);
    return dated;
  }

  /** The tables that hold on a day, by the carriers' names. */
  @Transactional
  public List<CarrierTable> holding(LocalDate on) {
    return rows.holding(on == null ? days.today() : on);
  }

  /**
   * The latest day to send.
   *
   * @param carrier null where there is but one
   * @throws InvalidField naming carrier or address if the tables cannot say
   */
  @Transactional
  public LatestSend latestSend(String carrier, LocalDate wantedBy, Address address) {
    CarrierTable table = named(holding(null), carrier, "carrier");
    return latestSend(table, wantedBy, address)
        .orElseThrow(
            () ->
                new InvalidField(
                    "address",
                    "No zone of "
                        + table.name()
                        + " describes this address. Add one with POST /api/carriers."));
  }

  static Optional<LatestSend> latestSend(CarrierTable table, LocalDate wantedBy, Address address) {
    return table
        .zone(address)
        .flatMap(
            zone ->
                table
                    .latestSend(wantedBy, zone)
                    .map(
                        day ->
                            new LatestSend(table.name(), zone.name(), zone.days(), wantedBy, day)));
  }

  /**
   * The carrier of that name among some; the only one where none is named.
   *
   * @throws InvalidField naming the field
   */
  static CarrierTable named(List<CarrierTable> tables, String carrier, String field) {
    if (carrier == null && tables.size() == 1) {
      return tables.get(0);
    }
    String known = String.join(", ", tables.stream().map(CarrierTable::name).toList());
    return tables.stream()
        .filter(table -> table.name().equalsIgnoreCase(carrier == null ? "" : carrier.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new InvalidField(
                    field,
                    tables.isEmpty()
                        ? "No carrier's table holds yet. Tell one with POST /api/carriers, or give"
                            + " sendBy."
                        : "Name one of the carriers: " + known + "."));
  }
}
