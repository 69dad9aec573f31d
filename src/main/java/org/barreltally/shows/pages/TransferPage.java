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
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.barreltally.shows.Show;
import org.barreltally.shows.Shows;
import org.barreltally.shows.TableLine;
import org.barreltally.shows.TransferJars;
import org.barreltally.shows.rest.OutingApi;
import org.barreltally.shows.rest.ShowDetails;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.OfferedRows;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Jars went over to another table of the same day. */
@Path("/shows/{id}/transfer")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class TransferPage {

  private static final String LINES = "lines";
  private static final int SHOWS_MAX = 500;

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance transfer(
        ShowDetails details,
        OfferedRows<TableLine> rows,
        List<Choice> others,
        List<Choice> sizes,
        Form form);
  }

  private final ShowsApi api;
  private final OutingApi outing;
  private final Shows shows;
  private final Forms forms;
  private final BookingDesk desk;

  @Inject
  TransferPage(ShowsApi api, OutingApi outing, Shows shows, Forms forms, BookingDesk desk) {
    this.api = api;
    this.outing = outing;
    this.shows = shows;
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
  public Response noted(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        OfferedRows.without(said, LINES, "count"),
        TransferJars.class,
        (key, transfer) -> {
          outing.transfer(id, key, said.getFirst("version"), transfer);
          return URI.create("/shows/" + id + "#table");
        },
        form -> page(id, form));
  }

  private TemplateInstance page(UUID id, Form form) {
    ShowDetails details = (ShowDetails) api.at(id).getEntity();
    List<TableLine> there =
        details.table().stream().filter(line -> line.lot() != null && line.onTable() > 0).toList();
    return Templates.transfer(
        details,
        OfferedRows.of(
            form,
            LINES,
            there,
            line -> List.of(line.container(), line.lot()),
            List.of("container", "lot"),
            2),
        others(id),
        desk.sizes(),
        form);
  }

  /** The shows that are on at the same time. */
  private List<Choice> others(UUID id) {
    Show here = shows.at(id);
    return shows.list(new Shows.Filter(null, null), null, SHOWS_MAX).stream()
        .filter(other -> !other.id().equals(id) && here.overlaps(other))
        .map(other -> new Choice(other.id().toString(), other.words()))
        .toList();
  }
}
