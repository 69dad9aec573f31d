package org.barreltally.people.pages;

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
import java.util.List;
import java.util.UUID;
import org.barreltally.people.AccessToken;
import org.barreltally.people.rest.TokensApi;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One's own tokens, for scripts and scales: made and revoked. */
@Path("/tokens")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class TokensPage {

  /** A form that asks for nothing more. */
  public record Nothing() {}

  @CheckedTemplate(basePath = "people")
  static class Templates {
    static native TemplateInstance tokens(List<AccessToken> tokens, Form form);

    static native TemplateInstance token(TokensApi.MadeToken made);
  }

  private final TokensApi api;
  private final Forms forms;

  @Inject
  TokensPage(TokensApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list() {
    return list(Form.blank());
  }

  private TemplateInstance list(Form form) {
    return Templates.tokens(api.list().items(), form);
  }

  /** The secret is shown in the answer itself, since it is kept nowhere. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response make(MultivaluedMap<String, String> said) {
    return forms.answer(
        said,
        TokensApi.NewToken.class,
        (key, wanted) -> Templates.token((TokensApi.MadeToken) api.issue(wanted).getEntity()),
        this::list);
  }

  @POST
  @Path("/{id}/revoke")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response revoke(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Nothing.class,
        (key, nothing) -> {
          api.revoke(id);
          return URI.create("/tokens");
        },
        this::list);
  }
}
