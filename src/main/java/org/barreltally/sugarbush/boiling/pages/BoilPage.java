package org.barreltally.sugarbush.boiling.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.BadRequestException;
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
import org.barreltally.sugarbush.boiling.BoilNote;
import org.barreltally.sugarbush.boiling.DrawOff;
import org.barreltally.sugarbush.boiling.Feed;
import org.barreltally.sugarbush.boiling.rest.BoilView;
import org.barreltally.sugarbush.boiling.rest.BoilsApi;
import org.barreltally.sugarbush.boiling.rest.SugarhouseApi;
import org.barreltally.sugarbush.rest.BushesApi;
import org.barreltally.web.Because;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.HiddenId;
import org.barreltally.web.pages.SeveralForms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One boil: what went in, what was drawn off, what was noted, and taking back. */
@Path("/sugarhouse/boils/{id}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class BoilPage {

  @CheckedTemplate(basePath = "sugarhouse")
  static class Templates {
    static native TemplateInstance boil(BoilView boil, SeveralForms forms, LogChoices choices);
  }

  private final BoilsApi boils;
  private final BushesApi bushes;
  private final SugarhouseApi house;
  private final Forms forms;

  @Inject
  BoilPage(BoilsApi boils, BushesApi bushes, SugarhouseApi house, Forms forms) {
    this.boils = boils;
    this.bushes = bushes;
    this.house = house;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("id") UUID id) {
    return shown(id, SeveralForms.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response entered(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    String what = said.getFirst(SeveralForms.FIELD);
    return switch (what == null ? "" : what) {
      case "feed" -> taken(id, said, Feed.class, (key, feed) -> boils.feed(id, key, feed));
      case "draw" -> taken(id, said, DrawOff.class, (key, off) -> boils.drawOff(id, key, off));
      case "note" -> taken(id, said, BoilNote.class, (key, note) -> boils.note(id, key, note));
      case "part" ->
          taken(
              id,
              said,
              Because.class,
              (key, why) -> boils.reversePart(id, HiddenId.read(said.getFirst("entry")), key, why));
      case "reverse" -> taken(id, said, Because.class, (key, why) -> boils.reverse(id, key, why));
      default -> throw new BadRequestException();
    };
  }

  private interface Entering<T> {
    Response of(String key, T said);
  }

  private <T> Response taken(
      UUID id, MultivaluedMap<String, String> said, Class<T> record, Entering<T> entering) {
    return forms.take(
        said,
        record,
        (key, entry) -> {
          entering.of(key, entry);
          return URI.create("/sugarhouse/boils/" + id);
        },
        form -> shown(id, SeveralForms.with(said.getFirst(SeveralForms.FIELD), form)));
  }

  private TemplateInstance shown(UUID id, SeveralForms shown) {
    return Templates.boil(boils.one(id), shown, LogChoices.of(bushes, house));
  }
}
