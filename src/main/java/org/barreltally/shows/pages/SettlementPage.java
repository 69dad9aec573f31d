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
import org.barreltally.shows.rest.ShowDetails;
import org.barreltally.shows.rest.ShowView;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.shows.rest.TableSalesApi;
import org.barreltally.shows.settling.SettleShow;
import org.barreltally.shows.settling.Settlement;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** How a show stands: what was sold, what the drawer should hold, what is left. */
@Path("/shows/{id}/settlement")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SettlementPage {

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance settlement(
        ShowDetails details,
        Settlement settlement,
        List<ShowView> waitsFor,
        Form form,
        String currency);
  }

  private final ShowsApi api;
  private final TableSalesApi table;
  private final Forms forms;
  private final BookingDesk desk;

  @Inject
  SettlementPage(ShowsApi api, TableSalesApi table, Forms forms, BookingDesk desk) {
    this.api = api;
    this.table = table;
    this.forms = forms;
    this.desk = desk;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance read(@PathParam("id") UUID id) {
    return page(id, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response settled(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        SettleShow.class,
        (key, settle) -> {
          table.settle(id, key, settle);
          return URI.create("/shows/" + id + "/settlement");
        },
        form -> page(id, form));
  }

  private TemplateInstance page(UUID id, Form form) {
    Settlement settlement = table.settlement(id);
    List<ShowView> waitsFor =
        settlement.waitsFor().stream().map(other -> details(other).show()).toList();
    return Templates.settlement(details(id), settlement, waitsFor, form, desk.currency());
  }

  private ShowDetails details(UUID id) {
    return (ShowDetails) api.at(id).getEntity();
  }
}
