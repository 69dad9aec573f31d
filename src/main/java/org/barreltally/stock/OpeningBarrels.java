package org.barreltally.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import java.util.Set;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.Barrels;
import org.barreltally.barrels.FillBarrel;
import org.barreltally.barrels.Filling;
import org.barreltally.barrels.Origin;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;
import org.barreltally.stock.internal.Cells;
import org.barreltally.stock.internal.Column;
import org.barreltally.stock.internal.LotCodes;
import org.barreltally.stock.internal.RowReading;

/** Enters barrels that were full before the book began. */
@ApplicationScoped
class OpeningBarrels {

  private final Filling filling;
  private final Barrels barrels;

  OpeningBarrels(Filling filling, Barrels barrels) {
    this.filling = filling;
    this.barrels = barrels;
  }

  /** A barrel to be entered; {@code lot} is null if it has no code yet. */
  record Row(Cells cells, String lot, FillBarrel said) {}

  /** Reads rows one after the other and notes in each what is wrong with it. */
  final class Reading {
    private final LotCodes codes;
    private final Set<String> tags = new HashSet<>();

    private Reading(LotCodes codes) {
      this.codes = codes;
      barrels.withSyrup().forEach(barrel -> tags.add(barrel.tag()));
    }

    Row read(Cells cells) {
      cells.only(true);
      FillBarrel said = RowReading.barrel(cells);
      String lot = cells.text(Column.LOT);
      if (cells.areClean()) {
        try {
          filling.check(said);
        } catch (Refusal refusal) {
          cells.refused(refusal, RowReading::columnOf);
        }
      }
      if (said.tag() == null) {
        cells.wrong(Column.TAG, "Give the tag of the barrel, for example B-01.");
      } else if (!tags.add(said.tag())) {
        cells.wrong(
            Column.TAG,
            said.tag() + " holds syrup already, by the book or by an earlier line. Check the tag.");
      }
      if (lot != null) {
        codes.claim(lot, cells);
      }
      return new Row(cells, lot, said);
    }
  }

  Reading reading(LotCodes codes) {
    return new Reading(codes);
  }

  /**
   * @throws InvalidField naming the line, for what could not be seen before
   */
  OpenedLot enter(Row row) {
    try {
      Barrel filled = filling.fill(row.said(), Origin.OPENING, row.lot());
      return new OpenedLot(
          filled.lot().code(),
          filled.tag(),
          filled.seasons(),
          filled.lot().grade(),
          filled.lot().held());
    } catch (Refusal refusal) {
      row.cells().refused(refusal, RowReading::columnOf);
      throw new InvalidField(row.cells().errors());
    }
  }
}
