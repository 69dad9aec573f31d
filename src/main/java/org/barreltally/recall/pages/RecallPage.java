package org.barreltally.recall.pages;

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
import java.util.UUID;
import org.barreltally.recall.rest.RecallView;
import org.barreltally.recall.rest.RecallsApi;
import org.barreltally.web.Because;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One recall as it stands now: what it touched, what is at hand, who has the rest. */
@Path("/recalls/{id}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class RecallPage {

  @CheckedTemplate(basePath = "recalls")
  static class Templates {
    static native TemplateInstance one(RecallView recall, Form form);
  }

  private final RecallsApi api;
  private final Forms forms;

  @Inject
  RecallPage(RecallsApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance one(@PathParam("id") UUID id) {
    return Templates.one(api.one(id), Form.blank());
  }

  /** Ends it. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response ended(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Because.class,
        (key, why) -> {
          api.end(id, why);
          return URI.create("/recalls/" + id);
        },
        form -> Templates.one(api.one(id), form));
  }
}
