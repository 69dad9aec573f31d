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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.net.URI;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.shows.ComeBack;
import org.barreltally.shows.TableLine;
import org.barreltally.shows.rest.OutingApi;
import org.barreltally.shows.rest.ShowDetails;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.OfferedRows;
import org.barreltally.web.pages.Words;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Jars are counted home by lot, and the drawer by its notes and coins. */
@Path("/shows/{id}/home")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class HomePage {

  private static final String LINES = "lines";
  private static final String MONEY = "drawer.denominations";

  /** Notes and coins in use, from memory; others are typed in the rows left free. */
  private static final List<String> US =
      List.of("100", "50", "20", "10", "5", "2", "1", "0.50", "0.25", "0.10", "0.05", "0.01");

  private static final List<String> CANADA =
      List.of("100", "50", "20", "10", "5", "2", "1", "0.25", "0.10", "0.05");

  /** A count as its form sends it: amounts of the drawer are plain numbers. */
  record Shape(
      List<ComeBack.Line> lines,
      DrawerShape drawer,
      String to,
      Instant at,
      Boolean closes,
      String note) {}

  /** A drawer. */
  record DrawerShape(String name, List<Pieces> denominations, BigDecimal total) {}

  /** So many of one note or coin. */
  record Pieces(BigDecimal value, Long count) {}

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance home(
        ShowDetails details,
        OfferedRows<TableLine> rows,
        OfferedRows<String> money,
        List<Choice> rooms,
        List<Choice> sizes,
        List<Choice> goesOn,
        Form form,
        String currency);
  }

  private final ShowsApi api;
  private final OutingApi outing;
  private final Forms forms;
  private final BookingDesk desk;

  @Inject
  HomePage(ShowsApi api, OutingApi outing, Forms forms, BookingDesk desk) {
    this.api = api;
    this.outing = outing;
    this.forms = forms;
    this.desk = desk;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank(@PathParam("id") UUID id) {
    return page(id, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response counted(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        OfferedRows.without(
            OfferedRows.without(said, LINES, "count", "broken", "sampled", "wetLabels"),
            MONEY,
            "count"),
        Shape.class,
        ComeBack.class,
        (key, count) -> {
          outing.back(id, key, said.getFirst("version"), count);
          return URI.create("/shows/" + id + "#table");
        },
        form -> page(id, form));
  }

  private TemplateInstance page(UUID id, Form form) {
    ShowDetails details = (ShowDetails) api.at(id).getEntity();
    String currency = desk.currency();
    List<TableLine> there =
        details.table().stream().filter(line -> line.lot() != null && line.onTable() != 0).toList();
    List<String> pieces = currency.equals("USD") ? US : currency.equals("CAD") ? CANADA : List.of();
    return Templates.home(
        details,
        OfferedRows.of(
            form,
            LINES,
            there,
            line -> List.of(line.container(), line.lot()),
            List.of("container", "lot"),
            2),
        OfferedRows.of(form, MONEY, pieces, List::of, List.of("value"), pieces.isEmpty() ? 8 : 1),
        desk.rooms(),
        desk.sizes(),
        List.of(new Choice("false", Words.of("shows.goes-on"))),
        form,
        currency);
  }
}
