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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.supplies.Supply;
import org.barreltally.supplies.rest.SuppliesApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A supply is added. */
@Path("/supplies/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class NewSupplyPage {

  @CheckedTemplate(basePath = "supplies")
  static class Templates {
    static native TemplateInstance add(Form form, List<Choice> kinds, List<Choice> sizes);
  }

  private final SuppliesApi api;
  private final ContainersApi containers;
  private final Forms forms;

  @Inject
  NewSupplyPage(SuppliesApi api, ContainersApi containers, Forms forms) {
    this.api = api;
    this.containers = containers;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance add() {
    return page(Form.blank());
  }

  @POST
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
        this::page);
  }

  private TemplateInstance page(Form form) {
    return Templates.add(
        form,
        Choice.of(Supply.Kind.values(), "supplies.kind"),
        WholeList.of(containers::list).stream()
            .map(size -> new Choice(size.code(), size.code() + " – " + size.name()))
            .toList());
  }
}
