package org.barreltally.watch.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.List;
import org.barreltally.ledger.pages.PlaceNames;
import org.barreltally.watch.StoreroomTemperature;
import org.barreltally.watch.rest.StoreroomsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Storerooms: how warm it is where syrup stands. */
@Path("/storerooms")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class StoreroomPages implements MenuEntry {

  /**
   * A storeroom.
   *
   * @param last what its thermometer said last; null if nothing was noted
   */
  @TemplateData
  public record Row(Choice place, StoreroomTemperature last) {}

  @CheckedTemplate(basePath = "storerooms")
  static class Templates {
    static native TemplateInstance list(List<Row> rooms);

    static native TemplateInstance one(Choice place, Listing<StoreroomTemperature> list, Form form);
  }

  private static final List<Column<StoreroomTemperature>> COLUMNS =
      List.of(Column.by("at", StoreroomTemperature::at));

  private final StoreroomsApi api;
  private final PlaceNames places;
  private final Forms forms;

  @Context UriInfo uri;

  @Inject
  StoreroomPages(StoreroomsApi api, PlaceNames places, Forms forms) {
    this.api = api;
    this.places = places;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list() {
    return Templates.list(places.home().stream().map(this::row).toList());
  }

  private Row row(Choice place) {
    return new Row(
        place, api.list(place.code(), "1", null).items().stream().findFirst().orElse(null));
  }

  @GET
  @Path("/{place}")
  @Operation(hidden = true)
  public TemplateInstance one(@PathParam("place") String place) {
    return page(place, Form.blank());
  }

  @POST
  @Path("/{place}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response note(@PathParam("place") String place, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        StoreroomsApi.Reading.class,
        (key, reading) -> {
          api.note(place, reading);
          return address(place);
        },
        form -> page(place, form));
  }

  private TemplateInstance page(String place, Form form) {
    List<StoreroomTemperature> noted =
        WholeList.of((limit, after) -> api.list(place, limit, after));
    Choice named =
        places.own().stream()
            .filter(choice -> choice.code().equals(place))
            .findFirst()
            .orElse(new Choice(place, place));
    return Templates.one(named, Listing.of(noted, COLUMNS, uri), form);
  }

  private static URI address(String place) {
    return UriBuilder.fromPath("/storerooms/{place}").build(place);
  }

  @Override
  public String path() {
    return "/storerooms";
  }

  @Override
  public String words() {
    return "storerooms.title";
  }

  @Override
  public Part part() {
    return Part.SYRUP;
  }

  @Override
  public int order() {
    return 75;
  }
}
