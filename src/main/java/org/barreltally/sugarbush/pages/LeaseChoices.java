package org.barreltally.sugarbush.pages;

import java.util.List;
import org.barreltally.containers.Containers;
import org.barreltally.pricing.PriceListSummary;
import org.barreltally.pricing.rest.PriceListsApi;
import org.barreltally.sugarbush.Basis;
import org.barreltally.sugarbush.TapKind;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;

/** What the forms of a lease offer. */
public record LeaseChoices(
    List<Choice> bases,
    List<Choice> counts,
    List<Choice> sizes,
    List<Choice> priceLists,
    String currency) {

  private static final int SIZES_MAX = 500;

  public static LeaseChoices of(Containers containers, PriceListsApi lists, PageFarm farm) {
    return new LeaseChoices(
        Choice.of(Basis.values(), "sugarbush.basis"),
        Choice.of(TapKind.values(), "sugarbush.kind"),
        containers.list(null, SIZES_MAX).stream()
            .map(size -> new Choice(size.code(), size.code() + " – " + size.name()))
            .toList(),
        WholeList.<PriceListSummary>of((limit, after) -> lists.list(null, limit, after)).stream()
            .filter(list -> list.replacedBy() == null)
            .map(list -> new Choice(list.id().toString(), list.name()))
            .toList(),
        farm.currency());
  }
}
