package org.barreltally.reconciliation.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.barreltally.canning.CanningRuns;
import org.barreltally.reconciliation.Balance;
import org.barreltally.reconciliation.Balances;
import org.barreltally.reconciliation.flows.NetworkTooLarge;
import org.barreltally.reconciliation.rest.ReconciliationFlowsApi;
import org.barreltally.reconciliation.rest.ReconciliationView;
import org.barreltally.reconciliation.rest.SeasonView;
import org.barreltally.web.Asked;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Where a year's syrup went, as numbers and as a picture, and which measurement to look at. */
@Path("/balance")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class BalancePage implements MenuEntry {

  @CheckedTemplate(basePath = "balance")
  static class Templates {
    static native TemplateInstance year(
        int season,
        String year,
        String lot,
        ReconciliationView balance,
        BalanceSheet sheet,
        FlowPicture picture,
        ShrinkBars shrink,
        SeasonView flows);
  }

  private final Balances balances;
  private final ReconciliationFlowsApi flows;
  private final CanningRuns canning;
  private final PageFarm farm;

  @Inject
  BalancePage(Balances balances, ReconciliationFlowsApi flows, CanningRuns canning, PageFarm farm) {
    this.balances = balances;
    this.flows = flows;
    this.canning = canning;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance year(
      @QueryParam("season") String season,
      @QueryParam("lot") String lot,
      @QueryParam("check") String check) {
    Integer asked = Asked.year(season == null || season.isBlank() ? null : season, "season");
    int year = asked == null ? farm.today().getYear() : asked;
    String one = lot == null || lot.isBlank() ? null : lot.strip();
    Balance balance = balances.of(year, one);
    ReconciliationView view = ReconciliationView.of(balance);
    // Of one lot alone most syrup goes on into other lots, which the picture has no place for.
    return Templates.year(
        year,
        String.valueOf(year),
        one,
        view,
        BalanceSheet.of(view),
        one == null ? FlowPicture.of(balance) : null,
        ShrinkBars.of(one == null ? canning.shrinkOf(year) : canning.shrinkOf(one)),
        one == null ? flows(year, "all".equals(check)) : null);
  }

  /**
   * Null where a season holds more flows than are weighed at once, or than are while somebody waits
   * who did not ask for it: its sums stand without.
   */
  private SeasonView flows(int year, boolean all) {
    try {
      return all ? flows.of(String.valueOf(year)) : flows.atAGlance(year);
    } catch (NetworkTooLarge tooLarge) {
      return null;
    }
  }

  @Override
  public String path() {
    return "/balance";
  }

  @Override
  public String words() {
    return "balance.title";
  }

  @Override
  public Part part() {
    return Part.YEAR;
  }

  @Override
  public int order() {
    return 10;
  }
}
