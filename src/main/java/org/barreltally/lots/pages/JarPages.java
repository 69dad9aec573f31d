package org.barreltally.lots.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
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
import java.util.Set;
import org.barreltally.lots.Lot;
import org.barreltally.lots.Lots;
import org.barreltally.lots.rest.PublicLotsApi;
import org.barreltally.settings.FarmSettings;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.MenuEntry;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Which lots show a page to whoever scans a jar; the owner chooses. */
@Path("/jars")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
@Blocking
public class JarPages implements MenuEntry {

  private static final int MOST = 1000;

  /** A lot in jars. */
  public record Row(Lot lot, boolean isPublic) {}

  /** Nothing needs to be said. */
  public record Nothing() {}

  @CheckedTemplate(basePath = "lots")
  static class Templates {
    static native TemplateInstance jars(List<Row> rows, String address, Form form);
  }

  private final PublicLotsApi shown;
  private final Lots lots;
  private final FarmSettings settings;
  private final Forms forms;

  @Inject
  JarPages(PublicLotsApi shown, Lots lots, FarmSettings settings, Forms forms) {
    this.shown = shown;
    this.lots = lots;
    this.settings = settings;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list() {
    return page(Form.blank());
  }

  @POST
  @Path("/{lot}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response change(@PathParam("lot") String lot, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Nothing.class,
        (key, nothing) -> {
          if ("hide".equals(said.getFirst("what"))) {
            shown.hide(lot);
          } else {
            shown.show(lot);
          }
          return URI.create("/jars");
        },
        this::page);
  }

  private TemplateInstance page(Form form) {
    Set<String> all = Set.copyOf(shown.list().items());
    List<Row> rows =
        lots.list(new Lots.Filter(Lot.Kind.PACKED, null, null), null, MOST).stream()
            .map(lot -> new Row(lot, all.contains(lot.code())))
            .toList();
    return Templates.jars(rows, settings.now().said().publicAddress(), form);
  }

  @Override
  @PermitAll
  public String path() {
    return "/jars";
  }

  @Override
  @PermitAll
  public String words() {
    return "jarpage.title";
  }

  @Override
  @PermitAll
  public Part part() {
    return Part.HOUSE;
  }

  @Override
  @PermitAll
  public int order() {
    return 61;
  }
}
