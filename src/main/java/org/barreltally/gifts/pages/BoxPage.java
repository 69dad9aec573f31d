package org.barreltally.gifts.pages;

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
import org.barreltally.gifts.GiftBox;
import org.barreltally.gifts.rest.GiftBoxesApi;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One gift box, and weighing it packed. */
@Path("/gift-boxes/{id}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class BoxPage {

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance box(GiftBox box, Form form);
  }

  private final GiftBoxesApi boxes;
  private final Forms forms;

  @Inject
  BoxPage(GiftBoxesApi boxes, Forms forms) {
    this.boxes = boxes;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("id") UUID id) {
    return Templates.box(boxes.one(id), Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response weighed(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        GiftBoxesApi.Weighed.class,
        (key, weighed) -> {
          boxes.weigh(id, key, weighed);
          return URI.create("/gift-boxes/" + id);
        },
        form -> Templates.box(boxes.one(id), form));
  }
}
