package org.barreltally.shares.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.UUID;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.shares.ShareStatement;
import org.barreltally.shares.Statements;
import org.barreltally.sugarbush.Leases;
import org.barreltally.web.Asked;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What landowners are still owed, lease by lease. */
@Path("/api/shares")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Leases")
public class OwedApi {

  private final Statements statements;

  OwedApi(Statements statements) {
    this.statements = statements;
  }

  /**
   * A lease and what it comes to.
   *
   * @param owed rent of the season, without what was carried in
   * @param left still owed; below zero more was handed over than was owed
   * @param leftVolume the same in gallons at the agreed price, at 68 °F; left out where none is
   *     agreed
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Owed(
      UUID lease,
      String landowner,
      String bush,
      int season,
      boolean open,
      Money owed,
      Money delivered,
      Money left,
      Quantity leftVolume) {

    static Owed of(ShareStatement said) {
      return new Owed(
          said.lease().id(),
          said.lease().landowner().name(),
          said.lease().bush(),
          said.lease().season(),
          said.lease().closedOn() == null,
          said.owed(),
          said.deliveredValue(),
          said.carried(),
          said.carriedVolume());
    }
  }

  @GET
  @Operation(
      summary = "What landowners are still owed",
      description =
          "Each lease with its rent, what was handed over and what is left, the newest season first. open"
              + " true leaves out what is closed. Nothing of it is reserved: they may have it in any size.")
  public Page<Owed> list(
      @QueryParam("season") String season,
      @QueryParam("landowner") String landowner,
      @QueryParam("open") String open,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    Leases.Filter filter =
        new Leases.Filter(Asked.year(season, "season"), landowner, Asked.yesOrNo(open, "open"));
    return page.page(
        statements.list(filter, page.after(OwedApi::cursor).orElse(null), page.limit() + 1).stream()
            .map(Owed::of)
            .toList(),
        owed -> owed.lease().toString());
  }

  private static UUID cursor(String text) {
    try {
      return UUID.fromString(text);
    } catch (IllegalArgumentException e) {
      throw new InvalidField("after", "Give the next of the answer before, or leave it out.");
    }
  }
}
