package org.barreltally.web.pages;

import io.quarkus.arc.Arc;
import io.quarkus.qute.TemplateExtension;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.barreltally.measure.PressureUnit;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Money;

/**
 * Values the way the viewer reads them: {@code {show:quantity(barrel.mass)}}. Quantities are
 * converted to the viewer's units and rounded to what a person uses; volumes stay at the
 * temperature they are of. What is not there is a dash.
 */
@TemplateExtension(namespace = "show")
public final class Show {

  private static final String NOTHING = "–";
  private static final Map<Unit, Unit> IN_METRIC =
      Map.of(
          Unit.LB, Unit.KG,
          Unit.OZ, Unit.G,
          Unit.GAL, Unit.L,
          Unit.QT, Unit.L,
          Unit.PT, Unit.ML,
          Unit.FLOZ, Unit.ML,
          Unit.DEGF, Unit.DEGC);
  private static final Map<Unit, Unit> IN_US =
      Map.of(
          Unit.KG, Unit.LB,
          Unit.L, Unit.GAL,
          Unit.ML, Unit.FLOZ,
          Unit.DEGC, Unit.DEGF);
  private static final Map<Unit, Integer> DECIMALS =
      Map.of(Unit.KG, 2, Unit.GAL, 2, Unit.G, 0, Unit.ML, 0);
  private static final Map<Unit, String> WORDS =
      Map.of(
          Unit.DEGF,
          "°F",
          Unit.DEGC,
          "°C",
          Unit.BRIX,
          "°Bx",
          Unit.BAUME,
          "°Bé",
          Unit.FLOZ,
          "fl oz");

  private Show() {}

  /** Number and unit: {@code 444.5 lb}. */
  public static String quantity(Quantity quantity) {
    return quantity == null
        ? NOTHING
        : number(quantity) + "\u00a0" + words(shownIn(quantity.unit()));
  }

  /** The number alone, for a column whose head says the unit. */
  public static String number(Quantity quantity) {
    if (quantity == null) {
      return NOTHING;
    }
    Unit unit = shownIn(quantity.unit());
    int decimals = DECIMALS.getOrDefault(unit, 1);
    return decimal(quantity.to(unit, decimals).value(), decimals);
  }

  /** The unit that quantities given in a unit are shown in: {@code gal} or {@code L}. */
  public static String unit(String code) {
    return words(shownIn(Unit.of(code)));
  }

  /** The size printed on a container, in the unit it was given in. */
  public static String size(Quantity quantity) {
    return quantity == null
        ? NOTHING
        : decimal(quantity.value(), Math.max(0, quantity.value().stripTrailingZeros().scale()))
            + "\u00a0"
            + words(quantity.unit());
  }

  /** A plain number with so many decimals. */
  public static String number(Number number, int decimals) {
    return number == null ? NOTHING : decimal(new BigDecimal(number.toString()), decimals);
  }

  /** A whole number. */
  public static String count(Number number) {
    return number == null ? NOTHING : decimal(BigDecimal.valueOf(number.longValue()), 0);
  }

  /** A fraction of one as a percentage with one decimal. */
  public static String share(Number fraction) {
    return fraction == null
        ? NOTHING
        : number(new BigDecimal(fraction.toString()).movePointRight(2), 1) + "\u00a0%";
  }

  /** Percent, with one decimal. */
  public static String percent(Number percent) {
    return percent == null ? NOTHING : number(percent, 1) + "\u00a0%";
  }

  /** Money with its sign: {@code $28.00}. */
  public static String money(Money money) {
    if (money == null) {
      return NOTHING;
    }
    NumberFormat format = NumberFormat.getCurrencyInstance(locale());
    format.setCurrency(Currency.getInstance(money.currency()));
    return format.format(money.amount());
  }

  /** A day. */
  public static String day(LocalDate day) {
    return day == null
        ? NOTHING
        : DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale()).format(day);
  }

  /** The name of a day's month, short. */
  public static String month(LocalDate day) {
    return DateTimeFormatter.ofPattern("LLL").withLocale(locale()).format(day);
  }

  /** The time of day by the farm's clock. */
  public static String hour(Instant instant) {
    return instant == null
        ? NOTHING
        : DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT)
            .withLocale(locale())
            .format(instant.atZone(Arc.container().instance(PageFarm.class).get().zone(instant)));
  }

  /** Day and time by the farm's clock. */
  public static String time(Instant instant) {
    return instant == null
        ? NOTHING
        : DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
            .withLocale(locale())
            .format(instant.atZone(Arc.container().instance(PageFarm.class).get().zone(instant)));
  }

  /** Units to choose from, given by their codes: {@code lb,kg}. */
  public static List<Choice> choices(String codes) {
    return Arrays.stream(codes.split(","))
        .map(code -> new Choice(code, isOfAir(code) ? code : words(Unit.of(code))))
        .toList();
  }

  private static boolean isOfAir(String code) {
    return Arrays.stream(PressureUnit.values()).anyMatch(unit -> unit.code().equals(code));
  }

  /** The one of these units that a field begins with: the first of the viewer's own. */
  public static String first(String codes) {
    List<String> all = List.of(codes.split(","));
    return all.stream()
        .filter(code -> isOfAir(code) || shownIn(Unit.of(code)) == Unit.of(code))
        .findFirst()
        .orElse(all.get(0));
  }

  /** The name of a grade, by its code. */
  public static String grade(Object grade) {
    return grade == null ? Words.of("common.not-graded") : Words.code("common.grade", grade);
  }

  private static Unit shownIn(Unit unit) {
    return Viewer.unitsNow() == Viewer.Units.METRIC
        ? IN_METRIC.getOrDefault(unit, unit)
        : IN_US.getOrDefault(unit, unit);
  }

  private static String words(Unit unit) {
    return WORDS.getOrDefault(unit, unit.code());
  }

  private static String decimal(BigDecimal value, int decimals) {
    NumberFormat format = NumberFormat.getNumberInstance(locale());
    format.setRoundingMode(RoundingMode.HALF_UP);
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    return format.format(value);
  }

  private static Locale locale() {
    return Viewer.languageNow().locale();
  }
}
