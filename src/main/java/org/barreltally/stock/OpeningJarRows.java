package org.barreltally.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.barreltally.barrels.Density;
import org.barreltally.barrels.Readings;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.containers.UnknownContainer;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.Places;
import org.barreltally.measure.Taste;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;
import org.barreltally.stock.internal.Cells;
import org.barreltally.stock.internal.Column;
import org.barreltally.stock.internal.JarLine;
import org.barreltally.stock.internal.LotCodes;
import org.barreltally.stock.internal.RowReading;

/** Reads rows of jars and notes in each what is wrong with it. */
@ApplicationScoped
class OpeningJarRows {

  private static final int EARLIEST_SEASON = 1900;

  private final Containers containers;
  private final Places places;
  private final Readings readings;
  private final Days days;

  OpeningJarRows(Containers containers, Places places, Readings readings, Days days) {
    this.containers = containers;
    this.places = places;
    this.readings = readings;
    this.days = days;
  }

  /** The rows of one file, gathered by lot: all of a lot say the same of it. */
  final class Reading {
    private final LotCodes codes;
    private final Set<String> seen = new HashSet<>();
    private final SortedMap<String, List<JarLine>> byLot = new TreeMap<>();

    private Reading(LotCodes codes) {
      this.codes = codes;
    }

    void read(Cells cells) {
      cells.only(false);
      JarLine line = line(cells);
      if (!cells.areClean()) {
        return;
      }
      List<JarLine> sameLot = byLot.computeIfAbsent(line.lot(), code -> new ArrayList<>());
      if (sameLot.isEmpty()) {
        codes.claim(line.lot(), cells);
      } else if (!line.agreesWith(sameLot.get(0))) {
        cells.wrong(
            Column.LOT,
            "An earlier line says otherwise of lot "
                + line.lot()
                + ". Season, packedOn, brix, transmittance and taste are the same in all its lines.");
      }
      if (!seen.add(line.key())) {
        cells.wrong(Column.COUNT, "An earlier line has these jars at this place. Add the two up.");
      }
      sameLot.add(line);
    }

    SortedMap<String, List<JarLine>> byLot() {
      return byLot;
    }
  }

  Reading reading(LotCodes codes) {
    return new Reading(codes);
  }

  private JarLine line(Cells cells) {
    String lot = needed(cells, Column.LOT, cells.text(Column.LOT), "Give the lot on the label.");
    LocalDate packedOn = packedOn(cells);
    return new JarLine(
        lot,
        place(cells),
        container(cells),
        count(cells),
        seasons(cells, packedOn),
        packedOn,
        density(cells),
        transmittance(cells),
        needed(
            cells,
            Column.TASTE,
            cells.read(Column.TASTE, Taste::of),
            "Say how it tastes, for example clean."));
  }

  /** Notes an empty cell, unless the cell was noted already because it could not be read. */
  private static <T> T needed(Cells cells, Column column, T value, String mend) {
    if (value == null && cells.text(column) == null) {
      cells.wrong(column, mend);
    }
    return value;
  }

  private String place(Cells cells) {
    String code = needed(cells, Column.PLACE, cells.text(Column.PLACE), JarWords.PLACE);
    if (code != null && places.find(code).filter(Place::isOwn).isEmpty()) {
      cells.wrong(Column.PLACE, "There is no place " + code + " for stock. See /api/places.");
    }
    return code;
  }

  private Container container(Cells cells) {
    String code = needed(cells, Column.CONTAINER, cells.text(Column.CONTAINER), JarWords.CONTAINER);
    Container container = containers.find(code).orElse(null);
    if (code != null && container == null) {
      cells.wrong(Column.CONTAINER, new UnknownContainer(code).detail());
    }
    return container;
  }

  private static Long count(Cells cells) {
    Long count =
        cells.read(
            Column.COUNT,
            text -> {
              if (!text.matches("[0-9]{1,7}")) {
                throw new InvalidField("", JarWords.COUNT);
              }
              return Long.valueOf(text);
            });
    if (count != null && (count < 1 || count > JarWords.COUNT_MAX)) {
      cells.wrong(Column.COUNT, JarWords.COUNT);
    }
    return needed(cells, Column.COUNT, count, JarWords.COUNT);
  }

  private LocalDate packedOn(Cells cells) {
    LocalDate day = cells.day(Column.PACKED_ON);
    if (day != null) {
      judged(cells, Column.PACKED_ON, () -> days.happened(day, Column.PACKED_ON.label()));
    }
    return needed(
        cells, Column.PACKED_ON, day, "Give the day they were packed, for example 2025-06-20.");
  }

  private static List<Integer> seasons(Cells cells, LocalDate packedOn) {
    List<Integer> years = cells.read(Column.SEASON, RowReading::years);
    if (years != null
        && packedOn != null
        && years.stream().anyMatch(y -> y < EARLIEST_SEASON || y > packedOn.getYear())) {
      cells.wrong(
          Column.SEASON,
          "Syrup packed in %d is of that crop or an earlier one.".formatted(packedOn.getYear()));
    }
    return needed(
        cells, Column.SEASON, years, "Give the crop year, or several: for example 2024 2025.");
  }

  private Density density(Cells cells) {
    Density density = RowReading.density(cells);
    if (density != null) {
      try {
        readings.trueBrix(density);
      } catch (Refusal refusal) {
        cells.refused(refusal, field -> RowReading.columnOf("density." + field));
      }
    }
    return density;
  }

  private static Double transmittance(Cells cells) {
    String mend = "Give the light transmittance in %Tc, a number from 0 to 100.";
    Double transmittance = cells.number(Column.TRANSMITTANCE);
    if (transmittance != null && (transmittance < 0 || transmittance > 100)) {
      cells.wrong(Column.TRANSMITTANCE, mend);
    }
    return needed(cells, Column.TRANSMITTANCE, transmittance, mend);
  }

  private static void judged(Cells cells, Column column, Supplier<?> rule) {
    try {
      rule.get();
    } catch (Refusal refusal) {
      cells.wrong(column, refusal.detail());
    }
  }
}
