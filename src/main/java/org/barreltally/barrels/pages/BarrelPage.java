package org.barreltally.barrels.pages;

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
import jakarta.ws.rs.core.UriBuilder;
import java.net.URI;
import org.barreltally.barrels.rest.BarrelApi;
import org.barreltally.barrels.rest.BarrelRequests;
import org.barreltally.barrels.rest.BarrelView;
import org.barreltally.web.Because;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One barrel: what is in it, and what is done to it. */
@Path("/barrels/{tag}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class BarrelPage {

  @CheckedTemplate(basePath = "barrels")
  static class Templates {
    static native TemplateInstance barrel(BarrelView barrel);

    static native TemplateInstance weigh(BarrelView barrel, Form form);

    static native TemplateInstance grade(BarrelView barrel, Form form, BarrelPages.Choices choices);

    static native TemplateInstance hold(BarrelView barrel, Form form);
  }

  private final BarrelApi api;
  private final Forms forms;

  @Inject
  BarrelPage(BarrelApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  private BarrelView at(String tag) {
    return (BarrelView) api.at(tag).getEntity();
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("tag") String tag) {
    return Templates.barrel(at(tag));
  }

  @GET
  @Path("/weigh")
  @Operation(hidden = true)
  public TemplateInstance weigh(@PathParam("tag") String tag) {
    return Templates.weigh(at(tag), Form.blank());
  }

  @POST
  @Path("/weigh")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response weighed(@PathParam("tag") String tag, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        BarrelRequests.Reweigh.class,
        (key, weighing) -> {
          api.weigh(tag, key, null, weighing);
          return address(tag);
        },
        form -> Templates.weigh(at(tag), form));
  }

  @GET
  @Path("/grade")
  @Operation(hidden = true)
  public TemplateInstance grade(@PathParam("tag") String tag) {
    return Templates.grade(at(tag), Form.blank(), BarrelPages.Choices.now());
  }

  @POST
  @Path("/grade")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response graded(@PathParam("tag") String tag, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        BarrelRequests.Regrade.class,
        (key, grading) -> {
          api.regrade(tag, null, grading);
          return address(tag);
        },
        form -> Templates.grade(at(tag), form, BarrelPages.Choices.now()));
  }

  @GET
  @Path("/hold")
  @Operation(hidden = true)
  public TemplateInstance hold(@PathParam("tag") String tag) {
    return Templates.hold(at(tag), Form.blank());
  }

  /** Holds the barrel, or releases it if it is held. */
  @POST
  @Path("/hold")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response held(@PathParam("tag") String tag, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Because.class,
        (key, because) -> {
          if ("release".equals(said.getFirst("what"))) {
            api.release(tag, null, because);
          } else {
            api.hold(tag, null, because);
          }
          return address(tag);
        },
        form -> Templates.hold(at(tag), form));
  }

  static URI address(String tag) {
    return UriBuilder.fromPath("/barrels/{tag}").build(tag);
  }
}
