package org.barreltally.table.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.shows.Show;
import org.barreltally.shows.ShowState;
import org.barreltally.table.TableSheet;
import org.barreltally.table.TableSheets;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What a phone takes along to a show table. */
@Path("/api/table/shows")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Show table")
public class TableApi {

  private final TableSheets sheets;
  private final Days days;

  TableApi(TableSheets sheets, Days days) {
    this.sheets = sheets;
    this.days = days;
  }

  /** A show to choose. */
  public record Offered(
      UUID id, String name, String town, LocalDate starts, LocalDate ends, ShowState state) {

    static Offered of(Show show) {
      return new Offered(
          show.id(), show.name(), show.town(), show.starts(), show.ends(), show.state());
    }
  }

  /**
   * Shows to choose from.
   *
   * @param now by the clock of this program
   */
  public record OfferedList(Instant now, List<Offered> items) {}

  @GET
  @Operation(
      summary = "Shows whose table a phone may serve",
      description =
          "Accepted and not called off, up to a week after their last day. now is the time by this"
              + " program, so that a phone can tell how far its clock is off.")
  public OfferedList shows() {
    return new OfferedList(days.now(), sheets.offered().stream().map(Offered::of).toList());
  }

  @GET
  @Path("/{id}")
  @Operation(
      summary = "All that a show's table needs for a day without signal",
      description =
          "Prices and deals of the day, sizes and grades in the order of the tally sheet, lots on the"
              + " table, change money, other tables of the day, the cool room and the gift boxes.")
  public TableSheet sheet(@PathParam("id") UUID id) {
    return sheets.of(id);
  }
}
