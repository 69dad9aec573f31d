package org.barreltally.gifts.pages;

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
import org.barreltally.containers.Containers;
import org.barreltally.gifts.MakeBox;
import org.barreltally.gifts.rest.GiftBoxesApi;
import org.barreltally.web.ReadAnew;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A gift box is made. */
@Path("/gift-boxes/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class NewBoxPage {

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance newBox(Form form, GiftChoices choices, int rows);
  }

  private static final int ROWS = 3;

  private final GiftBoxesApi boxes;
  private final Containers containers;
  private final PageFarm farm;
  private final Forms forms;

  @Inject
  NewBoxPage(GiftBoxesApi boxes, Containers containers, PageFarm farm, Forms forms) {
    this.boxes = boxes;
    this.containers = containers;
    this.farm = farm;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank() {
    return shown(Form.blank(), ROWS);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response made(MultivaluedMap<String, String> said) {
    if (said.containsKey("more")) {
      Form form = forms.form(said);
      return Response.ok(shown(form, form.rows("contents", 0).size() + ROWS)).build();
    }
    return forms.take(
        said,
        MakeBox.class,
        (key, box) -> {
          Response made = boxes.make(key, box);
          return URI.create("/gift-boxes/" + ReadAnew.identity(made.getLocation()));
        },
        form -> shown(form, ROWS));
  }

  private TemplateInstance shown(Form form, int rows) {
    return Templates.newBox(form, GiftChoices.of(containers, farm), rows);
  }
}
