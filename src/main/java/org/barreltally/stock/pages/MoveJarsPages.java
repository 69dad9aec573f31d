package org.barreltally.stock.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.net.URI;
import java.util.List;
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.ledger.pages.PlaceNames;
import org.barreltally.stock.Cause;
import org.barreltally.stock.RelocateJars;
import org.barreltally.stock.WriteOffJars;
import org.barreltally.stock.rest.StockApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Jars are carried to another place, or are gone. */
@Path("/stock")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class MoveJarsPages {

  @CheckedTemplate(basePath = "stock")
  static class Templates {
    static native TemplateInstance relocate(Form form, List<Choice> places, List<Choice> sizes);

    static native TemplateInstance writeOff(
        Form form, List<Choice> places, List<Choice> sizes, List<Choice> causes);
  }

  private final StockApi api;
  private final ContainersApi containers;
  private final PlaceNames places;
  private final Forms forms;

  @Inject
  MoveJarsPages(StockApi api, ContainersApi containers, PlaceNames places, Forms forms) {
    this.api = api;
    this.containers = containers;
    this.places = places;
    this.forms = forms;
  }

  @GET
  @Path("/relocate")
  @Operation(hidden = true)
  public TemplateInstance relocate(
      @QueryParam("place") String place,
      @QueryParam("container") String container,
      @QueryParam("lot") String lot) {
    return relocate(Form.with("from", place, "container", container, "lot", lot));
  }

  @POST
  @Path("/relocate")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response relocated(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        RelocateJars.class,
        (key, jars) -> {
          api.relocate(key, jars);
          return lot(jars.lot());
        },
        this::relocate);
  }

  private TemplateInstance relocate(Form form) {
    return Templates.relocate(form, places.own(), StockPages.sizes(containers));
  }

  @GET
  @Path("/write-off")
  @Operation(hidden = true)
  public TemplateInstance writeOff(
      @QueryParam("place") String place,
      @QueryParam("container") String container,
      @QueryParam("lot") String lot) {
    return writeOff(Form.with("place", place, "container", container, "lot", lot));
  }

  @POST
  @Path("/write-off")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response writtenOff(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        WriteOffJars.class,
        (key, jars) -> {
          api.writeOff(key, jars);
          return lot(jars.lot());
        },
        this::writeOff);
  }

  private TemplateInstance writeOff(Form form) {
    return Templates.writeOff(
        form, places.own(), StockPages.sizes(containers), Choice.of(Cause.values(), "stock.cause"));
  }

  private static URI lot(String lot) {
    return UriBuilder.fromPath("/stock").queryParam("lot", "{lot}").build(lot);
  }
}
