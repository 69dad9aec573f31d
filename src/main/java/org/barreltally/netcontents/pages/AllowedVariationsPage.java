package org.barreltally.netcontents.pages;

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
import java.net.URI;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.barreltally.containers.Container;
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.netcontents.AllowedVariation;
import org.barreltally.netcontents.rest.AllowedVariationsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** How much one jar may be short, as the owner reads it in the handbook. */
@Path("/allowed-variations")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class AllowedVariationsPage {

  private static final URI HERE = URI.create("/allowed-variations");

  @CheckedTemplate(basePath = "netcontents")
  static class Templates {
    static native TemplateInstance variations(
        List<AllowedVariation> entered, List<Choice> sizes, Form form);
  }

  private final AllowedVariationsApi api;
  private final ContainersApi containers;
  private final Forms forms;

  @Inject
  AllowedVariationsPage(AllowedVariationsApi api, ContainersApi containers, Forms forms) {
    this.api = api;
    this.containers = containers;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show() {
    return page(Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response enter(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        AllowedVariationsApi.Entry.class,
        (key, entry) -> {
          api.enter(entry);
          return HERE;
        },
        this::page);
  }

  private TemplateInstance page(Form form) {
    List<Choice> sizes =
        WholeList.of(containers::list).stream()
            .map(Container::code)
            .map(code -> new Choice(code, code))
            .toList();
    List<AllowedVariation> newestFirst = new ArrayList<>(WholeList.of(api::list));
    Collections.reverse(newestFirst);
    return Templates.variations(newestFirst, sizes, form);
  }
}
