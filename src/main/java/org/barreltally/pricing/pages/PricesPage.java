package org.barreltally.pricing.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.Audience;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.PriceListSummary;
import org.barreltally.pricing.PriceLists;
import org.barreltally.pricing.rest.PriceListsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The price lists, for each audience the one that holds and the others. */
@Path("/prices")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class PricesPage implements MenuEntry {

  @CheckedTemplate(basePath = "prices")
  static class Templates {
    static native TemplateInstance list(
        List<ForAudience> audiences, Form asked, List<Choice> choices);
  }

  /**
   * The lists of an audience, the latest first.
   *
   * @param holds the one that holds today; null if none does
   */
  @TemplateData
  public record ForAudience(Audience audience, UUID holds, List<PriceListSummary> lists) {}

  private final PriceListsApi api;
  private final PriceLists lists;
  private final Days days;

  @Inject
  PricesPage(PriceListsApi api, PriceLists lists, Days days) {
    this.api = api;
    this.lists = lists;
    this.days = days;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@QueryParam("audience") String audience) {
    String wanted = audience == null || audience.isBlank() ? null : audience;
    List<PriceListSummary> all =
        WholeList.of((limit, after) -> api.list(wanted, limit, after)).stream()
            .sorted(Comparator.comparing(PriceListSummary::validFrom).reversed())
            .toList();
    return Templates.list(
        Arrays.stream(Audience.values())
            .filter(one -> wanted == null || one.code().equals(wanted))
            .map(one -> of(one, all))
            .toList(),
        Form.with("audience", wanted),
        Choice.of(Audience.values(), "prices.audience"));
  }

  private ForAudience of(Audience audience, List<PriceListSummary> all) {
    Optional<UUID> holds = lists.current(audience, days.today()).map(PriceList::id);
    return new ForAudience(
        audience,
        holds.orElse(null),
        all.stream().filter(list -> list.audience() == audience).toList());
  }

  @Override
  public String path() {
    return "/prices";
  }

  @Override
  public String words() {
    return "prices.title";
  }

  @Override
  public Part part() {
    return Part.SALES;
  }

  @Override
  public int order() {
    return 30;
  }
}
