package org.barreltally.people.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.RawString;
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
import java.util.List;
import org.barreltally.people.Codes;
import org.barreltally.people.rest.CodesApi;
import org.barreltally.web.pages.CodePicture;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Words;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Codes at sign-in: set up with a phone, stopped. */
@Path("/me/codes")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class CodesPage {

  /** A seed to be scanned or typed. */
  public record Shown(String seed, RawString picture) {

    /** The seed in groups of four, as one types it. */
    public String grouped() {
      return seed.replaceAll("(.{4})(?=.)", "$1 ");
    }
  }

  @CheckedTemplate(basePath = "people")
  static class Templates {
    static native TemplateInstance codes(Codes.State state, Form form);

    static native TemplateInstance firstCode(Shown shown, Form form);

    static native TemplateInstance spareCodes(List<String> spare);
  }

  private final CodesApi api;
  private final CodePicture pictures;
  private final Forms forms;

  @Inject
  CodesPage(CodesApi api, CodePicture pictures, Forms forms) {
    this.api = api;
    this.pictures = pictures;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show() {
    return show(Form.blank());
  }

  private TemplateInstance show(Form form) {
    return Templates.codes(api.state(), form);
  }

  /** The seed is shown in the answer itself: it is a secret, and stands in no address. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response begin(MultivaluedMap<String, String> said) {
    return forms.answer(
        said,
        CodesApi.Beginning.class,
        (key, beginning) -> firstCode(api.begin(beginning), Form.blank()),
        form -> show(form.without("current")));
  }

  private TemplateInstance firstCode(Codes.Begun begun, Form form) {
    String picture = pictures.svg(begun.address(), Words.of("people.codes-picture"));
    return Templates.firstCode(new Shown(begun.seed(), new RawString(picture)), form);
  }

  /** So are the spare codes. All sessions end with this, that of the page too. */
  @POST
  @Path("/confirm")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response confirm(MultivaluedMap<String, String> said) {
    return forms.answer(
        said,
        CodesApi.FirstCode.class,
        (key, first) -> Templates.spareCodes(api.confirm(first).spare()),
        form -> firstCode(api.waiting(), form.without("code")));
  }

  @POST
  @Path("/stop")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response stop(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        CodesApi.Stopping.class,
        (key, stopping) -> {
          api.stop(stopping);
          return URI.create("/sign-in");
        },
        form -> show(form.without("current", "code")));
  }
}
