package org.barreltally.supplies.pages;

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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.supplies.Supply;
import org.barreltally.supplies.rest.SuppliesApi;
import org.barreltally.supplies.rest.SupplyView;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Jars, caps, labels and cartons: what is on hand and what runs low. */
@Path("/supplies")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SupplyPages implements MenuEntry {

  private static final List<Column<SupplyView>> COLUMNS =
      List.of(
          Column.by("code", SupplyView::code),
          Column.by("name", SupplyView::name),
          Column.by("kind", SupplyView::kind),
          Column.by("on-hand", SupplyView::onHand));

  @CheckedTemplate(basePath = "supplies")
  static class Templates {
    static native TemplateInstance list(Listing<SupplyView> list, Form asked);

    static native TemplateInstance add(Form form, List<Choice> kinds, List<Choice> sizes);
  }

  private final SuppliesApi api;
  private final ContainersApi containers;
  private final Forms forms;

  @Inject
  SupplyPages(SuppliesApi api, ContainersApi containers, Forms forms) {
    this.api = api;
    this.containers = containers;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@QueryParam("low") String low, @Context UriInfo uri) {
    List<SupplyView> all =
        WholeList.of(api::list).stream()
            .filter(supply -> !"yes".equals(low) || supply.low())
            .toList();
    return Templates.list(Listing.of(all, COLUMNS, uri), Form.with("low", low));
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
        Supply.class,
        (key, supply) -> {
          api.add(supply);
          return SupplyPage.address(supply.code());
        },
        this::add);
  }

  private TemplateInstance add(Form form) {
    return Templates.add(
        form,
        Choice.of(Supply.Kind.values(), "supplies.kind"),
        WholeList.of(containers::list).stream()
            .map(size -> new Choice(size.code(), size.code() + " – " + size.name()))
            .toList());
  }

  @Override
  public String path() {
    return "/supplies";
  }

  @Override
  public String words() {
    return "supplies.title";
  }

  @Override
  public Part part() {
    return Part.SYRUP;
  }

  @Override
  public int order() {
    return 60;
  }
}
