package org.barreltally.keeping.pages;

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
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import org.barreltally.keeping.BackupAge;
import org.barreltally.keeping.rest.BackupView;
import org.barreltally.keeping.rest.BackupsApi;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The backups of the book, and making one now. */
@Path("/backups")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
@Blocking
public class BackupsPage implements MenuEntry {

  /** Nothing needs saying. */
  public record Now() {}

  private static final List<Column<BackupView>> COLUMNS =
      List.of(Column.by("made", BackupView::madeAt), Column.by("size", BackupView::bytes));

  @CheckedTemplate(basePath = "backups")
  static class Templates {
    static native TemplateInstance list(
        Listing<BackupView> list, Long hours, String warning, Form form);
  }

  private final BackupsApi api;
  private final BackupAge age;
  private final Forms forms;

  @Inject
  BackupsPage(BackupsApi api, BackupAge age, Forms forms) {
    this.api = api;
    this.age = age;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@Context UriInfo uri) {
    return shown(uri, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response make(@Context UriInfo uri, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Now.class,
        (key, now) -> {
          api.make();
          return URI.create("/backups");
        },
        form -> shown(uri, form));
  }

  private TemplateInstance shown(UriInfo uri, Form form) {
    return Templates.list(
        Listing.of(WholeList.of(api::list), COLUMNS, uri),
        age.ofTheLast().map(Duration::toHours).orElse(null),
        age.warning().orElse(null),
        form);
  }

  @Override
  @PermitAll
  public String path() {
    return "/backups";
  }

  @Override
  @PermitAll
  public String words() {
    return "backups.title";
  }

  @Override
  @PermitAll
  public Part part() {
    return Part.HOUSE;
  }

  @Override
  @PermitAll
  public int order() {
    return 40;
  }
}
