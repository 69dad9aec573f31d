package org.barreltally.documents;

import java.util.List;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.settings.UnitHabit;

/** Labels of an invented sugarhouse. */
final class LabelFixture {

  static final String LOT = "P260620-1";

  private LabelFixture() {}

  static LabelText anyLabel() {
    return labelOf("Thistle Ridge Sugarhouse", "412 Ridge Lane", "Millbrook Hollow, VT 05000");
  }

  static LabelText labelOf(String maker, String... address) {
    return label(Quantity.of(1, Unit.PT), maker, List.of(address), LOT);
  }

  static LabelText label(Quantity contents, String maker, List<String> address, String scanned) {
    return new LabelText(
        "Pure maple syrup",
        "Amber, rich taste",
        NetContents.ways(contents, UnitHabit.US),
        TypeHeight.least(TypeHeight.guessedPanel(contents)),
        maker,
        address,
        List.of("Lot " + LOT, "Packed 2026-06-20", "Best by 2028-06-20"),
        LOT,
        null,
        scanned);
  }

  static LabelSheet sheet(String code) {
    return LabelSheets.known().stream()
        .filter(sheet -> sheet.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  static byte[] pdf(LabelText text, String sheet, int startAt, int count) {
    return Papers.labels(text, SheetRun.of(sheet(sheet), startAt, count));
  }
}
