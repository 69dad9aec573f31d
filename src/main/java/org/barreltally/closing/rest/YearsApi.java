package org.barreltally.closing.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.UUID;
import org.barreltally.closing.Year;
import org.barreltally.closing.YearBook;
import org.barreltally.closing.Years;
import org.barreltally.ledger.Movements;
import org.barreltally.ledger.PostedMovement;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Years of the book. */
@Path("/api/years")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Years")
public class YearsApi {

  private static final String CLOSED =
      """
      {"year": 2025, "state": "closed", "closedAt": "2026-01-09T15:20:00Z", "movements": 412,
       "late": 0}
      """;

  /** The years, the earliest first. */
  public record AllYears(List<Year> items) {}

  private final Years years;
  private final Movements movements;

  YearsApi(Years years, Movements movements) {
    this.years = years;
    this.movements = movements;
  }

  @GET
  @Operation(summary = "The years of the book and which of them are closed")
  public AllYears list() {
    return new AllYears(years.list());
  }

  @GET
  @Path("/{year}")
  @Operation(summary = "A year of the book")
  @APIResponse(
      responseCode = "200",
      description = "The year",
      content =
          @Content(
              schema = @Schema(implementation = Year.class),
              examples = @ExampleObject(name = "closed", value = CLOSED)))
  public Year one(@PathParam("year") int year) {
    return years.at(year);
  }

  @POST
  @Path("/{year}/close")
  @RolesAllowed("owner")
  @Operation(
      summary = "Close a year, for ever",
      description =
          "It takes no more postings and cannot be opened again. What is told of it later is booked in the"
              + " open year and marked late; a mistake in it is taken back there. Years are closed in their"
              + " order, once they are over. Your tax preparer decides what a closing needs.")
  @APIResponse(
      responseCode = "200",
      description = "The closed year",
      content =
          @Content(
              schema = @Schema(implementation = Year.class),
              examples = @ExampleObject(name = "closed", value = CLOSED)))
  public Year close(@PathParam("year") int year) {
    return years.close(year);
  }

  @GET
  @Path("/{year}/book")
  @Operation(
      summary = "What the book says of a year: stock at its end, flows and takings",
      description =
          "Only what is booked in the year or before counts, so a closed year reads the same for ever."
              + " Jars in pieces, syrup in bulk (no container) in grams. Flows are by outside account,"
              + " below zero where stock came from there.")
  public YearBook book(@PathParam("year") int year) {
    return years.book(year);
  }

  @GET
  @Path("/{year}/late-facts")
  @Operation(
      summary = "Movements booked in a year though they happened in one that was closed by then",
      description =
          "happenedAt says when it was; reversals of what a closed year holds are among them.")
  public Page<PostedMovement> late(
      @PathParam("year") int year,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        movements.list(
            Movements.Filter.lateIn(year),
            page.after(UUID::fromString).orElse(null),
            page.limit() + 1),
        movement -> movement.id().toString());
  }
}
