package org.barreltally.people.pages;

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
import org.barreltally.people.rest.MeApi;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Who is signed in, and their password. */
@Path("/me")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class OwnPage {

  @CheckedTemplate(basePath = "people")
  static class Templates {
    static native TemplateInstance me(MeApi.Me me, Form form);
  }

  private final MeApi api;
  private final Forms forms;

  @Inject
  OwnPage(MeApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show() {
    return show(Form.blank());
  }

  private TemplateInstance show(Form form) {
    return Templates.me(api.me(), form);
  }

  /** A changed password ends all sessions, this one too. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response change(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        MeApi.PasswordChange.class,
        (key, change) -> {
          api.changePassword(change);
          return URI.create("/sign-in");
        },
        form -> show(form.without("current", "next")));
  }
}
