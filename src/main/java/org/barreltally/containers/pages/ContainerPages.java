package org.barreltally.containers.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.List;
import org.barreltally.containers.Container;
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The sizes syrup is packed in. */
@Path("/containers")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ContainerPages implements MenuEntry {

  private static final List<Column<Container>> COLUMNS =
      List.of(
          Column.by("code", Container::code),
          Column.by("name", Container::name),
          Column.by("contents", Container::netML));

  @CheckedTemplate(basePath = "containers")
  static class Templates {
    static native TemplateInstance list(Listing<Container> list);

    static native TemplateInstance add(Form form, List<Choice> materials);
  }

  private final ContainersApi api;
  private final Forms forms;

  @Inject
  ContainerPages(ContainersApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@Context UriInfo uri) {
    return Templates.list(Listing.of(WholeList.of(api::list), COLUMNS, uri));
  }

  @GET
  @Path("/new")
  @Operation(hidden = true)
  public TemplateInstance add() {
    return add(Form.blank());
  }

  @POST
  @Path("/new")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response added(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Container.class,
        (key, container) -> {
          api.add(container);
          return URI.create("/containers");
        },
        this::add);
  }

  private TemplateInstance add(Form form) {
    return Templates.add(form, Choice.of(Container.Material.values(), "containers.material"));
  }

  @Override
  public String path() {
    return "/containers";
  }

  @Override
  public String words() {
    return "containers.title";
  }

  @Override
  public Part part() {
    return Part.HOUSE;
  }

  @Override
  public int order() {
    return 40;
  }
}
