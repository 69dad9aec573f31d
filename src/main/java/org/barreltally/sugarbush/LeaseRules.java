package org.barreltally.sugarbush;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.PriceLists;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;

/** What a lease may say. */
@ApplicationScoped
class LeaseRules {

  static final int TAPS_MAX = 1_000_000;

  private static final int NAME_MAX = 80;
  private static final int NOTE_MAX = 500;
  private static final int LINES_MAX = 100;
  private static final int FIRST_SEASON = 1900;
  private static final int LAST_SEASON = 2200;

  private final Containers containers;
  private final PriceLists lists;
  private final FarmSettings settings;
  private final Days days;

  LeaseRules(Containers containers, PriceLists lists, FarmSettings settings, Days days) {
    this.containers = containers;
    this.lists = lists;
    this.settings = settings;
    this.days = days;
  }

  /**
   * The name without blanks around it.
   *
   * @throws InvalidField if it is missing or too long
   */
  static String name(String said, String field, String what) {
    if (said == null || said.isBlank() || said.strip().length() > NAME_MAX) {
      throw new InvalidField(field, "Give %s in 1 to %d characters.".formatted(what, NAME_MAX));
    }
    return said.strip();
  }

  static int season(Integer said) {
    if (said == null || said < FIRST_SEASON || said > LAST_SEASON) {
      throw new InvalidField("season", "Give the year of the sap, for example 2026.");
    }
    return said;
  }

  /**
   * The terms with what is left out put in.
   *
   * @throws InvalidField naming what is missing or out of its range
   * @throws CurrencyMismatch if money is of another currency than the farm's
   */
  LeaseTerms terms(LeaseTerms said) {
    if (said.basis() == null) {
      throw new InvalidField(
          "basis", "Say by what jars count: volume, list-value or volume-plus-container.");
    }
    if (said.governs() == null) {
      throw new InvalidField("governs", "Say which count of taps is paid for: set or agreed.");
    }
    money(said.ratePerTap(), "ratePerTap", "Give the rent of one tap, 0 or more.", false);
    if (said.price() != null || said.basis() != Basis.LIST_VALUE) {
      money(said.price(), "price", "Give the price of a gallon at 68 °F, above 0.", true);
    }
    if (said.priceList() != null) {
      lists.named(said.priceList(), "priceList");
    }
    charges(said);
    return said;
  }

  private void charges(LeaseTerms said) {
    if (said.containerCharges().size() > LINES_MAX) {
      throw new InvalidField("containerCharges", "Give at most " + LINES_MAX + " lines.");
    }
    if (!said.containerCharges().isEmpty() && said.basis() != Basis.VOLUME_PLUS_CONTAINER) {
      throw new InvalidField(
          "containerCharges", "Containers are charged only by volume-plus-container.");
    }
    Set<String> seen = new HashSet<>();
    for (int n = 0; n < said.containerCharges().size(); n++) {
      ContainerCharge charge = said.containerCharges().get(n);
      String path = "containerCharges[" + n + "]";
      if (charge == null) {
        throw new InvalidField(path, "Give container and charge.");
      }
      containers.named(charge.container(), path + ".container");
      money(charge.charge(), path + ".charge", "Give the charge for one, 0 or more.", false);
      if (!seen.add(charge.container())) {
        throw new InvalidField(path + ".container", "Name each container once.");
      }
    }
  }

  private void money(Money said, String field, String words, boolean aboveNone) {
    if (said == null || said.signum() < 0 || aboveNone && said.signum() == 0) {
      throw new InvalidField(field, words);
    }
    String home = settings.now().said().currency();
    if (!said.currency().equals(home)) {
      throw new CurrencyMismatch(said.currency(), home, field);
    }
  }

  /**
   * Counts with what is left out put in.
   *
   * @param governs the kind of those that name none
   * @throws InvalidField naming what is missing or out of its range
   */
  List<TapCount> taps(List<TapCount> said, TapKind governs, String field) {
    if (said.size() > LINES_MAX) {
      throw new InvalidField(field, "Give at most " + LINES_MAX + " counts.");
    }
    List<TapCount> taps = new ArrayList<>();
    for (int n = 0; n < said.size(); n++) {
      taps.add(tap(said.get(n), governs, field + "[" + n + "]."));
    }
    return taps;
  }

  TapCount tap(TapCount said, TapKind governs, String path) {
    if (said == null) {
      throw new InvalidField(path.replaceAll("\\.$", ""), "Give from and count.");
    }
    LocalDate from = days.known(said.from(), path + "from");
    if (said.count() == null || said.count() < 0 || said.count() > TAPS_MAX) {
      throw new InvalidField(path + "count", "Give a whole number of taps from 0 to 1,000,000.");
    }
    if (said.note() != null && said.note().length() > NOTE_MAX) {
      throw new InvalidField(path + "note", "Keep it within 500 characters.");
    }
    return new TapCount(
        from, said.count(), said.kind() == null ? governs : said.kind(), said.note());
  }
}
