package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.barreltally.cost.CostOfGoods;
import org.barreltally.cost.Earnings;
import org.barreltally.cost.Margins;
import org.barreltally.cost.StockValue;
import org.barreltally.cost.StockValues;
import org.barreltally.cost.YearCost;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.Money;

/** What goods cost in the year, what the stock is worth at cost, and what was earned. */
@ApplicationScoped
class CostsSection implements SeasonBookSection {

  private static final String PLACES = "SELECT code, name FROM places";

  private static final String SHOWS =
      "SELECT CAST(h.id AS text) AS code, h.name || ', ' || h.town AS name FROM shows h"
          + " WHERE extract(year FROM h.starts) = :year";

  private static final Map<String, String> WHERE =
      Map.of(
          "barrels", "in barrels",
          "own-shelves", "in jars",
          "shows", "at shows",
          "consigned", "at shops",
          "elsewhere", "elsewhere");

  private static final String LATE = "late-costs";

  private final CostOfGoods goods;
  private final StockValues values;
  private final Earnings earnings;
  private final BookRows rows;
  private final Days days;

  CostsSection(CostOfGoods goods, StockValues values, Earnings earnings, BookRows rows, Days days) {
    this.goods = goods;
    this.values = values;
    this.earnings = earnings;
    this.rows = rows;
    this.days = days;
  }

  @Override
  public int order() {
    return 1150;
  }

  @Override
  public String title() {
    return "What things cost";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    YearCost cost = goods.of(year.year(), null);
    Map<String, String> places = names(PLACES, year);
    out.say(YearCost.NOTE);
    out.say("Method of the year: " + cost.method().code().replace('-', ' ') + ".");
    sheet(cost, places, out);
    value(year, places, out);
    earned(year, out);
  }

  private Map<String, String> names(String sql, BookYear year) {
    Map<String, String> names = new HashMap<>();
    rows.each(sql, year, row -> names.put(row.text("code"), row.text("name")));
    return names;
  }

  private static void sheet(YearCost cost, Map<String, String> places, BookPages out) {
    YearCost.Totals totals = cost.totals();
    out.table(Heading.of("Line", 0.7), Heading.number("Cost", 0.3));
    out.row("Stood at the year's beginning", totals.opening().toString());
    out.row("Boiled: costs of seasons and lots", totals.boiled().toString());
    out.row("Bought", totals.bought().toString());
    out.row("Stock that was there when the book began", totals.openedBook().toString());
    out.row("Canning runs", totals.runs().toString());
    out.row("Jars, caps, labels and cartons", totals.containers().toString());
    out.row("Told late, of goods that came in earlier years", totals.late().toString());
    Money all =
        Stream.of(
                totals.boiled(),
                totals.bought(),
                totals.openedBook(),
                totals.runs(),
                totals.containers(),
                totals.late())
            .reduce(totals.opening(), Money::plus);
    out.sum("Opening and added", all.toString());
    for (YearCost.Gone gone : totals.goneTo()) {
      String to =
          LATE.equals(gone.account())
              ? "Told late, borne by the year whole"
              : places.getOrDefault(gone.account(), gone.account());
      out.row("Gone: " + to, gone.cost().toString());
    }
    out.row("Stands at the year's end", totals.closing().toString());
    out.sum("Gone and closing", totals.gone().plus(totals.closing()).toString());
    if (totals.methodChange() != null) {
      out.say(
          "The year before closed by another method; by this one its stock is worth "
              + totals.methodChange()
              + " more (below zero: less).");
    }
    if (!cost.waiting().isEmpty()) {
      out.say(
          "Costs whose goods have not come yet, in no sum here: "
              + cost.waiting().stream().map(YearCost.Told::amount).reduce(Money::plus).orElseThrow()
              + ".");
    }
  }

  private void value(BookYear year, Map<String, String> places, BookPages out) {
    LocalDate end = LocalDate.of(year.year(), 12, 31);
    LocalDate today = days.today();
    StockValue value = values.on(today.isBefore(end) ? today : end, null);
    out.say("Value of the stock at cost, by where it stands at the end of " + value.on() + ":");
    out.table(Heading.of("Place", 0.5), Heading.number("jars", 0.2), Heading.number("Cost", 0.3));
    Map<String, Money> costs = new TreeMap<>();
    Map<String, Long> jars = new HashMap<>();
    for (StockValue.Row row : value.rows()) {
      String where = places.getOrDefault(row.place(), row.place()) + ", " + WHERE.get(row.where());
      costs.merge(where, row.stands().cost(), Money::plus);
      jars.merge(where, row.stands().count() == null ? 0 : row.stands().count(), Long::sum);
    }
    costs.forEach(
        (where, cost) ->
            out.row(
                where, jars.get(where) == 0 ? "" : jars.get(where).toString(), cost.toString()));
    if (!costs.isEmpty()) {
      out.sum("All", "", value.total().toString());
    }
  }

  private void earned(BookYear year, BookPages out) {
    out.note(
        "Takings are without tax. Goods are those that went to buyers, at the year's method."
            + (year.closedAt() == null
                ? ""
                : " Gift orders count as they stood at the closing, and shows as they were settled"
                    + " last by then; one not settled by then is left out."));
    out.say("Margins by container:");
    margins(margins(year, Margins.By.CONTAINER), Map.of(), "Container", out);
    out.say("Margins by show; charges are fee, travel, helper, other costs, and jars lost:");
    margins(margins(year, Margins.By.SHOW), names(SHOWS, year), "Show", out);
  }

  private Margins margins(BookYear year, Margins.By by) {
    return year.closedAt() == null
        ? earnings.of(year.year(), by)
        : earnings.known(year.year(), by, year.closedAt());
  }

  private static void margins(
      Margins margins, Map<String, String> names, String what, BookPages out) {
    out.table(
        Heading.of(what, 0.28),
        Heading.number("jars", 0.08),
        Heading.number("Takings", 0.16),
        Heading.number("Goods", 0.16),
        Heading.number("Charges", 0.16),
        Heading.number("Margin", 0.16));
    for (Margins.Row row : margins.items()) {
      out.row(
          names.getOrDefault(row.name(), row.name().replace('-', ' ')),
          row.count() == null ? "" : row.count().toString(),
          row.takings().toString(),
          row.goods().toString(),
          row.charges().isEmpty() ? "" : sum(row.charges()).toString(),
          row.margin().toString());
    }
    if (!margins.items().isEmpty()) {
      Margins.Totals all = margins.totals();
      out.sum(
          "All",
          "",
          all.takings().toString(),
          all.goods().toString(),
          all.charges().toString(),
          all.margin().toString());
    }
  }

  private static Money sum(List<Margins.Charge> charges) {
    return charges.stream().map(Margins.Charge::amount).reduce(Money::plus).orElseThrow();
  }
}
