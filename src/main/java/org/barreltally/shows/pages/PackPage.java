package org.barreltally.shows.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.shows.PackOut;
import org.barreltally.shows.rest.OutingApi;
import org.barreltally.shows.rest.ShowDetails;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.stock.StockRow;
import org.barreltally.stock.rest.StockApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.OfferedRows;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Jars are packed out to a show, lot by lot as they stand in a room. */
@Path("/shows/{id}/pack")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class PackPage {

  private static final String LINES = "lines";

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance pack(
        ShowDetails details,
        OfferedRows<StockRow> rows,
        List<StockRow> held,
        List<Choice> rooms,
        List<Choice> sizes,
        String room,
        Form form,
        String currency);
  }

  private final ShowsApi api;
  private final OutingApi outing;
  private final StockApi stock;
  private final Forms forms;
  private final BookingDesk desk;

  @Inject
  PackPage(ShowsApi api, OutingApi outing, StockApi stock, Forms forms, BookingDesk desk) {
    this.api = api;
    this.outing = outing;
    this.stock = stock;
    this.forms = forms;
    this.desk = desk;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank(@PathParam("id") UUID id, @QueryParam("from") String from) {
    return page(id, from, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response packed(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        OfferedRows.without(said, LINES, "count"),
        PackOut.class,
        (key, packOut) -> {
          outing.packOut(id, key, said.getFirst("version"), packOut);
          return URI.create("/shows/" + id + "#table");
        },
        form -> page(id, form.value("from"), form));
  }

  private TemplateInstance page(UUID id, String from, Form form) {
    String room = from == null || from.isBlank() ? PlaceCode.COOL_ROOM : from;
    List<StockRow> there =
        WholeList.of((limit, after) -> stock.list(room, null, null, null, limit, after)).stream()
            .filter(row -> row.container() != null && row.lot() != null && row.onHand() > 0)
            .toList();
    List<StockRow> free = there.stream().filter(row -> !row.held()).toList();
    return Templates.pack(
        (ShowDetails) api.at(id).getEntity(),
        OfferedRows.of(
            form,
            LINES,
            free,
            row -> List.of(row.container(), row.lot()),
            List.of("container", "lot"),
            1),
        there.stream().filter(StockRow::held).toList(),
        desk.rooms(),
        desk.sizes(),
        room,
        form,
        desk.currency());
  }
}
