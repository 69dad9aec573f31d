package org.barreltally.shows;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** What a booking must be; every field at fault is named at once. */
final class BookingRules {

  private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);
  private static final LocalDate LATEST = LocalDate.of(2999, 12, 31);
  private static final int DAYS_MAX = 60;
  private static final int SET_UP_DAYS_MAX = 14;
  private static final int NAME_MAX = 100;
  private static final int TEXT_MAX = 1000;
  private static final int LIST_MAX = 50;
  private static final int TABLES_MAX = 20;
  private static final int PERCENT_DECIMALS = 3;
  private static final int PEOPLE_MAX = 10_000_000;
  private static final BigDecimal HOURS_MAX = BigDecimal.valueOf(1000);
  private static final BigDecimal LENGTH_MAX = BigDecimal.valueOf(600);
  private static final int TIERS_MAX = 10;

  private final List<FieldError> errors = new ArrayList<>();
  private final String currency;
  private final Function<Instant, LocalDate> calendar;

  private BookingRules(String currency, Function<Instant, LocalDate> calendar) {
    this.currency = currency;
    this.calendar = calendar;
  }

  /**
   * @param currency the farm's, in which all money of a show is counted
   * @param calendar the farm's day of an instant
   * @throws InvalidField naming every field that is missing, malformed or out of its range
   * @throws EndsBeforeStart if the days are in the wrong order
   */
  static void check(Booking said, String currency, Function<Instant, LocalDate> calendar) {
    BookingRules rules = new BookingRules(currency, calendar);
    rules.line(said.name(), "name", true);
    rules.line(said.town(), "town", true);
    rules.days(said);
    rules.people(said);
    rules.booth(said.booth());
    rules.money(said.cashFloat(), "float");
    rules.money(said.travelCost(), "travelCost");
    rules.money(said.helperPay(), "helperPay");
    rules.load(said.vehicleLoad());
    rules.list(said.kitItems(), "kitItems");
    rules.list(said.papers(), "papers");
    rules.text(said.rainPlan(), "rainPlan");
    rules.text(said.notes(), "notes");
    rules.number(said.hoursOpen(), HOURS_MAX, "hoursOpen", "hours");
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
  }

  private void days(Booking said) {
    boolean known = day(said.starts(), "starts") & day(said.ends(), "ends");
    if (!known) {
      return;
    }
    if (said.ends().isBefore(said.starts())) {
      if (errors.isEmpty()) {
        throw new EndsBeforeStart(said.starts(), said.ends());
      }
      require(false, "ends", "Give a day that is not before the first.");
      return;
    }
    require(
        said.ends().isBefore(said.starts().plusDays(DAYS_MAX)),
        "ends",
        "A show lasts at most " + DAYS_MAX + " days. Check the year.");
    if (said.setUp() != null) {
      LocalDate setUp = said.setUp().dayBy(calendar);
      require(
          !setUp.isAfter(said.starts())
              && !setUp.isBefore(said.starts().minusDays(SET_UP_DAYS_MAX)),
          "setUp",
          "Set-up is on the first day or up to " + SET_UP_DAYS_MAX + " days before it.");
    }
    if (said.deadlines() != null) {
      deadline(said.deadlines().apply(), said, "deadlines.apply");
      deadline(said.deadlines().pay(), said, "deadlines.pay");
    }
    require(
        said.appliedOn() == null || !said.appliedOn().isAfter(said.starts()),
        "appliedOn",
        "Give the day the application was sent, not after the show began.");
  }

  /** A year apart is a slip of the pen; a fee may fall due after the show. */
  private void deadline(DayOrTime when, Booking said, String field) {
    if (when != null) {
      LocalDate day = when.dayBy(calendar);
      require(
          day.isAfter(said.starts().minusYears(2)) && day.isBefore(said.ends().plusYears(1)),
          field,
          "Give a day within two years before the show or one after it. Check the year.");
    }
  }

  private boolean day(LocalDate day, String field) {
    boolean known = day != null && !day.isBefore(EARLIEST) && !day.isAfter(LATEST);
    require(known, field, "Give the day, for example 2026-10-03.");
    return known;
  }

  private void people(Booking said) {
    line(said.helper(), "helper", false);
    line(said.vehicle(), "vehicle", false);
    line(said.tableKit(), "tableKit", false);
    if (said.organiser() != null) {
      line(said.organiser().name(), "organiser.name", false);
      text(said.organiser().contact(), "organiser.contact");
    }
    Integer people = said.visitorsExpected();
    require(
        people == null || people >= 0 && people <= PEOPLE_MAX,
        "visitorsExpected",
        "Give a whole number of people from 0 to 10,000,000.");
  }

  private void booth(Booth booth) {
    if (booth == null) {
      return;
    }
    money(booth.fee(), "booth.fee");
    money(booth.deposit(), "booth.deposit");
    BigDecimal percent = booth.percentOfSales();
    number(percent, BigDecimal.valueOf(100), "booth.percentOfSales", "percent");
    require(
        percent == null || percent.stripTrailingZeros().scale() <= PERCENT_DECIMALS,
        "booth.percentOfSales",
        "Give at most " + PERCENT_DECIMALS + " decimals.");
    require(
        booth.tables().size() <= TABLES_MAX,
        "booth.tables",
        "Give at most " + TABLES_MAX + " tables.");
    for (int n = 0; n < Math.min(booth.tables().size(), TABLES_MAX); n++) {
      table(booth.tables().get(n), "booth.tables[" + n + "]");
    }
  }

  private void table(Booth.Table table, String path) {
    side(table.lengthInches(), path + ".lengthInches");
    side(table.depthInches(), path + ".depthInches");
    require(
        table.tiers() == null || table.tiers() >= 1 && table.tiers() <= TIERS_MAX,
        path + ".tiers",
        "Give 1 to " + TIERS_MAX + " tiers.");
  }

  private void side(BigDecimal inches, String field) {
    require(
        inches != null && inches.signum() > 0 && inches.compareTo(LENGTH_MAX) <= 0,
        field,
        "Give inches, more than 0 and at most " + LENGTH_MAX + ".");
  }

  private void money(Money money, String field) {
    if (money != null) {
      require(money.signum() >= 0, field, "Give an amount that is not below nothing.");
      require(
          money.currency().equals(currency),
          field,
          "Give it in " + currency + ", the currency set for the farm.");
    }
  }

  private void load(Quantity load) {
    require(
        load == null || load.unit().dimension() == Dimension.MASS && load.value().signum() > 0,
        "vehicleLoad",
        "Give the most the vehicle should carry in lb, oz, kg or g.");
  }

  private void number(BigDecimal number, BigDecimal most, String field, String what) {
    require(
        number == null || number.signum() >= 0 && number.compareTo(most) <= 0,
        field,
        "Give " + what + " from 0 to " + most + ".");
  }

  private void list(List<String> lines, String field) {
    if (lines == null) {
      return;
    }
    require(lines.size() <= LIST_MAX, field, "Give at most " + LIST_MAX + " lines.");
    for (int n = 0; n < Math.min(lines.size(), LIST_MAX); n++) {
      line(lines.get(n), field + "[" + n + "]", true);
    }
  }

  private void line(String text, String field, boolean needed) {
    if (text == null && !needed) {
      return;
    }
    require(
        text != null
            && !text.isBlank()
            && text.codePointCount(0, text.length()) <= NAME_MAX
            && text.codePoints().noneMatch(Character::isISOControl),
        field,
        "Give one line of 1 to " + NAME_MAX + " characters.");
  }

  private void text(String text, String field) {
    require(
        text == null || text.length() <= TEXT_MAX,
        field,
        "Keep it within " + TEXT_MAX + " characters.");
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
