package org.barreltally.cost.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.barreltally.cost.CostMethod;
import org.barreltally.cost.CostOfGoods;
import org.barreltally.cost.Earnings;
import org.barreltally.cost.Margins;
import org.barreltally.cost.StockValue;
import org.barreltally.cost.StockValues;
import org.barreltally.cost.YearCost;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What gone goods cost, what stock is worth, what was earned. */
@Path("/api")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({"owner", "bookkeeper"})
@Tag(name = "Costs")
public class CostSheetsApi {

  private final CostOfGoods goods;
  private final Earnings earnings;
  private final StockValues values;

  CostSheetsApi(CostOfGoods goods, Earnings earnings, StockValues values) {
    this.goods = goods;
    this.earnings = earnings;
    this.values = values;
  }

  @GET
  @Path("/cost-of-goods")
  @Operation(
      summary = "What goods cost in a year: opening, added, gone and closing",
      description =
          "By the method of the year, or the one asked for. opening + boiled + bought + openedBook + runs +"
              + " containers + late = gone + closing, to the cent. Of a closed year it says the same for ever."
              + " Your tax preparer decides.")
  public YearCost goods(@QueryParam("year") String year, @QueryParam("method") String method) {
    return goods.of(
        Asked.yearGiven(year, "year"),
        Asked.oneOf(CostMethod.values(), CostMethod::code, method, "method"));
  }

  @GET
  @Path("/margins")
  @Operation(
      summary = "What was earned in a year, by container, show or order",
      description =
          "Takings without tax, less what the goods cost, less fees and the like. A gift order counts in the"
              + " year in which its first jars went. Your tax preparer decides.")
  public Margins margins(@QueryParam("year") String year, @QueryParam("by") String by) {
    return earnings.of(
        Asked.yearGiven(year, "year"),
        Asked.oneGiven(Margins.By.values(), Margins.By::code, by, "by"));
  }

  @GET
  @Path("/stock-value")
  @Operation(
      summary = "What the stock is worth at cost on a day",
      description =
          "Barrels, jars on own shelves, at shows and on consignment (still the maker's), by the method of the"
              + " year or the one asked for; today where no day is given. A day of a closed year says the same"
              + " for ever: what was booked later does not count. Your tax preparer decides.")
  public StockValue value(@QueryParam("on") String on, @QueryParam("method") String method) {
    return values.on(
        Asked.day(on, "on"), Asked.oneOf(CostMethod.values(), CostMethod::code, method, "method"));
  }
}
