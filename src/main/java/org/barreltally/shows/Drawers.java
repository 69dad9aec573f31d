package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;
import org.barreltally.settings.FarmSettings;
import org.barreltally.shows.internal.DrawerLog;

/**
 * Counts of cash drawers. One that does not add up is kept with the reason; it never touches how
 * many jars were sold.
 */
@ApplicationScoped
public class Drawers {

  /** The name of the drawer where there is but one. */
  public static final String ONLY = "drawer";

  private static final int NAME_MAX = 40;
  private static final int DENOMINATIONS_MAX = 40;
  private static final long COUNT_MAX = 1_000_000;

  private final DrawerLog log;
  private final FarmSettings settings;

  Drawers(DrawerLog log, FarmSettings settings) {
    this.log = log;
    this.settings = settings;
  }

  /**
   * Checks a count before anything is written.
   *
   * @throws InvalidField naming counts below zero and values that no money has
   * @throws CurrencyMismatch if it is not in the farm's currency
   */
  void check(Drawer said) {
    if (said == null) {
      return;
    }
    List<FieldError> errors = new ArrayList<>();
    if (said.name() != null && (said.name().isBlank() || said.name().length() > NAME_MAX)) {
      errors.add(new FieldError("drawer.name", "Give a name of 1 to " + NAME_MAX + " characters."));
    }
    if (said.denominations().isEmpty() && said.total() == null
        || said.denominations().size() > DENOMINATIONS_MAX) {
      errors.add(
          new FieldError(
              "drawer.denominations",
              "Say how many there are of each note and coin, at most %d lines, or give the total."
                  .formatted(DENOMINATIONS_MAX)));
    }
    for (int n = 0; n < said.denominations().size(); n++) {
      denomination(said.denominations().get(n), "drawer.denominations[" + n + "]", errors);
    }
    if (said.total() != null && said.total().amount().signum() < 0) {
      errors.add(new FieldError("drawer.total", "A drawer holds nothing or more."));
    }
    if (!errors.isEmpty()) {
      throw new InvalidField(errors);
    }
    money(said.total(), "drawer.total");
  }

  private void denomination(Drawer.Denomination one, String path, List<FieldError> errors) {
    if (one == null) {
      errors.add(new FieldError(path, "Give value and count."));
      return;
    }
    if (one.value() == null || one.value().amount().signum() <= 0) {
      errors.add(new FieldError(path + ".value", "Give what one note or coin is worth."));
    } else {
      money(one.value(), path + ".value");
    }
    if (one.count() == null || one.count() < 0 || one.count() > COUNT_MAX) {
      errors.add(
          new FieldError(path + ".count", "Give a whole number of pieces from 0 to 1,000,000."));
    }
  }

  /** The money that an amount of cash is, in the farm's currency. */
  private Money money(Drawer.Cash cash, String field) {
    String currency = settings.now().said().currency();
    if (cash == null) {
      return null;
    }
    if (cash.currency() != null && !cash.currency().equals(currency)) {
      throw new CurrencyMismatch(cash.currency(), currency, field);
    }
    try {
      return new Money(cash.amount(), currency);
    } catch (InvalidField tooFine) {
      throw new InvalidField(field, tooFine.detail());
    }
  }

  /** Keeps a count that was checked. */
  DrawerCount keep(UUID show, Drawer said) {
    Money written = money(said.total(), "drawer.total");
    Money counted =
        said.denominations().stream()
            .map(one -> money(one.value(), "").times(BigDecimal.valueOf(one.count())))
            .reduce(Money::plus)
            .orElse(written);
    return log.keep(
        show,
        said.name() == null ? ONLY : said.name().strip(),
        said,
        counted,
        finding(counted, written));
  }

  private static String finding(Money counted, Money written) {
    if (written == null || written.equals(counted)) {
      return null;
    }
    Money apart = counted.minus(written);
    return "Notes and coins come to %s, and %s was written as the total: %s %s. Count again; the notes and coins count until then."
        .formatted(
            counted,
            written,
            apart.signum() > 0 ? apart : written.minus(counted),
            apart.signum() > 0 ? "more" : "less");
  }

  /** All counts for a show, in the order they were recorded. */
  @Transactional
  public List<DrawerCount> of(UUID show) {
    return log.of(show);
  }

  /** The newest count of each drawer of a show. */
  @Transactional
  public List<DrawerCount> newest(UUID show) {
    Map<String, DrawerCount> newest = new LinkedHashMap<>();
    log.of(show).forEach(count -> newest.put(count.drawer(), count));
    return List.copyOf(newest.values());
  }

  /** The cash in all drawers of a show by their newest counts; empty if none was counted. */
  @Transactional
  public Optional<Money> counted(UUID show) {
    return newest(show).stream().map(DrawerCount::counted).reduce(Money::plus);
  }
}
