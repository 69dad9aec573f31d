package org.barreltally.gifts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barreltally.refusal.InvalidField;

/** Compares what was found in a returned parcel with what had been sent in it. */
final class Inspection {

  private record Packed(String container, String lot) {}

  private Inspection() {}

  /**
   * Of each of the jars that came back, how many are good; in their order.
   *
   * @throws InvalidField if good and broken do not add up to what came back
   */
  static List<GiftJars> good(List<GiftJars> back, Inspected found) {
    List<Inspected.Line> lines = found.lines();
    if (lines == null || lines.isEmpty() || Faults.hasGap(lines)) {
      throw new InvalidField(
          "lines", "Say of each lot how many are good and how many broken: " + words(back) + ".");
    }
    Map<Packed, Long> good = new HashMap<>();
    Map<Packed, Long> told = new HashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      Inspected.Line line = lines.get(i);
      if (line.goodPieces() < 0 || line.brokenPieces() < 0) {
        throw new InvalidField("lines[" + i + "]", "Give numbers of 0 or more.");
      }
      Packed packed = new Packed(line.container(), line.lot());
      good.merge(packed, line.goodPieces(), Long::sum);
      told.merge(packed, line.goodPieces() + line.brokenPieces(), Long::sum);
    }
    Map<Packed, Long> sent = new HashMap<>();
    back.forEach(
        jars ->
            sent.merge(new Packed(jars.jar().container(), jars.lot()), jars.pieces(), Long::sum));
    if (!told.equals(sent)) {
      throw new InvalidField(
          "lines", "Good and broken together must be what was in the parcel: " + words(back) + ".");
    }
    List<GiftJars> whole = new ArrayList<>();
    for (GiftJars jars : back) {
      Packed packed = new Packed(jars.jar().container(), jars.lot());
      long pieces = Math.min(good.get(packed), jars.pieces());
      good.merge(packed, -pieces, Long::sum);
      whole.add(jars.of(pieces));
    }
    return whole;
  }

  private static String words(List<GiftJars> back) {
    return String.join(
        ", ",
        back.stream()
            .map(
                jars ->
                    "%d × %s of lot %s"
                        .formatted(jars.pieces(), jars.jar().container(), jars.lot()))
            .toList());
  }
}
