package org.barreltally.shows.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.Money;
import org.barreltally.shows.Due;
import org.barreltally.shows.Season;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The shows of a year and what is due for them. */
@Path("/api/shows")
@Tag(name = "Shows")
public class SeasonApi {

  private final Season season;
  private final Days days;

  SeasonApi(Season season, Days days) {
    this.season = season;
    this.days = days;
  }

  /** A show in its season. */
  public record Entry(ShowView show, Money paid, long onTable) {}

  /** What is due, the earliest first, and the shows of the year. */
  public record View(int year, LocalDate today, List<Due> due, List<Entry> shows) {}

  @GET
  @Path("/season")
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "What is due next for the shows of a year",
      description =
          "Applications, answers, fees, packing, set-up, counts home, settlements and to-dos, the"
              + " earliest first; without year, of this one.")
  @APIResponse(
      responseCode = "200",
      description = "What is due, and the shows",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "a fee is due",
                      value =
                          """
                          {"year": 2026, "today": "2026-08-20", "shows": [], "due": [
                            {"on": "2026-09-01", "days": 12, "overdue": false, "what": "pay",
                             "show": "01a0c0de-7000-7000-8000-000000000001",
                             "name": "Fernby Harvest Fair",
                             "words": "Pay what is left of the fee."}]}
                          """)))
  public View season(@QueryParam("year") String year) {
    Season.View view = season.of(year == null ? days.today().getYear() : Asked.year(year, "year"));
    return new View(
        view.year(),
        view.today(),
        view.due(),
        view.shows().stream()
            .map(e -> new Entry(ShowView.of(e.show()), e.paid(), e.onTable()))
            .toList());
  }
}
