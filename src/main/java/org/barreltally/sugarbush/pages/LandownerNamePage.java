package org.barreltally.sugarbush.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
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
import org.barreltally.sugarbush.Landowner;
import org.barreltally.sugarbush.rest.LandownersApi;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** How landowners are named and where to write to; also how their data are removed. */
@Path("/landowners/names")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class LandownerNamePage {

  @CheckedTemplate(basePath = "sugarbush")
  static class Templates {
    static native TemplateInstance landownerNames(List<Landowner> landowners);

    static native TemplateInstance landownerName(Landowner landowner, Form form);
  }

  private final LandownersApi api;
  private final Forms forms;

  @Inject
  LandownerNamePage(LandownersApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list() {
    return Templates.landownerNames(all());
  }

  @GET
  @Path("/{id}")
  @Operation(hidden = true)
  public TemplateInstance one(@PathParam("id") UUID id) {
    Landowner landowner = at(id);
    return Templates.landownerName(
        landowner, Form.with("name", landowner.name(), "address", landowner.address()));
  }

  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response change(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        LandownersApi.Named.class,
        (key, named) -> {
          api.change(id, named);
          return URI.create("/landowners/names");
        },
        form -> Templates.landownerName(at(id), form));
  }

  private List<Landowner> all() {
    return WholeList.of(api::list);
  }

  private Landowner at(UUID id) {
    return all().stream()
        .filter(each -> each.id().equals(id))
        .findFirst()
        .orElseThrow(NotFoundException::new);
  }
}
