package org.barreltally.stock;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.barreltally.barrels.Readings;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.lots.Grading;
import org.barreltally.lots.Lot;
import org.barreltally.lots.Lots;
import org.barreltally.measure.Jurisdiction;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;
import org.barreltally.settings.FarmSettings;
import org.barreltally.stock.internal.JarLine;

/** Enters jars that stood there before the book began. */
@ApplicationScoped
class OpeningJars {

  private static final int GRAM_DECIMALS = 6;

  /** So many lots are written before Hibernate may forget them. */
  private static final int LOTS_AT_ONCE = 50;

  private final Readings readings;
  private final FarmSettings settings;
  private final Lots lots;
  private final Grading grading;
  private final Items items;
  private final Ledger ledger;
  private final Days days;
  private final Ids ids;
  private final EntityManager entities;

  OpeningJars(
      Readings readings,
      FarmSettings settings,
      Lots lots,
      Grading grading,
      Items items,
      Ledger ledger,
      Days days,
      Ids ids,
      EntityManager entities) {
    this.readings = readings;
    this.settings = settings;
    this.lots = lots;
    this.grading = grading;
    this.items = items;
    this.ledger = ledger;
    this.days = days;
    this.ids = ids;
    this.entities = entities;
  }

  /** Opens and grades the lots, makes their items, and posts a movement for each packing day. */
  List<OpenedLot> enter(SortedMap<String, List<JarLine>> byLot) {
    List<OpenedLot> opened = new ArrayList<>();
    SortedMap<LocalDate, Movement.Builder> byDay = new TreeMap<>();
    byLot.forEach(
        (code, lines) -> {
          Lot lot = open(code, lines.get(0));
          Map<String, Item> jars = items(lot, lines);
          Movement.Builder movement =
              byDay.computeIfAbsent(
                  lot.madeOn(), day -> Movement.of(MovementKind.OPENING, days.during(day)));
          lines.forEach(
              line ->
                  movement.move(
                      PlaceCode.OPENING,
                      line.place(),
                      jars.get(line.container().code()).id(),
                      line.count()));
          opened.add(new OpenedLot(code, null, lot.seasons(), lot.grade(), lot.held()));
          if (opened.size() % LOTS_AT_ONCE == 0) {
            entities.flush();
            entities.clear();
          }
        });
    byDay.values().forEach(movement -> ledger.post(movement.build()));
    return opened;
  }

  private Lot open(String code, JarLine line) {
    lots.open(
        code,
        Lot.Kind.PACKED,
        line.packedOn(),
        line.seasons(),
        line.density() == null ? withinTheLimits() : readings.trueBrix(line.density()));
    grading.grade(code, line.packedOn(), line.transmittance(), line.taste(), null);
    return lots.at(code);
  }

  /**
   * What is known of syrup in jars whose density nobody wrote down: it is taken to lie within the
   * limits of the farm's jurisdiction, anywhere with the same chance (GUM 4.3.7).
   */
  private Uncertain withinTheLimits() {
    Jurisdiction rule = settings.jurisdiction();
    return Uncertain.within(
        (rule.brixMin() + rule.brixMax()) / 2, (rule.brixMax() - rule.brixMin()) / 2);
  }

  private Map<String, Item> items(Lot lot, List<JarLine> lines) {
    Syrup syrup = new Syrup(lot.brix().value());
    Map<String, Item> jars = new TreeMap<>();
    for (JarLine line : lines) {
      BigDecimal gramsEach =
          BigDecimal.valueOf(syrup.gramsForML20(line.container().netML()))
              .setScale(GRAM_DECIMALS, RoundingMode.HALF_UP);
      jars.computeIfAbsent(
          line.container().code(),
          size ->
              new Item(ids.next(), lot.code(), size, gramsEach, lot.grade().code(), lot.held()));
    }
    items.add(List.copyOf(jars.values()));
    return jars;
  }
}
