package org.barreltally.shops.pages;

import java.util.List;
import org.barreltally.pricing.PriceListSummary;
import org.barreltally.pricing.rest.PriceListsApi;
import org.barreltally.shops.MissingRule;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;

/** What the forms of a shop offer. */
public record ShopChoices(List<Choice> rules, List<Choice> priceLists, String currency) {

  static ShopChoices of(PriceListsApi lists, PageFarm farm) {
    return new ShopChoices(
        Choice.of(MissingRule.values(), "shops.missing"),
        WholeList.<PriceListSummary>of((limit, after) -> lists.list(null, limit, after)).stream()
            .filter(list -> list.replacedBy() == null)
            .map(list -> new Choice(list.id().toString(), list.name()))
            .toList(),
        farm.currency());
  }
}
