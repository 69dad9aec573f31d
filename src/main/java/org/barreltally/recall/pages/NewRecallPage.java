package org.barreltally.recall.pages;

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
import java.net.URI;
import org.barreltally.recall.StartRecall;
import org.barreltally.recall.rest.RecallsApi;
import org.barreltally.web.ReadAnew;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A lot is called back, or that is rehearsed; a rehearsal unless somebody says otherwise. */
@Path("/recalls/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class NewRecallPage {

  @CheckedTemplate(basePath = "recalls")
  static class Templates {
    static native TemplateInstance start(Form form);
  }

  private final RecallsApi api;
  private final Forms forms;

  @Inject
  NewRecallPage(RecallsApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank(
      @QueryParam("lot") String lot, @QueryParam("barrel") String barrel) {
    return Templates.start(Form.with("lot", lot, "barrel", barrel, "rehearsal", "true"));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response started(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        StartRecall.class,
        (key, recall) ->
            URI.create("/recalls/" + ReadAnew.identity(api.start(key, recall).getLocation())),
        Templates::start);
  }
}
