package org.barreltally.watch;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.ColorLimit;
import org.barreltally.measure.Jurisdiction;
import org.barreltally.watch.WatchItem.Kind;

/**
 * What makes a lot worth a look.
 *
 * @param colorMeter half width of the color meter, points of %Tc
 * @param ageDays days after which colour is looked at again
 * @param heldDays days after which a hold is looked at again
 */
record LotRules(Jurisdiction jurisdiction, double colorMeter, int ageDays, int heldDays) {

  /** Sources: Ontario packing guide D.6; Sendak, Morselli and Bee, J. Food Sci. 43:1002 (1978). */
  private static final String PLASTIC =
      "It stands in plastic%s. A packing guide says that plastic can darken syrup by a grade after"
          + " three months, and one study saw some plastic fall a grade at nine to twelve months.";

  List<WatchItem> of(StandingLot lot, LocalDate today) {
    return Stream.of(nearLine(lot), age(lot, today), held(lot, today))
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<WatchItem> nearLine(StandingLot lot) {
    Double read = lot.transmittance();
    if (read == null
        || lot.grade() == ColorClass.PROCESSING
        || !jurisdiction.nearALine(read, colorMeter)) {
      return Optional.empty();
    }
    double line =
        jurisdiction.limits().stream()
            .map(ColorLimit::transmittanceMin)
            .filter(limit -> limit > 0)
            .min(Comparator.comparingDouble(limit -> Math.abs(limit - read)))
            .orElseThrow();
    return Optional.of(
        WatchItem.ofLot(
            Kind.NEAR_GRADE_LINE,
            lot,
            lot.lastRead(),
            null,
            "%s was read at %s %%Tc, within %s points of the line at %s: another meter may say another grade. Read it again, cold and clear."
                .formatted(lot.words(), plain(read), plain(colorMeter), plain(line)),
            null));
  }

  private Optional<WatchItem> age(StandingLot lot, LocalDate today) {
    LocalDate since = lot.colourKnown();
    long days = ChronoUnit.DAYS.between(since, today);
    if (days <= ageDays) {
      return Optional.empty();
    }
    boolean jars = lot.tag() == null;
    String what = since.equals(lot.lastRead()) ? "last read" : jars ? "packed" : "filled";
    return Optional.of(
        WatchItem.ofLot(
            jars ? Kind.JARS_BY_AGE : Kind.BARREL_BY_AGE,
            lot,
            since,
            days,
            "%s was %s %d days ago, on %s. Read its colour again and taste it."
                .formatted(lot.words(), what, days, since),
            plastic(lot)));
  }

  private static String plastic(StandingLot lot) {
    if (lot.plasticSizes() != null) {
      return PLASTIC.formatted(" (" + lot.plasticSizes() + ")");
    }
    return lot.plasticVessel() ? PLASTIC.formatted("") : null;
  }

  private Optional<WatchItem> held(StandingLot lot, LocalDate today) {
    if (lot.heldSince() == null) {
      return Optional.empty();
    }
    long days = ChronoUnit.DAYS.between(lot.heldSince(), today);
    return days <= heldDays
        ? Optional.empty()
        : Optional.of(
            WatchItem.ofLot(
                Kind.HELD_LONG,
                lot,
                lot.heldSince(),
                days,
                "%s is held for %d days. Decide: release it with a reason, use it otherwise, or throw it away."
                    .formatted(lot.words(), days),
                null));
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
